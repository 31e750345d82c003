import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { applyOperation, type Job, type Operation, readJob } from "../../job/index.ts";
import { checkedJob } from "../../judge/index.ts";
import { buildCards } from "../build/buildCards.ts";
import { testSheetOf } from "../test/testSheet.ts";
import { machineRuleOf } from "./loomRuleOf.ts";
import { sceneSource } from "./sceneSource.ts";
import { sectionScenes } from "./sectionScenes.ts";

const read = readJob(readFileSync("demos/orivesta-enduro.json", "utf8"));
if (!read.ok) throw new Error("the demo does not read");
const demo = read.job;

function after(job: Job, operation: Operation): Job {
  const done = applyOperation(job, operation);
  if (!done.ok) throw new Error(JSON.stringify(done.refusals));
  return done.job;
}

const wire = demo.wires.find(({ loom, status }) => loom !== undefined && status === "new")!;
const tick = { id: "T1", subject: wire.id, done: "cut", by: "tester", date: "2026-01-02" };
const reading = {
  id: "M1",
  test: "drain",
  subject: "anything",
  read: 0.01,
  unit: "A",
  by: "tester",
  date: "2026-01-02",
};

/** Edits of every sort the source tells apart: records, names, sizes, lengths. */
const EDITS: readonly (readonly [string, Operation])[] = [
  ["a tick", { op: "add", list: "build", item: tick }],
  ["a reading", { op: "add", list: "tests", item: reading }],
  [
    "a part's name",
    { op: "set", list: "parts", id: demo.parts[0]!.id, path: ["name"], value: "renamed" },
  ],
  [
    "a wire's make",
    {
      op: "set",
      list: "wires",
      id: wire.id,
      path: ["size"],
      value: { make: "thin-3.0", basis: "chosen" },
    },
  ],
  ["a state's position", { op: "remove", list: "states", id: demo.states[0]!.id }],
];

describe("a source made after an edit", () => {
  const before = sceneSource(checkedJob(demo));
  sectionScenes(before);
  testSheetOf(before);

  test.each(EDITS)("of %s tells what a fresh one tells", (_name, operation) => {
    const checked = checkedJob(after(demo, operation));
    const [again, fresh] = [sceneSource(checked, before), sceneSource(checked)];
    expect(testSheetOf(again)).toEqual(testSheetOf(fresh));
    expect(sectionScenes(again)).toEqual(sectionScenes(fresh));
    expect(machineRuleOf(again)).toEqual(machineRuleOf(fresh));
    expect(buildCards(again)).toEqual(buildCards(fresh));
    expect(again.solved().states).toEqual(fresh.solved().states);
  });

  test("solves again for everything but ticks and readings, and packs no mixture twice", () => {
    const shares = EDITS.map(([name, operation]) => {
      const source = sceneSource(checkedJob(after(demo, operation)), before);
      return [name, source.solved().states === before.solved().states] as const;
    });
    expect(Object.fromEntries(shares)).toEqual({
      "a tick": true,
      "a reading": true,
      "a part's name": false,
      "a wire's make": false,
      "a state's position": false,
    });
    const renamed = sceneSource(checkedJob(after(demo, EDITS[2]![1])), before);
    const [section] = sectionScenes(renamed);
    expect([...before.packed.values()]).toContain(section!.bundle);
  });
});
