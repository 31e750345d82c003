import { describe, expect, it } from "vitest";
import { after, demoJob, smallDemos } from "../edit/demoJobs.fixture.ts";
import type { Job } from "../job.ts";
import { answerUnknown, type FoundOut } from "./answerUnknown.ts";
import { partFigures } from "./partFigures.ts";
import { setFigure } from "./setFigure.ts";
import { stillUnknown } from "./stillUnknown.ts";
import type { Unknown } from "./unknown.ts";

function found({ answer }: Unknown): FoundOut | null {
  switch (answer.kind) {
    case "length":
      return 123;
    case "number":
      return 0.5;
    case "wire":
      return "thin-1.0";
    case "choice":
      return answer.options[0]!.value;
    case "point":
      return { speedRpm: 4321, currentA: 3, atV: 13 };
    case "contacts":
      return null;
  }
}

describe("what is still unknown", () => {
  it("is one shorter after each answer until nothing is left", () => {
    for (const [name, first] of smallDemos) {
      let job: Job = first;
      for (let left = stillUnknown(job); left.length > 0; ) {
        const one = left[0]!;
        const answer = found(one);
        if (answer === null || one.answer.kind === "contacts") throw new Error(`${name} ${one.id}`);
        job = after(job, answerUnknown(one.answer.put, answer, "as typed"));
        const now = stillUnknown(job);
        expect(now.map(({ id }) => id)).not.toContain(one.id);
        expect(now.length).toBe(left.length - 1);
        left = now;
      }
      expect(JSON.stringify(job.runs)).not.toContain("estimated");
    }
  });

  it("names a length, a size, a mark, a table and the points of a generator that are missing", () => {
    const job = demoJob("minazuru-four");
    const bare: Job = {
      ...job,
      runs: job.runs.map(({ lengthMm: _, ...run }) => run),
      wires: job.wires.map(({ size: _, ...wire }) => ({ ...wire, status: "found" })),
      parts: job.parts.map((part) => {
        if (part.kind === "fuse") return { ...part, marking: "unknown", type: "unknown" };
        if (part.kind === "switch") {
          return { ...part, positions: part.positions.map((row) => ({ ...row, joins: [] })) };
        }
        if (part.kind !== "generator") return part;
        return { ...part, windings: part.windings.map(({ points: _, ...winding }) => winding) };
      }),
    };
    const count = (group: string) => stillUnknown(bare).filter((one) => one.group === group).length;
    const kinds = (kind: string) => job.parts.filter((part) => part.kind === kind).length;
    expect(count("runs")).toBe(job.runs.length);
    expect(count("wires")).toBe(job.wires.length);
    expect(count("fuses")).toBe(2 * kinds("fuse"));
    expect(count("switches")).toBe(kinds("switch"));
    expect(stillUnknown(bare).some(({ answer }) => answer.kind === "point")).toBe(true);
  });

  it("does not ask about what is to be taken off", () => {
    const job = demoJob("minazuru-four");
    const off: Job = {
      ...job,
      wires: job.wires.map(({ size: _, ...wire }) => ({ ...wire, status: "remove" })),
      parts: job.parts.map((part) => ({ ...part, status: "remove" })),
    };
    const groups = new Set(stillUnknown(off).map(({ group }) => group));
    for (const group of ["wires", "loads", "battery", "generator", "fuses"] as const) {
      expect(groups.has(group)).toBe(false);
    }
  });

  it("puts every figure of every part where it was read from", () => {
    for (const [, job] of smallDemos) {
      for (const part of job.parts) {
        for (const figure of partFigures(part)) {
          if (figure.value === null) continue;
          const put = setFigure(part.id, figure, figure.value, figure.basis ?? "stated");
          const again = after(job, put).parts.find(({ id }) => id === part.id)!;
          const now = partFigures(again).find(({ path }) => `${path}` === `${figure.path}`);
          expect(now).toEqual(figure);
        }
      }
    }
  });
});
