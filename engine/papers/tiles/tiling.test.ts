import fc from "fast-check";
import { expect, it } from "vitest";
import { type Mark, marksWithin, point } from "../../drawing/index.ts";
import { BOARD_PRINT } from "../board/boardPrint.ts";
import { type Tiling, tilingOf } from "./tiling.ts";

const print = { ...BOARD_PRINT, paper: "a4" } as const;

/** A drawing of a few straight lines in its own corner. */
const drawing = fc
  .array(
    fc.tuple(
      fc.integer({ min: 0, max: 1500 }),
      fc.integer({ min: 0, max: 1100 }),
      fc.integer({ min: 0, max: 1500 }),
      fc.integer({ min: 0, max: 1100 }),
    ),
    { minLength: 1, maxLength: 8 },
  )
  .map((lines) => {
    const marks = lines.map(
      ([ax, ay, bx, by]): Mark => ({
        kind: "line",
        from: point(ax, ay),
        to: point(bx, by),
        stroke: { widthMm: 0.5, colour: "ink" },
      }),
    );
    return { marks, widthMm: 1500, heightMm: 1100, lines };
  });

const isOn = ({ tiles }: Tiling, x: number, y: number): boolean =>
  tiles.some(
    ({ window: { xMm, yMm, widthMm, heightMm } }) =>
      x >= xMm - 1e-6 && x <= xMm + widthMm + 1e-6 && y >= yMm - 1e-6 && y <= yMm + heightMm + 1e-6,
  );

it.each([false, true])(
  "shows every place of every line, no sheet without any (even: %s)",
  (isEven) => {
    fc.assert(
      fc.property(drawing, ({ lines, ...drawn }) => {
        const tiling = tilingOf(drawn, print, isEven);
        for (const [ax, ay, bx, by] of lines) {
          for (let k = 0; k <= 50; k++) {
            expect(isOn(tiling, ax + ((bx - ax) * k) / 50, ay + ((by - ay) * k) / 50)).toBe(true);
          }
        }
        for (const { window } of tiling.tiles) {
          expect(marksWithin(drawn.marks, window).length).toBeGreaterThan(0);
        }
      }),
      { numRuns: 40 },
    );
  },
);

it("begins where fewer sheets are needed", () => {
  // A line 300 mm long down the middle of a drawing much wider than itself: one column of sheets is enough wherever it lies.
  for (const xMm of [180, 190, 200, 380]) {
    const marks: Mark[] = [
      {
        kind: "line",
        from: point(xMm, 0),
        to: point(xMm, 300),
        stroke: { widthMm: 20, colour: "ink" },
      },
    ];
    const { tiles } = tilingOf({ marks, widthMm: 600, heightMm: 300 }, print);
    expect(new Set(tiles.map(({ columnIndex }) => columnIndex)).size).toBe(1);
  }
});
