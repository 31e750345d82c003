import { parentPort } from "node:worker_threads";
import {
  type FirstTold,
  type ProofInput,
  proofWork,
  proveFirst,
  proveSecond,
  type Share,
} from "@copperwright/engine";

/**
 * One share of a proof in a thread of its own, which may be started before it is known what is to be proven: the input, its first part,
 * then, when it is known what all first parts found, its second.
 */
parentPort!.once("message", ({ input, share }: { input: ProofInput; share: Share }) => {
  const work = proofWork(input);
  parentPort!.once("message", (told: FirstTold) => {
    parentPort!.postMessage(proveSecond(work, told, share));
  });
  parentPort!.postMessage(proveFirst(work, share));
});
