import { LINE_MM } from "../lineWidth.ts";
import { type PrimitiveMark, point } from "../scene.ts";
import {
  bottom,
  box,
  closed,
  dot,
  fine,
  letter,
  open,
  PIN_MM,
  ring,
  type SymbolShape,
  solid,
  twoPin,
  winding,
} from "./symbolPen.ts";

const cross = (xMm: number, yMm: number, radiusMm: number) => {
  const reachMm = radiusMm * Math.SQRT1_2;
  return [
    open([xMm - reachMm, yMm - reachMm], [xMm + reachMm, yMm + reachMm]),
    open([xMm - reachMm, yMm + reachMm], [xMm + reachMm, yMm - reachMm]),
  ];
};

/** The limit of a part of which only one function stands here. */
const envelope = (radiusMm: number): PrimitiveMark => ({
  kind: "circle",
  centre: point(0, 0),
  radiusMm,
  stroke: { widthMm: LINE_MM.detail, colour: "ink", dashMm: [1.75, 0.6, 0.35, 0.6] },
});

const smallFilament = (xMm: number) => [ring(1.75, [xMm, -0.5]), ...cross(xMm, -0.5, 1.75)];

const corners = [-2.5, 0, 2.5];

/** What uses electricity. */
export const loadShapes = {
  lamp: twoPin(3.5, ring(3.5), ...cross(0, 0, 3.5)),
  /** Both filaments in one envelope on one common return, because that return is the usual fault. */
  twinLamp: {
    pins: { left: point(-2.5, -PIN_MM), right: point(2.5, -PIN_MM), common: bottom },
    marks: [
      box(5, 3.5, [0, 0], 3.5),
      open([-2.5, -PIN_MM], [-2.5, -2.25]),
      open([2.5, -PIN_MM], [2.5, -2.25]),
      ...smallFilament(-2.5),
      ...smallFilament(2.5),
      open([-2.5, 1.25], [-2.5, 2.25], [2.5, 2.25], [2.5, 1.25]),
      open([0, 2.25], [0, PIN_MM]),
    ],
  },
  /**
   * One filament of a lamp that has more, in a path of its own: the dash-dot line round it is the limit of the whole lamp, as round any part whose functions
   * are drawn where they work.
   */
  lampFilament: twoPin(2.25, envelope(3.5), ring(2.25), ...cross(0, 0, 2.25)),
  motor: twoPin(3.5, ring(3.5), letter("M", 2.5, [0, -0.4]), fine([-1.25, 1.9], [1.25, 1.9])),
  horn: twoPin(2.25, closed([1.5, -2.25], [5, -4.25], [5, 4.25], [1.5, 2.25]), box(1.5, 2.25)),
  flasher: twoPin(
    2.5,
    box(5, 2.5),
    fine(
      [-3.5, 1.25],
      [-2, 1.25],
      [-2, -1.25],
      [0, -1.25],
      [0, 1.25],
      [2, 1.25],
      [2, -1.25],
      [3.5, -1.25],
    ),
  ),
  heater: twoPin(
    3.75,
    box(1.75, 3.75),
    ...[-1.875, 0, 1.875].map((yMm) => fine([-1.75, yMm], [1.75, yMm])),
  ),
  resistor: twoPin(3.75, box(1.25, 3.75)),
  relayCoil: twoPin(2.5, box(3.75, 2.5)),
  coil: twoPin(3.75, winding(0, -3.75, 3.75, 1)),
  /** Two windings on one core; the end they share is dotted. */
  ignitionCoil: {
    pins: { feed: point(-2.5, -PIN_MM), breaker: point(-2.5, PIN_MM), spark: point(2.5, PIN_MM) },
    marks: [
      open([-2.5, -PIN_MM], [-2.5, -3.75]),
      open([-2.5, -5], [2.5, -5], [2.5, -3.75]),
      dot(0.75, [-2.5, -5]),
      winding(-2.5, -3.75, 3.75, 1),
      winding(2.5, -3.75, 3.75, -1),
      fine([-0.4, -3.5], [-0.4, 3.5]),
      fine([0.4, -3.5], [0.4, 3.5]),
      open([-2.5, 3.75], [-2.5, PIN_MM]),
      open([2.5, 3.75], [2.5, PIN_MM]),
    ],
  },
  sparkGap: twoPin(
    0.75,
    solid([0, -0.5], [-1.25, -3], [1.25, -3]),
    solid([0, 0.5], [-1.25, 3], [1.25, 3]),
  ),
  ammeter: twoPin(3.5, ring(3.5), letter("A", 2.5, [0, 0])),
  voltmeter: twoPin(3.5, ring(3.5), letter("V", 2.5, [0, 0])),
  /** A box of electronics; its letters are written beside it. */
  box: {
    pins: Object.fromEntries(
      corners.flatMap((xMm, i) => [
        [`top${i + 1}`, point(xMm, -PIN_MM)],
        [`bottom${i + 1}`, point(xMm, PIN_MM)],
      ]),
    ),
    marks: [open([0, -PIN_MM], [0, PIN_MM]), box(5, 3.75)],
  },
} as const satisfies Readonly<Record<string, SymbolShape>>;
