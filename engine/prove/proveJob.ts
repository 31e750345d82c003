import type { ProofInput, ProofOptions } from "./proofInput.ts";
import { provedResult } from "./provedResult.ts";
import { mergedFirst, type Progress, proofWork, proveFirst, proveSecond } from "./provePart.ts";
import type { ProveResult } from "./proveResult.ts";

/**
 * The whole proof of a job in one thread: every state, every place open, every short.
 *
 * @param input   the job as it will be, with lengths, copper and guards.
 * @param progress  told as work gets on; a pure function of the input otherwise.
 */
export function proveJob(
  input: ProofInput,
  options: ProofOptions = {},
  progress?: Progress,
): ProveResult {
  const work = proofWork(input);
  const whole = { index: 0, count: 1 };
  const first = mergedFirst(work.plan, [proveFirst(work, whole, progress)]);
  const second = proveSecond(work, first.tallies, whole, progress);
  return provedResult(work, first, [second], options);
}
