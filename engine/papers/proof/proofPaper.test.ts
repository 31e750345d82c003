import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Mark, PointMm } from "../../drawing/index.ts";
import { applyOperation, type Job, readJob } from "../../job/index.ts";
import { checkedJob } from "../../judge/index.ts";
import { preparedProof, proveJob, timeCurrentsOf } from "../../prove/index.ts";
import { paperInput } from "../paperInput.ts";
import { hatch } from "./hatch.ts";
import { type ProofShown, proofPaper } from "./proofPaper.ts";

function demo(name: string): Job {
  const path = new URL(`../../../demos/${name}.json`, import.meta.url);
  const read = readJob(readFileSync(path, "utf8"));
  if (!read.ok) throw new Error("the demo reads");
  return read.job;
}

function shown(job: Job) {
  const checked = checkedJob(job);
  const result = proveJob(preparedProof(checked.design), { tryRemedies: false });
  const proof: ProofShown = { result, plots: timeCurrentsOf(checked) };
  const at = { fingerprint: "0".repeat(64), paper: "a4" } as const;
  const input = paperInput(checked.design, checked.result, at);
  return { proof, paper: proofPaper(input, "19-proof", proof), input };
}

const flat = (marks: readonly Mark[]): Mark[] =>
  marks.flatMap((mark) => (mark.kind === "group" ? flat(mark.marks) : [mark]));
const textsOf = (marks: readonly Mark[]): string[] =>
  flat(marks).flatMap((mark) => (mark.kind === "text" ? [mark.text] : []));
const isDanger = (mark: Mark): boolean => mark.kind === "line" && mark.stroke.colour === "stop";

const enduro = shown(demo("orivesta-enduro"));

describe("the proof on paper", () => {
  test("one page to sign: verdict, coverage, cautions, three lines to write on", () => {
    const { paper, proof } = enduro;
    const [sign, next] = paper.sheets;
    const texts = textsOf(sign!.marks);
    for (const word of ["Name", "Date", "Signature", "Full product", "Open findings"])
      expect(texts).toContain(word);
    expect(texts.join(" ").toLowerCase()).toContain(proof.result.verdict);
    const { productCount } = proof.result.coverage;
    expect(texts.join(" ").replace(/\D/g, "")).toContain(String(productCount));
    expect(textsOf(next!.marks)).not.toContain("Signature");
  });

  test("every fuse has its plot with both edges of the band named on them, every wire its row", () => {
    const { paper, proof } = enduro;
    const texts = paper.sheets.flatMap(({ marks }) => textsOf(marks));
    for (const { fuse, name } of proof.plots) {
      expect(texts).toContain(`${fuse}: ${name}`);
      expect(texts).toContain(`${name}: open by now`);
    }
    expect(paper.rows!.slice(1).map(([wire]) => wire)).toEqual(
      proof.result.wires.map(({ wire }) => wire),
    );
  });

  test("nothing stands outside its sheet", () => {
    for (const { marks } of enduro.paper.sheets) {
      for (const mark of flat(marks)) {
        const points: readonly PointMm[] =
          mark.kind === "polyline"
            ? mark.points
            : mark.kind === "line"
              ? [mark.from, mark.to]
              : mark.kind === "text"
                ? [mark.at]
                : [];
        for (const { xMm, yMm } of points) {
          expect(xMm).toBeGreaterThanOrEqual(20);
          expect(xMm).toBeLessThanOrEqual(200);
          expect(yMm).toBeGreaterThanOrEqual(10);
          expect(yMm).toBeLessThanOrEqual(287);
        }
      }
    }
  });

  test("danger is hatched where a fuse outlasts a wire, and nowhere else", () => {
    const marks = enduro.paper.sheets.flatMap((sheet) => flat(sheet.marks));
    expect(enduro.proof.plots.flatMap(({ danger }) => danger)).toEqual([]);
    expect(marks.some(isDanger)).toBe(false);
    const applied = applyOperation(demo("orivesta-enduro"), {
      op: "set",
      list: "parts",
      id: "F1",
      path: ["ratingA"],
      value: 30,
    });
    if (!applied.ok) throw new Error("the rating can be set");
    const { paper } = shown(applied.job);
    expect(paper.sheets.flatMap((sheet) => flat(sheet.marks)).some(isDanger)).toBe(true);
  });

  test("without a proof there is no such paper", () => {
    expect(proofPaper(enduro.input, "19-proof", null).sheets).toEqual([]);
  });
});

test("hatching stays between its curves", () => {
  const upper = [
    { xMm: 0, yMm: 0 },
    { xMm: 10, yMm: 5 },
  ];
  const lower = [
    { xMm: 0, yMm: 20 },
    { xMm: 10, yMm: 10 },
  ];
  const lines = hatch(upper, lower, { widthMm: 0.35, colour: "stop" });
  expect(lines.length).toBeGreaterThan(5);
  for (const line of lines) {
    if (line.kind !== "line") throw new Error("a line");
    for (const { xMm, yMm } of [line.from, line.to]) {
      expect(yMm).toBeGreaterThanOrEqual(xMm / 2 - 1e-9);
      expect(yMm).toBeLessThanOrEqual(20 - xMm + 1e-9);
    }
  }
});
