import { expect, test } from "vitest";
import {
  mergedFirst,
  proofWork,
  provedResult,
  proveFirst,
  proveJob,
  proveSecond,
} from "../../engine/index.ts";
import { jobOfDemo, proofInputOf } from "./proofOfDemo.ts";

test("a proof in three parts, in any order, is the proof in one", () => {
  const input = proofInputOf(jobOfDemo("orivesta-enduro"));
  const whole = proveJob(input);
  const work = proofWork(input);
  const shares = [2, 0, 1].map((index) => ({ index, count: 3 }));
  const first = mergedFirst(
    work.plan,
    shares.map((share) => proveFirst(proofWork(input), share)),
  );
  const seconds = shares.map((share) => proveSecond(proofWork(input), first, share));
  const parts = provedResult(work, first, seconds, {});
  // How much was solved depends on what each part had to lay out again; what was found does not.
  const { coverage: one, ...rest } = whole;
  const { coverage: other, ...again } = parts;
  expect(again).toEqual(rest);
  expect(other.screened).toBe(one.screened);
  expect(other.groups).toEqual(one.groups);
}, 600_000);
