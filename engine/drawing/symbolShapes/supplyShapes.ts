import { point } from "../scene.ts";
import {
  bar,
  bottom,
  box,
  closed,
  fine,
  letter,
  linkage,
  open,
  PIN_MM,
  ring,
  type SymbolShape,
  solid,
  top,
  twoPin,
  wave,
} from "./symbolPen.ts";

const thickBar = (yMm: number) =>
  solid([-2, yMm - 0.5], [2, yMm - 0.5], [2, yMm + 0.5], [-2, yMm + 0.5]);

const plus = (xMm: number, yMm: number) => [
  fine([xMm - 0.8, yMm], [xMm + 0.8, yMm]),
  fine([xMm, yMm - 0.8], [xMm, yMm + 0.8]),
];

const minus = (xMm: number, yMm: number) => fine([xMm - 0.8, yMm], [xMm + 0.8, yMm]);

const generatorBody = [ring(3.5), letter("G", 2.5, [0, -0.6])];

const diodeBody = [closed([-2.5, -2.5], [2.5, -2.5], [0, 2.5]), open([0, -2.5], [0, 2.5])];

const arrowUpRight = (xMm: number, yMm: number) => [
  fine([xMm, yMm], [xMm + 1.75, yMm - 1.25]),
  solid([xMm + 2.2, yMm - 1.6], [xMm + 1.5, yMm - 0.5], [xMm + 0.9, yMm - 1.35]),
];

/** Where electricity comes from and what turns or holds it. */
export const supplyShapes = {
  battery: {
    pins: { plus: top, minus: bottom },
    marks: [
      open([0, -PIN_MM], [0, -2.5]),
      bar(0, -2.5, 4),
      thickBar(-1),
      bar(0, 1, 4),
      thickBar(2.5),
      open([0, 2.5], [0, PIN_MM]),
      ...plus(-3.5, -4.5),
      minus(-3.5, 4.5),
    ],
  },
  dynamo: twoPin(3.5, ...generatorBody, fine([-1.25, 1.9], [1.25, 1.9])),
  alternator: twoPin(3.5, ...generatorBody, wave([0, 1.9], 1.25)),
  alternatorThreePhase: {
    pins: { left: point(-2.5, -PIN_MM), middle: top, right: point(2.5, -PIN_MM) },
    marks: [
      open([-2.5, -PIN_MM], [-2.5, 0]),
      open([0, -PIN_MM], [0, -3.5]),
      open([2.5, -PIN_MM], [2.5, 0]),
      ring(3.5),
      letter("G", 2.5, [0, -1.4]),
      letter("3", 1.8, [-1, 1.75]),
      wave([0.9, 1.75], 0.9),
    ],
  },
  diode: {
    pins: { anode: top, cathode: bottom },
    marks: [...twoPin(2.5, ...diodeBody, bar(0, 2.5, 2.5)).marks],
  },
  zenerDiode: {
    pins: { anode: top, cathode: bottom },
    marks: [...twoPin(2.5, ...diodeBody, open([2.5, 2.5], [-2.5, 2.5], [-2.5, 1.25])).marks],
  },
  led: {
    pins: { anode: top, cathode: bottom },
    marks: [
      ...twoPin(2.5, ...diodeBody, bar(0, 2.5, 2.5)).marks,
      ...arrowUpRight(2.5, 0),
      ...arrowUpRight(2, 2),
    ],
  },
  rectifier: {
    pins: {
      acLeft: point(-2.5, -PIN_MM),
      acRight: point(2.5, -PIN_MM),
      plus: point(-2.5, PIN_MM),
      minus: point(2.5, PIN_MM),
    },
    marks: [
      open([-2.5, -PIN_MM], [-2.5, PIN_MM]),
      open([2.5, -PIN_MM], [2.5, PIN_MM]),
      box(3.75, 3.75),
      fine([-3.75, 3.75], [3.75, -3.75]),
      wave([-1.5, -1.75], 1.25),
      fine([0.5, 1.5], [2.75, 1.5]),
      linkage([0.5, 2.3], [2.75, 2.3]),
      ...plus(-4, 5.5),
      minus(4, 5.5),
    ],
  },
  regulator: twoPin(
    3.75,
    box(3.75, 3.75),
    letter("U", 2.5, [-1.25, 0]),
    fine([1.75, 1.75], [1.75, -1.5]),
    solid([1.75, -1.75], [1, -0.25], [2.5, -0.25]),
    fine([0.75, -1.9], [2.75, -1.9]),
  ),
  capacitor: twoPin(0.75, bar(0, -0.75, 3.25), bar(0, 0.75, 3.25)),
} as const satisfies Readonly<Record<string, SymbolShape>>;
