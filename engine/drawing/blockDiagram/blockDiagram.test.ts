import fc from "fast-check";
import { expect, it } from "vitest";
import { marksOutside, segmentsOf, struckTexts, textOverlaps } from "../drawingFaults.fixture.ts";
import { textMarks } from "../missingGlyphs.ts";
import { sampleBlocks } from "../sampleDrawings.fixture.ts";
import { type AreaMm, area, type LineMark, type Mark } from "../scene.ts";
import { blockDiagram } from "./blockDiagram.ts";
import type { BlockDiagramInput, BlockKind } from "./blockDiagramInput.ts";

const kinds: readonly BlockKind[] = ["source", "battery", "fuse", "switch", "load"];

const diagrams = fc
  .record({
    kinds: fc.array(fc.constantFrom(...kinds), { minLength: 1, maxLength: 14 }),
    links: fc.array(fc.tuple(fc.nat(13), fc.nat(13), fc.boolean()), { maxLength: 24 }),
    names: fc.array(fc.lorem({ maxCount: 4 }), { minLength: 14, maxLength: 14 }),
  })
  .map(
    ({ kinds, links, names }): BlockDiagramInput => ({
      blocks: kinds.map((kind, i) => ({ id: `B${i}`, kind, name: names[i]!, note: "21 W" })),
      links: links
        .filter(([from, to]) => from !== to && from < kinds.length && to < kinds.length)
        .map(([from, to, alwaysLive]) => ({ from: `B${from}`, to: `B${to}`, alwaysLive })),
    }),
  );

const lines = (marks: readonly Mark[]): LineMark[] =>
  marks.filter((mark) => mark.kind === "line") as LineMark[];

const boxes = (marks: readonly Mark[]): AreaMm[] =>
  marks.flatMap((mark) =>
    mark.kind === "group"
      ? mark.marks.flatMap((each) => (each.kind === "rect" ? [each.area] : []))
      : [],
  );

/** Whether a level or upright line has a point well inside a box. */
function enters({ from, to }: LineMark, box: AreaMm): boolean {
  const insetMm = 0.05;
  const overlaps = (a: number, b: number, low: number, size: number): boolean =>
    Math.max(a, b) > low + insetMm && Math.min(a, b) < low + size - insetMm;
  return (
    overlaps(from.xMm, to.xMm, box.xMm, box.widthMm) &&
    overlaps(from.yMm, to.yMm, box.yMm, box.heightMm)
  );
}

it("runs no line through a box, lets no text overlap and keeps to its size", () => {
  fc.assert(
    fc.property(diagrams, (input) => {
      const drawn = blockDiagram(input, 259);
      for (const line of lines(drawn.marks)) {
        expect(boxes(drawn.marks).filter((box) => enters(line, box))).toEqual([]);
      }
      expect(textOverlaps(drawn.marks)).toEqual([]);
      expect(struckTexts(drawn.marks)).toEqual([]);
      expect(marksOutside(drawn.marks, area(0, 0, drawn.widthMm, drawn.heightMm))).toEqual([]);
    }),
    { numRuns: 60 },
  );
});

type Piece = ReturnType<typeof segmentsOf>[number];

/** Two uprights on one line that stop short of a level line running between them: one line, read across the gap. */
function isBridged(upper: Piece, lower: Piece, pieces: readonly Piece[]): boolean {
  const xMm = upper[0].xMm;
  const isUpright = ([a, b]: Piece): boolean => Math.abs(a.xMm - b.xMm) < 1e-6;
  if (!isUpright(upper) || !isUpright(lower) || Math.abs(lower[0].xMm - xMm) > 1e-6) return false;
  const fromMm = Math.max(upper[0].yMm, upper[1].yMm);
  const toMm = Math.min(lower[0].yMm, lower[1].yMm);
  if (toMm < fromMm) return false;
  const crossings = pieces
    .filter(([a, b]) => Math.abs(a.yMm - b.yMm) < 1e-6)
    .filter(([a, b]) => Math.min(a.xMm, b.xMm) < xMm - 0.1 && Math.max(a.xMm, b.xMm) > xMm + 0.1)
    .map(([a]) => a.yMm)
    .filter((yMm) => yMm > fromMm && yMm < toMm);
  return (
    crossings.length > 0 &&
    Math.min(...crossings) - fromMm < 0.95 &&
    toMm - Math.max(...crossings) < 0.95
  );
}

