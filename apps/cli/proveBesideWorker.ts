import { parentPort, workerData } from "node:worker_threads";
import type { ProofInput } from "@copperwright/engine";
import { proveInThreads } from "./proveInThreads.ts";

/** The whole of a proof away from the thread that draws. */
parentPort!.postMessage(await proveInThreads(workerData as ProofInput, () => {}));
