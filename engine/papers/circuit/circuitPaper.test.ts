import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { marksOutside, struckTexts, textOverlaps } from "../../drawing/drawingFaults.fixture.ts";
import { type Mark, sheetRoom } from "../../drawing/index.ts";
import { textMarks } from "../../drawing/missingGlyphs.ts";
import { readJob } from "../../job/index.ts";
import { checkedJob } from "../../judge/index.ts";
import { paperInput } from "../paperInput.ts";
import { circuitPaper } from "./circuitPaper.ts";

const demos = new URL("../../../demos/", import.meta.url);

it.each(readdirSync(demos).filter((file) => file.endsWith(".json")))(
  "draws every circuit of %s in place, nothing over anything, the parts of a relay and of a lamp with two filaments tied",
  (file) => {
    const read = readJob(readFileSync(new URL(file, demos), "utf8"));
    if (!read.ok) throw new Error(`${file} cannot be read`);
    const { design, result } = checkedJob(read.job);
    const input = paperInput(design, result, { fingerprint: "", paper: "a4" });
    const { sheets } = circuitPaper(input, "03");
    expect(sheets.length).toBeGreaterThan(0);
    for (const { marks, paper, head } of sheets) {
      expect(textOverlaps(marks)).toEqual([]);
      expect(struckTexts(marks)).toEqual([]);
      expect(marksOutside(marks, sheetRoom(paper, input.info, head).content)).toEqual([]);
    }
    const said = sheets
      .flatMap(({ marks }) => textMarks(marks))
      .map(({ text }) => text)
      .join(" ");
    const hasRelay = read.job.parts.some(({ kind }) => kind === "relay");
    expect(/contact (in|on)/.test(said)).toBe(hasRelay);
    expect(/coil (in|on)/.test(said)).toBe(hasRelay);
    const symbols = sheets.flatMap(({ marks }) => symbolsIn(marks));
    const filaments = read.job.parts.flatMap((part) =>
      part.kind === "lamp" && part.source !== "led" && part.filaments.length > 1
        ? part.filaments
        : [],
    );
    // One filament in each path, and no whole lamp for half of one.
    expect(symbols.filter((name) => name === "lampFilament")).toHaveLength(filaments.length);
    expect(symbols).not.toContain("twinLamp");
    expect((said.match(/filament \S+ (in|on)/g) ?? []).length).toBe(filaments.length);
  },
);

const symbolsIn = (marks: readonly Mark[]): readonly string[] =>
  marks.flatMap((mark) =>
    mark.kind === "group" ? symbolsIn(mark.marks) : mark.kind === "symbol" ? [mark.symbol] : [],
  );
