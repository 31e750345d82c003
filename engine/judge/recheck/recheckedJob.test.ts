import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { applyOperation, type Job, readJob } from "../../job/index.ts";
import { checkedJob, recheckedJob } from "../checkJob.ts";
import { differenceOf } from "./differenceOf.fixture.ts";
import { EDITS, type EditKind, LARGER_EDITS } from "./edits.fixture.ts";

function demo(name: string): Job {
  const read = readJob(
    readFileSync(new URL(`../../../demos/${name}.json`, import.meta.url), "utf8"),
  );
  if (!read.ok) throw new Error(read.refusals[0]!.message);
  return read.job;
}

const KINDS: readonly [string, EditKind][] = Object.entries({ ...EDITS, ...LARGER_EDITS });

/** A check after every edit of a chain, each made of the one before: the first difference from a check made afresh. */
function firstDifference(name: string, steps: readonly (readonly [number, number])[]) {
  let job = demo(name);
  let before = checkedJob(job);
  let doneCount = 0;
  for (const [kind, k] of steps) {
    const [what, edit] = KINDS[kind]!;
    const operation = edit(job, k);
    const applied = operation === null ? null : applyOperation(job, operation);
    if (applied === null || !applied.ok) continue;
    doneCount++;
    job = applied.job;
    const again = recheckedJob(before, job);
    const difference = differenceOf(again, checkedJob(job));
    if (difference !== null) return { what, k, difference };
    before = again;
  }
  if (steps.length > 0 && doneCount === 0) throw new Error("no edit could be made");
  return null;
}

const allKinds = (k: number): readonly (readonly [number, number])[] =>
  KINDS.map((_, kind) => [kind, k + 7 * kind] as const);

describe("a check after an edit", () => {
  it.each(["accessory-five-wires", "aldreth-single"])(
    "is the check of the edited job, whatever was done to %s",
    { timeout: 240_000 },
    (name) => {
      expect(firstDifference(name, allKinds(3))).toBeNull();
    },
  );

  it.each(["orivesta-enduro", "minazuru-four", "brenzach-twin"])(
    "is so for the larger loom of %s",
    { timeout: 240_000 },
    (name) => {
      const kinds = ["note of a wire", "size of a wire", "end of a wire moved", "joint put in"];
      const placeOf = (what: string): number => KINDS.findIndex(([one]) => one === what);
      const steps = kinds.map((what, k) => [placeOf(what), 40 + k] as const);
      expect(firstDifference(name, steps)).toBeNull();
    },
  );

  it("is so for any chain of edits", { timeout: 240_000 }, () => {
    const step = fc.tuple(fc.nat(KINDS.length - 1), fc.nat(400));
    const chain = fc.array(step, { minLength: 3, maxLength: 8 });
    fc.assert(
      fc.property(chain, (steps) => firstDifference("accessory-five-wires", steps) === null),
      { numRuns: 25, seed: 20261125 },
    );
  });

  it("leaves the check before it as it was", () => {
    const job = demo("aldreth-single");
    const before = checkedJob(job);
    for (const [kind, k] of allKinds(11)) {
      const operation = KINDS[kind]![1](job, k);
      const applied = operation === null ? null : applyOperation(job, operation);
      if (applied?.ok) recheckedJob(before, applied.job);
    }
    expect(differenceOf(before, checkedJob(job))).toBeNull();
  });

  it("takes the stages an edit does not touch as they are", () => {
    const job = demo("orivesta-enduro");
    const before = checkedJob(job);
    const applied = applyOperation(job, EDITS["note of a wire"]!(job, 5)!);
    if (!applied.ok) throw new Error("a note is an edit");
    const { design } = recheckedJob(before, applied.job);
    expect(design.routed).toBe(before.design.routed);
    expect(design.sizing).toBe(before.design.sizing);
    expect(design.worst).toBe(before.design.worst);
    expect(design.protection).toBe(before.design.protection);
  });
});
