import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { marksOutside, struckTexts, textOverlaps } from "../../drawing/drawingFaults.fixture.ts";
import { sheetRoom } from "../../drawing/index.ts";
import { textMarks } from "../../drawing/missingGlyphs.ts";
import { readJob } from "../../job/index.ts";
import { checkedJob } from "../../judge/index.ts";
import { paperInput } from "../paperInput.ts";
import { circuitPaper } from "./circuitPaper.ts";

const demos = new URL("../../../demos/", import.meta.url);

it.each(readdirSync(demos).filter((file) => file.endsWith(".json")))(
  "draws every circuit of %s in place, nothing over anything, both halves of each relay tied",
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
  },
);
