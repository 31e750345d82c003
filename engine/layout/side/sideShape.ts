import type { Point } from "../../geometry/index.ts";

/** One line of a machine's side elevation. */
export interface SideShape {
  readonly points: readonly Point[];
  readonly isClosed: boolean;
  /** The points are joined by a curve through them, else by straight lines. */
  readonly isSmooth: boolean;
  /** Parts of the machine are tinted, single lines are not. */
  readonly isFilled: boolean;
}

/** Where every reference body has its lamp, its tail lamp and its axles, mm; what is drawn is moved and stretched from there. */
export const REFERENCE = {
  lamp: { x: 430, y: 300 },
  tail: { x: 1790, y: 470 },
  axleY: 850,
} as const;

const points = (list: readonly (readonly [number, number])[]): readonly Point[] =>
  list.map(([x, y]) => ({ x, y }));

export const line = (...list: readonly (readonly [number, number])[]): SideShape => ({
  points: points(list),
  isClosed: false,
  isSmooth: false,
  isFilled: false,
});

export const curve = (...list: readonly (readonly [number, number])[]): SideShape => ({
  ...line(...list),
  isSmooth: true,
});

export const solid = (...list: readonly (readonly [number, number])[]): SideShape => ({
  points: points(list),
  isClosed: true,
  isSmooth: true,
  isFilled: true,
});

export const plate = (...list: readonly (readonly [number, number])[]): SideShape => ({
  ...solid(...list),
  isSmooth: false,
});

/** Part of a circle, degrees clockwise from the right. */
export function arc(
  x: number,
  y: number,
  radiusMm: number,
  fromDeg: number,
  toDeg: number,
): SideShape {
  const count = 24;
  const made = Array.from({ length: count + 1 }, (_, i) => {
    const turn = ((fromDeg + ((toDeg - fromDeg) * i) / count) * Math.PI) / 180;
    return { x: x + radiusMm * Math.cos(turn), y: y + radiusMm * Math.sin(turn) };
  });
  return { points: made, isClosed: false, isSmooth: true, isFilled: false };
}

export const ring = (x: number, y: number, radiusMm: number, isFilled = false): SideShape => {
  const whole = arc(x, y, radiusMm, 0, 360);
  return { ...whole, points: whole.points.slice(1), isClosed: true, isFilled };
};

export function wheel(x: number, radiusMm: number): readonly SideShape[] {
  const y = REFERENCE.axleY + 310 - radiusMm;
  const spokes = Array.from({ length: 12 }, (_, i) => {
    const turn = (i * Math.PI) / 6 + 0.15;
    const at = (r: number): readonly [number, number] => [
      x + r * Math.cos(turn),
      y + r * Math.sin(turn),
    ];
    return line(at(58), at(radiusMm - 48));
  });
  return [ring(x, y, radiusMm), ring(x, y, radiusMm - 48), ...spokes, ring(x, y, 58, true)];
}

export const fins = (
  leftMm: number,
  rightMm: number,
  topMm: number,
  bottomMm: number,
): readonly SideShape[] =>
  Array.from({ length: 6 }, (_, i) => {
    const y = topMm + ((i + 0.5) * (bottomMm - topMm)) / 6;
    return line([leftMm - 12, y], [rightMm + 12, y]);
  });

export const upright = (leftMm: number, rightMm: number): readonly SideShape[] => [
  plate([leftMm, 450], [rightMm, 450], [rightMm + 6, 650], [leftMm - 6, 650]),
  ...fins(leftMm, rightMm, 455, 640),
  solid([leftMm - 8, 450], [leftMm + 10, 410], [rightMm - 10, 410], [rightMm + 8, 450]),
];

export const crankcase = (leftMm: number, rightMm: number): readonly SideShape[] => [
  solid(
    [leftMm, 770],
    [leftMm + 40, 670],
    [leftMm + 200, 645],
    [rightMm - 60, 680],
    [rightMm, 790],
    [rightMm - 60, 890],
    [leftMm + 140, 905],
    [leftMm + 20, 860],
  ),
  ring(leftMm + 110, 775, 78),
  ring(rightMm - 105, 785, 58),
];
