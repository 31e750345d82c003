import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type Job, readJob } from "../job/index.ts";
import { conductorsOf, routeJob } from "../route/index.ts";
import { crimpPullOf } from "./crimpPull.ts";
import { endFittings } from "./endFittings.ts";
import { ringFit, terminalFitByArea } from "./terminalFit.ts";

function demo(name: string): Job {
  const read = readJob(readFileSync(new URL(`../../demos/${name}.json`, import.meta.url), "utf8"));
  if (!read.ok) throw new Error(`${name} does not read`);
  return read.job;
}

const fittingsOf = (job: Job) => endFittings(job, conductorsOf(job, routeJob(job)));

describe("pull-out force", () => {
  it("is the table's at its rows and lies between neighbours otherwise", () => {
    // Commercial column of tables/crimpPull: 18 AWG 89 N, 16 AWG 133.5 N.
    expect(crimpPullOf(0.82)?.forceN).toBe(89);
    expect(crimpPullOf(1.31)?.forceN).toBe(133.5);
    // The metric rows of the same table were interpolated by whoever made them and rounded to 1 N.
    expect(crimpPullOf(1)?.forceN).toBeCloseTo(105, -0.5);
    expect(crimpPullOf(2)?.forceN).toBeCloseTo(213, -0.5);
  });

  it("is not stretched beyond the table", () => {
    expect(crimpPullOf(0.05)).toBeNull();
    expect(crimpPullOf(120)).toBeNull();
  });
});

describe("barrels", () => {
  it("says so when copper falls between two barrels or above all", () => {
    const blades = ["blade-6.3", "blade-6.3-large"];
    expect(terminalFitByArea(blades, 2, null)).toMatchObject({
      terminal: "blade-6.3",
      problem: null,
    });
    expect(terminalFitByArea(blades, 3, null)).toMatchObject({
      terminal: "blade-6.3-large",
      problem: "between-ranges",
    });
    expect(terminalFitByArea(blades, 10, null).problem).toBe("above-range");
    expect(terminalFitByArea(blades, 0.22, null).problem).toBe("below-range");
    expect(ringFit("M6", 16)).toMatchObject({ terminal: "ring-M6", problem: null });
    expect(ringFit(null, 16).problem).toBe("stud-not-stated");
  });
});

describe("ends of the demos", () => {
  it("gives both ends of every wire that will be on the machine, each once", () => {
    for (const name of ["minazuru-four", "aldreth-single", "accessory-five-wires"]) {
      const job = demo(name);
      const seen = fittingsOf(job).map(({ wire, end }) => `${wire} ${end}`);
      expect(new Set(seen).size).toBe(seen.length);
      expect(seen.length).toBe(2 * job.wires.filter((wire) => wire.status !== "remove").length);
    }
  });

  it("puts a ring on a stud, a shared blade on a lamp, and keeps what a person fixed", () => {
    const job = demo("accessory-five-wires");
    const at = (wire: string, end: string) =>
      fittingsOf(job).find((one) => one.wire === wire && one.end === end)!;
    expect(at("W1", "from")).toMatchObject({ terminal: "ring-M6", basis: "stud" });
    // W3 and W4 meet at SPL.L: 1 + 1 mm² in one barrel, the pull that of the thinner.
    expect(at("W3", "to")).toMatchObject({ sharedWith: ["W4"], barrelAreaMm2: 2, basis: "area" });
    const fixed = {
      ...job,
      wires: job.wires.map((wire) =>
        wire.id === "W2" ? { ...wire, toEnd: { terminal: "bullet-3.9" } } : wire,
      ),
    };
    const end = fittingsOf(fixed).find((one) => one.wire === "W2" && one.end === "to");
    expect(end).toMatchObject({ terminal: "bullet-3.9", chosenBy: "person", problem: null });
  });
});
