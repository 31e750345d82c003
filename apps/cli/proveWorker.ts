import { parentPort, workerData } from "node:worker_threads";
import {
  type ProofInput,
  proofWork,
  proveFirst,
  proveSecond,
  type Share,
} from "@copperwright/engine";

/** One share of a proof in a thread of its own: its first part, then, when the largest currents of all are known, its second. */
const { input, share } = workerData as { input: ProofInput; share: Share };
const work = proofWork(input);
parentPort!.postMessage(proveFirst(work, share));
parentPort!.once("message", (tallies: Parameters<typeof proveSecond>[1]) => {
  parentPort!.postMessage(proveSecond(work, tallies, share));
});
