import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readJob } from "../read/readJob.ts";
import { writeJob } from "../write/writeJob.ts";
import { applyOperation } from "./applyOperation.ts";
import { swapWireEnds } from "./swapWireEnds.ts";

const read = readJob(readFileSync("demos/minazuru-four.json", "utf8"));
if (!read.ok) throw new Error("the demo does not read");
const { job } = read;
const switches = job.parts.filter(({ kind }) => kind === "switch").map(({ id }) => `${id}.`);

/** Two wires that leave different pins of the same switch. */
const [one, other] = (() => {
  for (const a of job.wires) {
    const owner = switches.find((name) => a.from.startsWith(name));
    const b = job.wires.find(
      (wire) => owner && wire.from.startsWith(owner) && wire.from !== a.from,
    );
    if (owner && b) return [a, b] as const;
  }
  throw new Error("no switch with two pins");
})();

test("two wires of one switch change pins there, keep their other ends, and a second swap is as before", () => {
  const done = applyOperation(job, swapWireEnds(job, one.id, other.id)!);
  if (!done.ok) throw new Error(done.refusals[0]?.message);
  const wire = (id: string) => done.job.wires.find((item) => item.id === id)!;
  expect([wire(one.id).from, wire(other.id).from]).toEqual([other.from, one.from]);
  expect([wire(one.id).to, wire(other.id).to]).toEqual([one.to, other.to]);
  const back = applyOperation(done.job, swapWireEnds(done.job, one.id, other.id)!);
  expect(back.ok && writeJob(back.job)).toBe(writeJob(job));
});

test("a wire with itself, or with one that is not there, is nothing to do", () => {
  expect(swapWireEnds(job, one.id, one.id)).toBeNull();
  expect(swapWireEnds(job, one.id, "nowhere")).toBeNull();
});
