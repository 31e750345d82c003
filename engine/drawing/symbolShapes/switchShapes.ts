import { point } from "../scene.ts";
import {
  bottom,
  box,
  letter,
  linkage,
  open,
  PIN_MM,
  ring,
  type SymbolShape,
  solid,
  twoPin,
} from "./symbolPen.ts";

/** Blade on the lower contact, leaning left, open. */
const openBlade = open([0, 2.5], [-2.5, -2.75]);

/** Blade that lies on a lug of the upper contact: closed at rest. */
const closedBlade = [open([0, -2.5], [2.25, -2.5]), open([0, 2.5], [1.75, -3.25])];

const makes = (...drive: Parameters<typeof twoPin>[1][]): SymbolShape =>
  twoPin(2.5, openBlade, ...drive);

const breaks = (...drive: Parameters<typeof twoPin>[1][]): SymbolShape =>
  twoPin(2.5, ...closedBlade, ...drive);

const toLeft = linkage([-1.25, 0], [-3.5, 0]);

/** Switches and contacts, all at rest: key off, engine stopped, no oil pressure. */
export const switchShapes = {
  switchMake: makes(),
  switchBreak: breaks(),
  pushButton: makes(toLeft, open([-3.5, -1.5], [-4.75, -1.5], [-4.75, 1.5], [-3.5, 1.5])),
  changeOver: {
    pins: { left: point(-2.5, -PIN_MM), right: point(2.5, -PIN_MM), common: bottom },
    marks: [
      open([-2.5, -PIN_MM], [-2.5, -2.5]),
      open([2.5, -PIN_MM], [2.5, -2.5]),
      open([0, PIN_MM], [0, 2.5]),
      open([0, 2.5], [-2.5, -2.5]),
    ],
  },
  keySwitch: makes(
    linkage([-1.25, 0], [-2.75, 0]),
    ring(1, [-3.75, 0]),
    open([-3.75, 1], [-3.75, 2.5]),
  ),
  oilSwitch: breaks(
    linkage([0.75, 0], [-2.75, 0]),
    box(1.25, 1.25, [-4, 0]),
    letter("p", 1.8, [-4, -0.2]),
  ),
  neutralSwitch: makes(
    linkage([-1.25, 0], [-2.75, 0]),
    box(1.25, 1.25, [-4, 0]),
    letter("N", 1.8, [-4, 0]),
  ),
  contactBreaker: breaks(
    linkage([0.75, 0], [2, 0]),
    solid([3.5, -1.4], [1.75, 0], [3.5, 1.4]),
    ring(1.25, [3.75, 0]),
  ),
  relayContact: makes(linkage([-1.25, 0], [-5, 0])),
  relayContactBreak: breaks(linkage([0.75, 0], [-5, 0])),
} as const satisfies Readonly<Record<string, SymbolShape>>;
