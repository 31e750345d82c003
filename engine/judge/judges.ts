import { batteryAndCoils } from "./circuit/batteryAndCoils.ts";
import { deadLoads } from "./circuit/deadLoads.ts";
import { idleContacts } from "./circuit/idleContacts.ts";
import { looseEnds } from "./circuit/looseEnds.ts";
import { strayLoads } from "./circuit/strayLoads.ts";
import { doubtfulEarth } from "./earth/doubtfulEarth.ts";
import { regulatorEarth } from "./earth/regulatorEarth.ts";
import { sharedReturns } from "./earth/sharedReturns.ts";
import type { Judge } from "./judge.ts";
import { doubtfulLengths } from "./lengths/doubtfulLengths.ts";
import { unknownLengths } from "./lengths/unknownLengths.ts";
import { contactOverRating } from "./loading/contactOverRating.ts";
import { dropOverLimit } from "./loading/dropOverLimit.ts";
import { loadOverRating } from "./loading/loadOverRating.ts";
import { shortedBySwitch } from "./loading/shortedBySwitch.ts";
import { acMeetsBattery } from "./nets/acMeetsBattery.ts";
import { killLine } from "./nets/killLine.ts";
import { partPolarity } from "./nets/partPolarity.ts";
import { fuseFitting } from "./protection/fuseFitting.ts";
import { fuseInEarthedPole } from "./protection/fuseInEarthedPole.ts";
import { fuseOverWire } from "./protection/fuseOverWire.ts";
import { fuseWindow } from "./protection/fuseWindow.ts";
import { generatorWires, unfusedWires } from "./protection/unfusedWires.ts";
import { neverCharges } from "./supply/neverCharges.ts";
import { overcharges } from "./supply/overcharges.ts";
import { workmanshipJudges } from "./workmanship/index.ts";

/** Every question asked of a finished design, in the order people ask them. */
export const judges: readonly Judge[] = [
  fuseOverWire,
  unfusedWires,
  generatorWires,
  fuseInEarthedPole,
  fuseWindow,
  fuseFitting,
  loadOverRating,
  dropOverLimit,
  contactOverRating,
  shortedBySwitch,
  deadLoads,
  strayLoads,
  idleContacts,
  looseEnds,
  batteryAndCoils,
  acMeetsBattery,
  killLine,
  partPolarity,
  doubtfulEarth,
  sharedReturns,
  regulatorEarth,
  unknownLengths,
  doubtfulLengths,
  neverCharges,
  overcharges,
  ...workmanshipJudges,
];
