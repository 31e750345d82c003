import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { type Mark, sheetRoom, textAreaMm } from "../../drawing/index.ts";
import { rectanglesOverlap } from "../../geometry/index.ts";
import { readJob } from "../../job/index.ts";
import { checkedJob } from "../../judge/index.ts";
import { spreadApart } from "../../layout/index.ts";
import { bundleReader } from "../board/bundles.ts";
import { jobCodeText } from "../label/jobCode.ts";
import { LABEL_STOCKS } from "../label/labelStock.ts";
import { wireLabelSheets, wireLabels } from "../label/wireLabels.ts";
import { type PaperInput, paperInput } from "../paperInput.ts";
import { sectionsOf } from "../section/sectionsOf.ts";
import { locationPaper } from "./locationPaper.ts";

const DEMOS = ["aldreth-single", "brenzach-twin", "minazuru-four", "orivesta-enduro"];

const known = new Map<string, PaperInput>();
function inputOf(name: string): PaperInput {
  const path = join(import.meta.dirname, "../../../demos", `${name}.json`);
  const read = readJob(readFileSync(path, "utf8"));
  if (!read.ok) throw new Error(name);
  const made = known.get(name);
  if (made !== undefined) return made;
  const { design, result } = checkedJob(read.job);
  const input = paperInput(design, result, { fingerprint: "ab".repeat(32), paper: "a4" });
  known.set(name, input);
  return input;
}

const groupsOf = (marks: readonly Mark[]): readonly (Mark & { kind: "group" })[] =>
  marks.filter((mark) => mark.kind === "group");

const textsOf = (marks: readonly Mark[]): readonly (Mark & { kind: "text" })[] =>
  marks.flatMap((mark) =>
    mark.kind === "group" ? textsOf(mark.marks) : mark.kind === "text" ? [mark] : [],
  );

describe.each(DEMOS)("%s", (name) => {
  it("shows every station with all that sits there, no writing over writing and none off the sheet", () => {
    const input = inputOf(name);
    const [sheet] = locationPaper(input, "view").sheets;
    const words = textsOf(sheet!.marks).flatMap(({ text }) => text.split(/\s+/));
    for (const { id, station, status } of [...input.job.parts, ...input.job.connectors]) {
      if (status !== "remove" && station !== undefined) expect(words).toContain(id);
    }
    const texts = textsOf(sheet!.marks).map(textAreaMm);
    const { content } = sheetRoom(sheet!.paper, input.info, sheet!.head);
    const boxes = texts.map(({ xMm, yMm, widthMm, heightMm }) => ({
      x: xMm,
      y: yMm + 0.3,
      width: widthMm,
      height: heightMm - 0.9,
    }));
    for (const [i, box] of boxes.entries()) {
      expect(box.x).toBeGreaterThanOrEqual(content.xMm - 0.5);
      expect(box.x + box.width).toBeLessThanOrEqual(content.xMm + content.widthMm + 0.5);
      for (const other of boxes.slice(0, i)) expect(rectanglesOverlap(box, other)).toBe(false);
    }
    const joints = groupsOf(sheet!.marks).filter((group) => group.name === "joint");
    const along = input.job.joints.filter(({ offset }) => offset !== undefined);
    expect(joints.map(({ id }) => id).sort()).toEqual(along.map(({ id }) => id).sort());
  });

  it("cuts through every bundle once, each wire inside its ring and clear of the others", () => {
    const input = inputOf(name);
    const sections = sectionsOf(input, bundleReader(input));
    const shown = new Set(
      sections.map(({ wires }) =>
        wires
          .map(({ id }) => id)
          .sort()
          .join(" "),
      ),
    );
    const bundles = input.design.routed.stretches.filter(({ wires }) => wires.length > 1);
    for (const { wires } of bundles) expect(shown).toContain([...wires].sort().join(" "));
    expect(shown.size).toBe(sections.length);
    for (const { bundle } of sections) {
      for (const [i, a] of bundle.wires.entries()) {
        expect(Math.hypot(a.xMm, a.yMm) + a.odMm / 2).toBeLessThanOrEqual(
          bundle.tightestMm / 2 + 1e-6,
        );
        for (const b of bundle.wires.slice(0, i)) {
          const apart = Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm);
          expect(apart).toBeGreaterThanOrEqual((a.odMm + b.odMm) / 2 - 1e-6);
        }
      }
    }
  });

  it("has a label for both ends of every wire, each inside its place on the stock", () => {
    const input = inputOf(name);
    const wires = input.job.wires.filter(({ status }) => status !== "remove");
    expect(wireLabels(input)).toHaveLength(2 * wires.length);
    const stock = LABEL_STOCKS.a4;
    const sheets = wireLabelSheets(input);
    const labels = sheets.flatMap(({ ownPage }) =>
      groupsOf(ownPage!(1, sheets.length).marks).filter(({ id }) => / (from|to)$/.test(id ?? "")),
    );
    expect(labels).toHaveLength(2 * wires.length);
    labels.forEach(({ marks }, n) => {
      const i = n % (stock.columnCount * stock.rowCount);
      const leftMm = stock.leftMm + (i % stock.columnCount) * stock.pitchXMm;
      const topMm = stock.topMm + Math.floor(i / stock.columnCount) * stock.pitchYMm;
      for (const { xMm, yMm, widthMm, heightMm } of textsOf(marks).map(textAreaMm)) {
        expect(xMm).toBeGreaterThanOrEqual(leftMm);
        expect(xMm + widthMm).toBeLessThanOrEqual(leftMm + stock.widthMm + 1e-6);
        expect(yMm).toBeGreaterThanOrEqual(topMm);
        expect(yMm + heightMm).toBeLessThanOrEqual(topMm + stock.heightMm + 1e-6);
      }
    });
  });
});

it("says of the job in its square code which one it is and nothing else", () => {
  expect(jobCodeText(inputOf("aldreth-single"))).toBe(`aldreth-single rev 1 ${"ab".repeat(32)}`);
});

it("parts rings that would cover each other and leaves others where they are", () => {
  const far = { x: 100, y: 100 };
  const spread = spreadApart([{ x: 0, y: 0 }, { x: 0, y: 0 }, { x: 1, y: 0 }, far], 4);
  for (const [i, p] of spread.entries()) {
    for (const q of spread.slice(0, i)) {
      expect(Math.hypot(p.x - q.x, p.y - q.y)).toBeGreaterThanOrEqual(4 - 1e-3);
    }
  }
  expect(spread[3]).toEqual(far);
});
