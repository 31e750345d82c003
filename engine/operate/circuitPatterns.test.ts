import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { applyOperation, type Job, patternOperation, readJob } from "../job/index.ts";
import { operateJob } from "./index.ts";

const read = readJob(readFileSync("demos/accessory-five-wires.json", "utf8"));
if (!read.ok) throw new Error("the demo does not read");

const stations = ["A", "B"].map((id) => ({ id, name: id }));
const bare: Job = { ...read.job, stations };
const stated = (value: number) => ({ value, basis: "stated" as const });
const frame = "FRAME.+";
const live = "BAT.+";

function with_(id: string, text: Record<string, string>, figures = {}): { job: Job; parts: readonly string[] } {
  const made = patternOperation(bare, id, text, figures);
  if (!made.ok) throw new Error(made.missing.join());
  const done = applyOperation(bare, made.operation);
  if (!done.ok) throw new Error(JSON.stringify(done.refusals[0]));
  return { job: done.job, parts: made.parts };
}

/** Loads that work with these positions set. */
function working(job: Job, positions: Record<string, string>, flash?: "on" | "off"): readonly string[] {
  const done = operateJob(job, { state: { positions, ...(flash ? { flash } : {}) } } as never);
  if (!done.ok) throw new Error(JSON.stringify(done));
  return Object.entries(done as never as Record<string, unknown>).map(([key]) => key);
}

describe("circuit patterns at work", () => {
  it("shows what operate gives", () => {
    const { job } = with_("horn-push", { feed: live, hornAt: "A", pushAt: "B", earth: frame }, { ohm: stated(4) });
    expect(working(job, {})).toEqual([]);
  });
});
