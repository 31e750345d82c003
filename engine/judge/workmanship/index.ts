import type { Judge } from "../judge.ts";
import { cavityCurrent } from "./cavityCurrent.ts";
import { britishLists, colourLetters, colourMissing, colourOutsideScheme } from "./colourScheme.ts";
import { colourSeveralJobs } from "./colourSeveralJobs.ts";
import { connectorColours } from "./connectorColours.ts";
import { cavityHalfWired, connectorHalf, connectorInFlex } from "./connectorPlaces.ts";
import { earthColourLive, earthOtherColour } from "./earthColours.ts";
import { insulationClass, nearExhaust, tapeHot } from "./hotPlaces.ts";
import { jointCrowded } from "./jointCrowded.ts";
import {
  jointCopper,
  jointInFlex,
  jointOneWire,
  jointPlaceUnstated,
  jointWays,
} from "./jointFindings.ts";
import { jointsInLine } from "./jointsInLine.ts";
import { looseLiveEnd } from "./looseLiveEnd.ts";
import { preInsulatedEnds } from "./preInsulatedEnds.ts";
import { roadReminder } from "./roadReminder.ts";
import { barrelShared, bulletUnmeasured, studCrowded } from "./sharedPlaces.ts";
import { solderDipped, solderedJoint, twistedJoint } from "./softJoints.ts";
import { terminalCurrent } from "./terminalCurrent.ts";
import { terminalMate, terminalRange } from "./terminalFits.ts";
import { wireNumberLong, wireNumberTwice } from "./wireMarks.ts";

/** Judges of how the loom is made: joints, terminals, connectors, colours, marks, places. */
export const workmanshipJudges: readonly Judge[] = [
  twistedJoint,
  solderedJoint,
  solderDipped,
  jointWays,
  jointOneWire,
  jointCopper,
  jointInFlex,
  jointCrowded,
  jointsInLine,
  jointPlaceUnstated,
  terminalRange,
  terminalMate,
  preInsulatedEnds,
  terminalCurrent,
  cavityCurrent,
  barrelShared,
  studCrowded,
  bulletUnmeasured,
  connectorColours,
  connectorHalf,
  connectorInFlex,
  cavityHalfWired,
  earthColourLive,
  earthOtherColour,
  colourOutsideScheme,
  colourMissing,
  colourSeveralJobs,
  britishLists,
  colourLetters,
  wireNumberTwice,
  wireNumberLong,
  looseLiveEnd,
  insulationClass,
  nearExhaust,
  tapeHot,
  roadReminder,
];
