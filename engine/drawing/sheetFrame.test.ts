import { expect, it } from "vitest";
import { marksOutside, struckTexts, textOverlaps } from "./drawingFaults.fixture.ts";
import { framedDocument } from "./framedDocument.ts";
import { textMarks } from "./missingGlyphs.ts";
import { type Paper, paperSizeMm } from "./paperSize.ts";
import { sampleInfo } from "./sampleSheets.fixture.ts";
import { area, type Mark, type RectMark } from "./scene.ts";
import { sheetRoom } from "./sheetFrame.ts";
import { dateText } from "./sheetInfo.ts";

const papers: readonly Paper[] = (["a4", "a3", "letter"] as const).flatMap((size) =>
  (["portrait", "landscape"] as const).map((orientation) => ({ size, orientation })),
);

const long =
  "Extraordinarily long name of a machine that nobody would give, with a side-car and two more lamps";

const sheet = (paper: Paper, title: string) => ({
  paper,
  documentName: "test sheet",
  head: { title, lead: "How to read the sheet, in a line or two." },
  bookmark: [title],
  marks: [],
});

const framed = (paper: Paper, info = sampleInfo, title = "Title"): readonly Mark[] =>
  framedDocument(info, "t", [sheet(paper, title)]).pages[0]!.marks;

it.each(papers)(
  "has its margins, title block and plate where a binder expects them: $size $orientation",
  (paper) => {
    const { widthMm, heightMm } = paperSizeMm(paper);
    const { frame, content } = sheetRoom(paper, sampleInfo, { title: "Title" });
    expect(frame).toEqual(area(20, 10, widthMm - 30, heightMm - 20));
    const rects = framed(paper).flatMap((mark) =>
      mark.kind === "group" ? mark.marks : [mark],
    ) as RectMark[];
    const block = rects.find(
      (mark) => mark.kind === "rect" && mark.area.widthMm === 180 && mark.area.heightMm < 100,
    )!;
    expect(block.area.heightMm).toBe(24);
    expect(block.area.xMm + 180).toBeCloseTo(widthMm - 10, 9);
    expect(block.area.yMm + 24).toBeCloseTo(heightMm - 10, 9);
    expect(content.yMm + content.heightMm).toBeLessThan(block.area.yMm);
  },
);

it.each(papers)("says everything about the job on every sheet: $size $orientation", (paper) => {
  const said = textMarks(framed(paper)).map(({ text }) => text);
  for (const text of [
    "Marlow 650 twin, 1958",
    "job 0417, rev 23, 25 Nov 2026",
    "12 V",
    "live −",
    "earth +",
    "1 of 1",
    "mend",
  ]) {
    expect(said).toContain(text);
  }
});

it.each(papers)("keeps long names in their places: $size $orientation", (paper) => {
  const info = {
    ...sampleInfo,
    machine: `${long}, ${long}`,
    jobId: "A-JOB-ID-OF-THIRTY-TWO-CHARACTER",
    jobName: `${long} ${long}`,
    nominalV: 24,
    verdict: "not proven" as const,
    verdictNote: long,
  };
  const marks = framed(paper, info, long);
  expect(textOverlaps(marks)).toEqual([]);
  expect(struckTexts(marks)).toEqual([]);
  const { widthMm, heightMm } = paperSizeMm(paper);
  expect(marksOutside(marks, area(0, 0, widthMm, heightMm))).toEqual([]);
  const said = textMarks(marks)
    .map(({ text }) => text)
    .join(" ");
  expect(said).toContain("two more lamps, Extraordinarily");
});

it("turns the poles round with the earth", () => {
  const said = textMarks(framed(papers[0]!, { ...sampleInfo, earthPolarity: "negative" })).map(
    ({ text }) => text,
  );
  expect(said).toContain("live +");
  expect(said).toContain("earth −");
});

it("writes dates that cannot be read two ways", () => {
  expect(dateText("2026-03-01")).toBe("1 Mar 2026");
});
