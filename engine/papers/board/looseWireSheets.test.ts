import { describe, expect, it } from "vitest";
import { textMarks } from "../../drawing/missingGlyphs.ts";
import type { Job } from "../../job/index.ts";
import { checkedJob } from "../../judge/index.ts";
import { demo } from "../demoJob.fixture.ts";
import { paperInput } from "../paperInput.ts";
import { boardDrawing } from "./boardDrawing.ts";
import { BOARD_PRINT } from "./boardPrint.ts";
import { bundleReader } from "./bundles.ts";
import { looseWireSheets, wiresOffBoards } from "./looseWireSheets.ts";

/** Ids of wires in limbs or written at places of each board, and of those on the loose sheets. */
function wherePut(job: Job) {
  const { design, result } = checkedJob(job);
  const input = paperInput(design, result, { fingerprint: "0".repeat(64), paper: "a4" });
  const bundleOf = bundleReader(input);
  const drawings = input.job.looms.flatMap(
    ({ id }) => boardDrawing(input, id, bundleOf, BOARD_PRINT.boardWidthMm) ?? [],
  );
  const off = wiresOffBoards(input, drawings);
  const words = looseWireSheets(input, off)
    .flatMap(({ marks }) => textMarks(marks))
    .map(({ text }) => text);
  const loose = [...off.loose, ...off.unlaid.flatMap(({ wires }) => wires)];
  const laid = new Set(drawings.map(({ loom }) => loom));
  const wires = design.job.wires.filter(({ status }) => status !== "remove");
  return { loose, laid, words, wires };
}

const DEMOS = [
  "accessory-five-wires",
  "aldreth-single",
  "brenzach-twin",
  "minazuru-four",
  "orivesta-enduro",
];

describe("loose wires", () => {
  it.each(DEMOS)(
    "%s: every wire is on the board of its loom or on the loose sheet, once",
    (name) => {
      const { loose, laid, words, wires } = wherePut(demo(name));
      const ids = loose.map(({ wire }) => wire.id);
      expect(new Set(ids).size).toBe(ids.length);
      for (const { id, loom, number } of wires) {
        const isOnBoard = loom !== undefined && laid.has(loom);
        expect(ids.includes(id), id).toBe(!isOnBoard);
        if (!isOnBoard) expect(words).toContain(number ?? id);
      }
    },
  );

  it("names the wires of a loom nobody has measured under the loom's name", () => {
    const job = demo("aldreth-single");
    const bare: Job = {
      ...job,
      runs: job.runs.map(({ lengthMm: _, ...run }) => run),
      wires: job.wires.map(({ lengthMm: _, ...wire }) => wire),
    };
    const { loose, laid, words, wires } = wherePut(bare);
    expect(laid.size).toBe(0);
    expect(loose).toHaveLength(wires.length);
    for (const { name } of bare.looms) {
      if (words.some((text) => text.startsWith(name))) return;
    }
    throw new Error("no loom is named");
  });
});
