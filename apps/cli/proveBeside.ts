import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import {
  type PlotInput,
  type ProveResult,
  plottedJob,
  type TimeCurrent,
  timeCurrentsOf,
} from "@copperwright/engine";
import { proveInThreads } from "./proveInThreads.ts";

/** A proof and its plots. */
export interface Proved {
  readonly result: ProveResult;
  readonly plots: readonly TimeCurrent[];
}

/** Stands beside the bundled command only; from source the proof is made here and now. */
const WORKER = new URL("./proveBesideWorker.mjs", import.meta.url);

/** A proof in threads of its own, begun now, so that papers can be drawn meanwhile. The answer is the one `proveInThreads` gives. */
export function proveBeside(input: PlotInput, worker: URL = WORKER): Promise<Proved> {
  return existsSync(fileURLToPath(worker)) ? inThread(input, worker) : here(input);
}

const here = async (input: PlotInput): Promise<Proved> => ({
  result: await proveInThreads(input.proof, () => {}),
  plots: timeCurrentsOf(plottedJob(input)),
});

const inThread = (input: PlotInput, worker: URL): Promise<Proved> =>
  new Promise((resolve, reject) => {
    const thread = new Worker(worker, { workerData: input });
    thread.once("message", resolve);
    thread.once("error", reject);
    thread.once("exit", () => reject(new Error("The proof ended without an answer.")));
  });
