import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { documentToPdf } from "../../drawing/documentToPdf.ts";
import { type Mark, type Page, pageToDxf } from "../../drawing/index.ts";
import { readPaperFonts } from "../../drawing/readPaperFonts.fixture.ts";
import { polylineLength } from "../../geometry/index.ts";
import { readJob } from "../../job/index.ts";
import { checkedJob } from "../../judge/index.ts";
import { type PaperInput, paperInput } from "../paperInput.ts";
import { tilePage } from "../tiles/tilePage.ts";
import { tilingOf } from "../tiles/tiling.ts";
import { type BoardDrawing, boardDrawing } from "./boardDrawing.ts";
import { BOARD_PRINT, type BoardPrint } from "./boardPrint.ts";
import { bundleReader } from "./bundles.ts";
import { rollPage } from "./rollPage.ts";

const fonts = readPaperFonts();
const PRINT: BoardPrint = { ...BOARD_PRINT, paper: "a4" };
const MM_PER_POINT = 25.4 / 72;

const DEMOS = [
  "accessory-five-wires",
  "aldreth-single",
  "brenzach-twin",
  "minazuru-four",
  "orivesta-enduro",
];

const inputs = new Map<string, PaperInput>();
function inputOf(name: string): PaperInput {
  const text = readFileSync(join(import.meta.dirname, `../../../demos/${name}.json`), "utf8");
  const read = readJob(text);
  if (!read.ok) throw new Error(name);
  const { design, result } = checkedJob(read.job);
  const made = paperInput(design, result, { fingerprint: "0".repeat(64), paper: "a4" });
  inputs.set(name, inputs.get(name) ?? made);
  return inputs.get(name)!;
}

const drawings = new Map<string, readonly BoardDrawing[]>();
function boardsOf(name: string): readonly BoardDrawing[] {
  const input = inputs.get(name) ?? inputOf(name);
  const bundleOf = bundleReader(input);
  const known =
    drawings.get(name) ??
    input.job.looms.map(({ id }) => boardDrawing(input, id, bundleOf, PRINT.boardWidthMm)!);
  drawings.set(name, known);
  return known;
}

