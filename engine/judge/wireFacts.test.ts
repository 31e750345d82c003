import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readJob } from "../job/index.ts";
import { checkedJob } from "./checkJob.ts";
import { wireFacts } from "./wireFacts.ts";

const read = readJob(readFileSync("demos/accessory-five-wires.json", "utf8"));
if (!read.ok) throw new Error("the demo does not read");
const checked = checkedJob(read.job);

describe("facts of a wire", () => {
  it("its sums give the figures of the check", () => {
    for (const row of checked.result.wires) {
      const facts = wireFacts(checked, row.wire)!;
      const of = (fact: typeof facts.size | null, name: string): number =>
        Number(fact?.working.inputs.find((input) => input.name === name)?.value);
      const { size, cut, carries, loses } = facts;
      expect((of(size, "n") * Math.PI * of(size, "d") ** 2) / 4).toBeCloseTo(row.areaMm2, 6);
      const sum = cut?.working.inputs.reduce((total, { value }) => total + Number(value), 0);
      expect(sum).toBeCloseTo(row.cutMm!.total, 6);
      expect(carries?.working.value).toBe(row.worstA);
      expect(loses?.working.value).toBeCloseTo(
        of(loses, "I") * of(loses, "R'") * of(loses, "L"),
        9,
      );
    }
  });

  it("measured volts along a wire are those solved: a wire's two ends in its worst state", () => {
    const facts = wireFacts(checked, "W3")!;
    expect(facts.row.from).toBe("SW.OUT");
    // 6.3 A through 18.5 mΩ/m: computed by hand from the row's own make.
    const { worstA, ohmPerM, pathMm } = facts.row;
    expect(facts.loses!.working.value).toBeCloseTo((worstA! * ohmPerM * pathMm!) / 1000, 9);
    expect(facts.carries!.note).toBe("with SW ON");
    expect(facts.loses!.limit?.value).toBe(0.5);
  });

  it("shows what a starter cable carries while the starter turns, not the nought it carries else", () => {
    const four = readJob(readFileSync("demos/minazuru-four.json", "utf8"));
    if (!four.ok) throw new Error("the demo does not read");
    const { carries, loses, row } = wireFacts(checkedJob(four.job), "C04")!;
    expect(row.worstA).toBe(0);
    expect(carries?.working.value).toBe(row.crankingA);
    expect(carries?.limit).toBeNull();
    expect(loses?.working.value).toBeCloseTo(
      (row.crankingA! * row.ohmPerM * row.pathMm!) / 1000,
      9,
    );
  });

  it("knows no wire that is not there", () => {
    expect(wireFacts(checked, "W99")).toBeNull();
  });
});
