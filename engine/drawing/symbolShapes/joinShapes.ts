import { point } from "../scene.ts";
import {
  arc,
  bar,
  bottom,
  box,
  dot,
  open,
  PIN_MM,
  type SymbolShape,
  solid,
  top,
  twoPin,
} from "./symbolPen.ts";

/** How conductors meet, part and end, and the fuse in their way. */
export const joinShapes = {
  fuse: { pins: { top, bottom }, marks: [box(1.25, 3.75), open([0, -PIN_MM], [0, PIN_MM])] },
  /** The arc is the socket and stands on the live side: what stays live must not be touchable. */
  plugAndSocket: {
    pins: { top, bottom },
    marks: [
      open([0, -PIN_MM], [0, -2]),
      arc([0, 0], 2, 180, 360),
      solid([-0.5, -0.5], [0.5, -0.5], [0.5, 2.5], [-0.5, 2.5]),
      open([0, 2.5], [0, PIN_MM]),
    ],
  },
  joint: {
    pins: { top, bottom, side: point(PIN_MM, 0) },
    marks: [open([0, -PIN_MM], [0, PIN_MM]), open([0, 0], [PIN_MM, 0]), dot(1)],
  },
  /** Two conductors that only cross: the upright one breaks. */
  crossing: {
    pins: { top, bottom, left: point(-PIN_MM, 0), right: point(PIN_MM, 0) },
    marks: [...twoPin(1.5).marks, open([-PIN_MM, 0], [PIN_MM, 0])],
  },
  /** The frame used as a conductor. */
  frame: {
    pins: { top },
    marks: [
      open([0, -PIN_MM], [0, 0]),
      bar(0, 0, 3.75),
      ...[-3.25, 0, 3.25].map((xMm) => open([xMm, 0], [xMm - 1.5, 2.5])),
    ],
  },
  /** A wire of its own back to the battery's earthed post. */
  earthWire: {
    pins: { top },
    marks: [open([0, -PIN_MM], [0, 0]), bar(0, 0, 3.75), bar(0, 1.5, 2.25), bar(0, 3, 0.9)],
  },
} as const satisfies Readonly<Record<string, SymbolShape>>;