/** Every open line of a page as poppler finds it in the finished PDF, mm on the page. */
async function linesBack(
  pages: readonly Page[],
  n = 1,
): Promise<readonly { x: number; y: number }[][]> {
  const folder = mkdtempSync(join(tmpdir(), "board-"));
  try {
    const pdf = join(folder, "board.pdf");
    const document = { title: "t", subject: "s", date: "2026-01-01", pages };
    writeFileSync(pdf, await documentToPdf(document, fonts));
    execFileSync("pdftocairo", [
      "-svg",
      "-noshrink",
      "-nocenter",
      "-f",
      `${n}`,
      "-l",
      `${n}`,
      pdf,
      join(folder, "b.svg"),
    ]);
    const svg = readFileSync(join(folder, "b.svg"), "utf8");
    return [...svg.matchAll(/<path[^>]*>/g)].map(([tag]) => {
      const matrix = /transform="matrix\(([^)]*)\)"/.exec(tag)?.[1] ?? "1,0,0,1,0,0";
      const [a, b, c, e, f, g] = matrix.split(",").map(Number);
      const d = / d="([^"]*)"/.exec(tag)?.[1] ?? "";
      return [...d.matchAll(/[ML] (-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => ({
        x: (a! * Number(x) + c! * Number(y) + f!) * MM_PER_POINT,
        y: (b! * Number(x) + e! * Number(y) + g!) * MM_PER_POINT,
      }));
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The line that starts and ends where asked. */
function lineBetween(
  lines: readonly { x: number; y: number }[][],
  from: { x: number; y: number },
  to: { x: number; y: number },
) {
  const near = (p: { x: number; y: number }, q: { x: number; y: number }): boolean =>
    Math.hypot(p.x - q.x, p.y - q.y) < 0.05;
  return lines.find((line) => line.length > 1 && near(line[0]!, from) && near(line.at(-1)!, to));
}

describe.each(DEMOS)("boards of %s", (name) => {
  it("writes every limb into the PDF at its true length", async () => {
    for (const drawing of boardsOf(name)) {
      const page = rollPage(drawing, PRINT, inputs.get(name)!.info, "Board");
      const lines = await linesBack([page]);
      for (const { points, lengthMm } of drawing.layout.limbs) {
        const onPage = points.map(({ x, y }) => ({
          x: x + drawing.shiftMm.xMm + PRINT.marginMm,
          y: y + drawing.shiftMm.yMm + PRINT.marginMm,
        }));
        const found = lineBetween(lines, onPage[0]!, onPage.at(-1)!);
        expect(found, `${drawing.loom} ${lengthMm}`).toBeDefined();
        // A tenth over a metre is what a steel rule shows; poppler prints hundredths of a point.
        expect(Math.abs(polylineLength(found!) - lengthMm)).toBeLessThan(
          0.1 * Math.max(0.3, lengthMm / 1000),
        );
      }
    }
  });

  it("has every wire of every loom: in a limb, or written at its place", () => {
    const { job, design } = inputs.get(name)!;
    for (const { loom, layout, marks } of boardsOf(name)) {
      const inLimbs = new Set(
        layout.limbs.flatMap(({ pieces }) => pieces.flatMap(({ wires }) => wires)),
      );
      const words = wordsOf(marks);
      for (const wire of job.wires) {
        if (wire.loom !== loom || wire.status === "remove") continue;
        const route = design.routed.wires.get(wire.id)!;
        if (route.how !== "stub") expect(inLimbs, `${loom} ${wire.id}`).toContain(wire.id);
        expect(words, `${loom} ${wire.id}`).toContain(wire.number ?? wire.id);
      }
    }
  });

  it("covers everything with its tiles, neighbours overlapping by what was asked", () => {
    for (const drawing of boardsOf(name)) {
      for (const paper of ["a4", "a3", "letter"] as const) {
        const { tiles } = tilingOf(drawing, { ...PRINT, paper });
        const isOn = (x: number, y: number): boolean =>
          tiles.some(
            ({ window }) =>
              x >= window.xMm &&
              x <= window.xMm + window.widthMm &&
              y >= window.yMm &&
              y <= window.yMm + window.heightMm,
          );
        for (const { points } of drawing.layout.limbs) {
          points.slice(1).forEach((b, i) => {
            const a = points[i]!;
            for (let k = 0; k <= 20; k++) {
              const x = a.x + ((b.x - a.x) * k) / 20 + drawing.shiftMm.xMm;
              const y = a.y + ((b.y - a.y) * k) / 20 + drawing.shiftMm.yMm;
              expect(isOn(x, y)).toBe(true);
            }
          });
        }
        for (const one of tiles) {
          const next = tiles.find(
            (other) => other.rowIndex === one.rowIndex && other.columnIndex === one.columnIndex + 1,
          );
          if (next === undefined) continue;
          expect(one.window.xMm + one.window.widthMm - next.window.xMm).toBeCloseTo(10, 9);
        }
      }
    }
  });

  it("finds a free place for every note", () => {
    for (const { loom, crowdedCount } of boardsOf(name)) {
      expect(crowdedCount, loom).toBe(0);
    }
  });
});

function wordsOf(marks: readonly Mark[]): readonly string[] {
  return marks.flatMap((mark): readonly string[] => {
    if (mark.kind === "group") return wordsOf(mark.marks);
    return mark.kind === "text" ? mark.text.split(/[\s,]+/) : [];
  });
}

it("corrects a printer by the two readings of its bar", async () => {
  const drawing = boardsOf("aldreth-single").find(({ loom }) => loom === "rear")!;
  const { info } = inputs.get("aldreth-single")!;
  const print = { ...PRINT, readAcrossMm: 99.2, readDownMm: 100.6 };
  const tiling = tilingOf(drawing, print);
  const words = { title: "Board", facing: "", pageOrder: 1, pageCount: 1 };
  const page = tilePage({
    marks: drawing.marks,
    print,
    tiling,
    tile: tiling.tiles[0]!,
    info,
    words,
    map: () => [],
  });
  const lines = await linesBack([page]);
  // The bar is one level line; what the printer makes of it is 0.992 of what the file says.
  const bars = lines
    .map((line) => Math.abs((line[1]?.x ?? 0) - (line[0]?.x ?? 0)))
    .filter((widthMm) => Math.abs(widthMm * 0.992 - 100) < 0.02);
  expect(bars.length).toBeGreaterThan(0);
  const square = lines
    .filter((line) => line.length >= 4)
    .map((line) => ({
      widthMm: Math.max(...line.map(({ x }) => x)) - Math.min(...line.map(({ x }) => x)),
      heightMm: Math.max(...line.map(({ y }) => y)) - Math.min(...line.map(({ y }) => y)),
    }));
  const isTrue = square.some(
    ({ widthMm, heightMm }) =>
      Math.abs(widthMm * 0.992 - 20) < 0.02 && Math.abs(heightMm * 1.006 - 20) < 0.02,
  );
  expect(isTrue).toBe(true);
});

it("writes the board as the same DXF each time, in millimetres, each limb at its length", () => {
  const drawing = boardsOf("aldreth-single").find(({ loom }) => loom === "main")!;
  const { info } = inputs.get("aldreth-single")!;
  const page = rollPage(drawing, PRINT, info, "Board");
  const text = pageToDxf(page);
  expect(pageToDxf(page)).toBe(text);
  const lines = text.split("\n").map((line) => line.trim());
  expect(lines[lines.indexOf("$INSUNITS") + 2]).toBe("4");
  const lengths = polylinesOf(lines, "centre-line").map(polylineLength);
  const planned = drawing.layout.limbs.map(({ lengthMm }) => lengthMm);
  expect(lengths.length).toBe(planned.length);
  lengths.forEach((lengthMm, i) => {
    expect(lengthMm).toBeCloseTo(planned[i]!, 4);
  });
  expect(/[^\x20-\x7e\n\r]/.test(text)).toBe(false);
});

/** Vertices of every polyline of a layer, read from the pairs of code and value. */
function polylinesOf(lines: readonly string[], layer: string): { x: number; y: number }[][] {
  const found: { x: number; y: number }[][] = [];
  let current: { x: number; y: number }[] | null = null;
  let isLayer = false;
  for (let i = 0; i + 1 < lines.length; i += 2) {
    const [code, value] = [lines[i]!, lines[i + 1]!];
    if (code === "0") {
      if (current !== null && isLayer) found.push(current);
      current = value === "LWPOLYLINE" ? [] : null;
    }
    if (current === null) continue;
    if (code === "8") isLayer = value === layer;
    if (code === "10") current.push({ x: Number(value), y: 0 });
    if (code === "20") current.at(-1)!.y = Number(value);
  }
  return found;
}
