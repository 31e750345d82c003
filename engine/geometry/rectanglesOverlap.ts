/** Sides along the axes; width and height ≥ 0. */
export interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Whether two rectangles share area, or come nearer than `gap`. Rectangles that only touch do not overlap. */
export function rectanglesOverlap(first: Rectangle, second: Rectangle, gap = 0): boolean {
  return (
    first.x < second.x + second.width + gap &&
    second.x < first.x + first.width + gap &&
    first.y < second.y + second.height + gap &&
    second.y < first.y + first.height + gap
  );
}