/** Which boxes hang together by ink: lines that touch, end to end or end on side, and lines that touch a box's edge. */
function touchingSets(marks: readonly Mark[]): Set<string>[] {
  const near = 0.02;
  const pieces = lines(marks).flatMap(segmentsOf);
  const touches = ([a, b]: (typeof pieces)[number], { xMm, yMm }: { xMm: number; yMm: number }) =>
    xMm > Math.min(a.xMm, b.xMm) - near &&
    xMm < Math.max(a.xMm, b.xMm) + near &&
    yMm > Math.min(a.yMm, b.yMm) - near &&
    yMm < Math.max(a.yMm, b.yMm) + near;
  const groups = marks.filter((mark) => mark.kind === "group");
  const sets = pieces.map((piece) => {
    const met = new Set<string>();
    for (const group of groups) {
      const box = boxes([group])[0]!;
      const meets = piece.some(
        ({ xMm, yMm }) =>
          yMm > box.yMm &&
          yMm < box.yMm + box.heightMm &&
          (Math.abs(xMm - box.xMm) < near || Math.abs(xMm - box.xMm - box.widthMm) < near),
      );
      if (meets) met.add(group.id!);
    }
    return { piece, met };
  });
  const owner = sets.map((_, i) => i);
  const find = (i: number): number => (owner[i] === i ? i : find(owner[i]!));
  sets.forEach(({ piece }, i) => {
    sets.forEach((other, j) => {
      const isJoined =
        piece.some((end) => touches(other.piece, end)) || isBridged(piece, other.piece, pieces);
      if (isJoined) owner[find(i)] = find(j);
    });
  });
  const merged = new Map<number, Set<string>>();
  sets.forEach(({ met }, i) => {
    const set = merged.get(find(i)) ?? new Set();
    for (const id of met) set.add(id);
    merged.set(find(i), set);
  });
  return [...merged.values()];
}

it("joins by ink exactly what is linked", () => {
  const input: BlockDiagramInput = {
    ...sampleBlocks,
    links: sampleBlocks.links.filter(({ to }) => to !== "REG" || false),
  };
  const expected = new Map<string, Set<string>>();
  for (const { from, to, alwaysLive } of input.links) {
    const key = `${from} ${alwaysLive}`;
    expected.set(key, (expected.get(key) ?? new Set([from])).add(to));
  }
  const sorted = (sets: Iterable<Set<string>>): string[] =>
    [...sets].map((set) => [...set].sort().join(" ")).sort();
  expect(sorted(touchingSets(blockDiagram(input, 259).marks))).toEqual(sorted(expected.values()));
});

it("joins by ink exactly what is linked, in any diagram without loops", () => {
  fc.assert(
    fc.property(diagrams, (input) => {
      const seen = new Set<string>();
      const links = input.links
        .filter(({ from, to }) => Number(from.slice(1)) < Number(to.slice(1)))
        .filter(({ from, to }) => !seen.has(`${from} ${to}`) && seen.add(`${from} ${to}`))
        .map((link) => ({ ...link, alwaysLive: true }));
      const expected = new Map<string, Set<string>>();
      for (const { from, to } of links)
        expected.set(from, (expected.get(from) ?? new Set([from])).add(to));
      const sorted = (sets: Iterable<Set<string>>): string[] =>
        [...sets].map((set) => [...set].sort().join(" ")).sort();
      const { marks } = blockDiagram({ ...input, links }, 259);
      expect(sorted(touchingSets(marks))).toEqual(sorted(expected.values()));
    }),
    { numRuns: 80 },
  );
});

it("draws what is always live bold and tells a loop in words", () => {
  const drawn = blockDiagram(sampleBlocks, 259);
  const widths = new Set(lines(drawn.marks).map(({ stroke }) => stroke.widthMm));
  expect([...widths].sort()).toEqual([0.5, 1]);
  const texts = textMarks(drawn.marks)
    .map(({ text }) => text)
    .join(" ");
  expect(texts).toContain("also feeds Rectifier");
});

it("fits the sample on one A4 sheet and refuses a link to nowhere", () => {
  const drawn = blockDiagram(sampleBlocks, 259);
  expect(drawn.widthMm).toBeLessThanOrEqual(259 + 1e-6);
  expect(drawn.heightMm).toBeLessThan(140);
  expect(() =>
    blockDiagram({ ...sampleBlocks, links: [{ from: "KEY", to: "NIL", alwaysLive: false }] }, 259),
  ).toThrow("NIL");
});
