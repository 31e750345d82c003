import { existsSync } from "node:fs";
import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import {
  type FirstPart,
  mergedFirst,
  type ProofInput,
  type ProveResult,
  proofWork,
  provedResult,
  proveFirst,
  proveOnTrial,
  proveSecond,
  type SecondPart,
  withTriedChanges,
} from "@copperwright/engine";

/** Told as work gets on: share done, 0 to 1. */
export type Told = (doneRatio: number) => void;

/** Shares of the whole that the stages take, roughly: only for telling how long it will last. */
const TRUTH_SHARE = 0.15;
const FIRST_SHARE = 0.45;
const SECOND_SHARE = 0.9;

/**
 * A proof on as many threads as the machine has, two at most: this one does its share as well. The parts are put together in order of
 * the job, so the answer does not depend on how many there were.
 */
export async function proveInThreads(
  input: ProofInput,
  told: Told,
  worker: URL = WORKER,
): Promise<ProveResult> {
  const count = existsSync(fileURLToPath(worker)) ? Math.min(2, availableParallelism()) : 1;
  const workers = Array.from(
    { length: count - 1 },
    (_, k) => new Worker(worker, { workerData: { input, share: { index: k + 1, count } } }),
  );
  try {
    const others = workers.map((one) => nextMessage<FirstPart>(one));
    const work = proofWork(input);
    const share = { index: 0, count };
    const own = proveFirst(work, share, (stage, done, of) => {
      if (stage === "stray") told(TRUTH_SHARE + ((FIRST_SHARE - TRUTH_SHARE) * done) / of);
    });
    const first = mergedFirst(work.plan, [own, ...(await Promise.all(others))]);
    told(FIRST_SHARE);
    const seconds = workers.map((one) => nextMessage<SecondPart>(one));
    for (const one of workers) one.postMessage(first.tallies);
    const ownSecond = proveSecond(work, first.tallies, share);
    told(SECOND_SHARE);
    const result = provedResult(work, first, [ownSecond, ...(await Promise.all(seconds))], {});
    return withTriedChanges(input, result, proveOnTrial);
  } finally {
    await Promise.all(workers.map((one) => one.terminate()));
  }
}

/** Beside the bundled command; from source there is none, and one thread does it all. */
const WORKER = new URL("./proveWorker.mjs", import.meta.url);

function nextMessage<T>(worker: Worker): Promise<T> {
  return new Promise((resolve, reject) => {
    worker.once("message", (message: T) => {
      worker.off("error", reject);
      resolve(message);
    });
    worker.once("error", reject);
  });
}
