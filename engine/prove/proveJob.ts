import type { ProofInput, ProofOptions } from "./proofInput.ts";
import { provedResult } from "./provedResult.ts";
import { mergedFirst, type Progress, proofWork, proveFirst, proveSecond } from "./provePart.ts";
import type { ProveResult } from "./proveResult.ts";
import { withTriedChanges } from "./triedChanges.ts";

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
  const second = proveSecond(work, first, whole, progress);
  const result = provedResult(work, first, [second], options);
  return options.tryRemedies === false ? result : withTriedChanges(input, result, proveOnTrial);
}

/** A changed job proven in this thread, without trying anything further. */
export const proveOnTrial = (input: ProofInput): ProveResult =>
  proveJob(input, { tryRemedies: false });
