import { scaled, scaleMark } from "./scaleMarks.ts";
import type { PointMm, PrimitiveMark, SymbolPlacement } from "./scene.ts";
import type { SymbolName } from "./symbolName.ts";
import { joinShapes } from "./symbolShapes/joinShapes.ts";
import { loadShapes } from "./symbolShapes/loadShapes.ts";
import { supplyShapes } from "./symbolShapes/supplyShapes.ts";
import { switchShapes } from "./symbolShapes/switchShapes.ts";
import type { SymbolShape } from "./symbolShapes/symbolPen.ts";
import { transformMark } from "./transformMark.ts";

/** Shapes follow IEC 60617 as vehicle practice uses it: feed above, return below, everything at rest. */
const SHAPES: Readonly<Record<SymbolName, SymbolShape>> = {
  ...joinShapes,
  ...loadShapes,
  ...supplyShapes,
  ...switchShapes,
};

/** Plain marks of a symbol set down on the page. */
export function symbolMarks(placement: SymbolPlacement): PrimitiveMark[] {
  const place = placing(placement);
  const { sizeRatio = 1 } = placement;
  const { marks } = SHAPES[placement.symbol];
  const sized = sizeRatio === 1 ? marks : marks.map((mark) => scaleMark(mark, sizeRatio));
  return sized.map((mark) => transformMark(mark, place));
}

/** Where wires meet a symbol set down on the page, by the pin's name. */
export function symbolPins(placement: SymbolPlacement): Readonly<Record<string, PointMm>> {
  const place = placing(placement);
  const { sizeRatio = 1 } = placement;
  return Object.fromEntries(
    Object.entries(SHAPES[placement.symbol].pins).map(([name, at]) => [
      name,
      place(scaled(at, sizeRatio)),
    ]),
  );
}

/** Mirror, then quarter turns clockwise, then shift. */
function placing({ at, turnDeg = 0, mirrored = false }: SymbolPlacement) {
  const [cosine, sine] = ({ 0: [1, 0], 90: [0, 1], 180: [-1, 0], 270: [0, -1] } as const)[turnDeg];
  return ({ xMm, yMm }: PointMm): PointMm => {
    const acrossMm = mirrored ? -xMm : xMm;
    return {
      xMm: at.xMm + acrossMm * cosine - yMm * sine,
      yMm: at.yMm + acrossMm * sine + yMm * cosine,
    };
  };
}
