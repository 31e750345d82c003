import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Worker } from "node:worker_threads";
import type { ProofInput, ProveResult } from "@copperwright/engine";
import { proveInThreads } from "./proveInThreads.ts";

/** Stands beside the bundled command only; from source the proof is made here and now. */
const WORKER = new URL("./proveBesideWorker.mjs", import.meta.url);

/** A proof in threads of its own, begun now, so that papers can be drawn meanwhile. The answer is the one `proveInThreads` gives. */
export function proveBeside(input: ProofInput, worker: URL = WORKER): Promise<ProveResult> {
  if (!existsSync(fileURLToPath(worker))) return proveInThreads(input, () => {});
  const proof = new Promise<ProveResult>((resolve, reject) => {
    const thread = new Worker(worker, { workerData: input });
    thread.once("message", resolve);
    thread.once("error", reject);
    thread.once("exit", () => reject(new Error("The proof ended without an answer.")));
  });
  // Whoever waits for it hears of a fault; nobody waits yet.
  proof.catch(() => {});
  return proof;
}
