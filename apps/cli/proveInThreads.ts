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

/** Threads that wait for something to prove; they keep nobody from ending who never asks them. */
export type ProofThreads = readonly Worker[];

/**
 * Up to so many wires a proof is made sooner by one thread: most of its time its code is being made fast, which each thread would have to do
 * for itself, and on the second core already.
 */
const ONE_THREAD_WIRES = 300;

/**
 * Starts the threads beside this one, so that they are up by the time the job is laid out: one where the job is large and the machine has two
 * to give. From source there is no bundle to start and this thread does it all.
 */
export function startThreads(wireCount: number, worker: URL = WORKER): ProofThreads {
  const isWorth = wireCount > ONE_THREAD_WIRES && existsSync(fileURLToPath(worker));
  const count = isWorth ? Math.min(2, availableParallelism()) - 1 : 0;
  return Array.from({ length: count }, () => {
    const thread = new Worker(worker);
    thread.unref();
    return thread;
  });
}

/**
 * A proof on the threads given and this one, which does its share as well. The parts are put together in order of the job, so the answer
 * does not depend on how many there were.
 */
export async function proveInThreads(
  input: ProofInput,
  told: Told,
  threads: ProofThreads = startThreads(input.job.wires.length),
): Promise<ProveResult> {
  const count = threads.length + 1;
  try {
    const others = threads.map((one, k) => {
      one.ref();
      const answer = nextMessage<FirstPart>(one);
      one.postMessage({ input, share: { index: k + 1, count } });
      return answer;
    });
    const work = proofWork(input);
    const share = { index: 0, count };
    const own = proveFirst(work, share, (stage, done, of) => {
      if (stage === "stray") told(TRUTH_SHARE + ((FIRST_SHARE - TRUTH_SHARE) * done) / of);
    });
    const first = mergedFirst(work.plan, [own, ...(await Promise.all(others))]);
    told(FIRST_SHARE);
    const { states, tallies } = first;
    const seconds = threads.map((one) => {
      const answer = nextMessage<SecondPart>(one);
      one.postMessage({ states, tallies });
      return answer;
    });
    const ownSecond = proveSecond(work, first, share);
    told(SECOND_SHARE);
    const result = provedResult(work, first, [ownSecond, ...(await Promise.all(seconds))], {});
    return withTriedChanges(input, result, proveOnTrial);
  } finally {
    await Promise.all(threads.map((one) => one.terminate()));
  }
}

/** Beside the bundled command. */
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
