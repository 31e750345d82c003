import type { ProveResult } from "@copperwright/engine";
import { askLong } from "../../engine/engineClient.ts";

type Told = (doneRatio: number, word: string) => void;

let proofCount = 0;

/** A proof on two workers where the machine has two cores to give: both do their share of each stage, the first puts them together. */
export async function sharedProof(text: string, told: Told): Promise<ProveResult> {
  const count = navigator.hardwareConcurrency > 1 ? 2 : 1;
  const workers = Array.from({ length: count }, (_, index) => index as 0 | 1);
  const proof = ++proofCount;
  const share = (index: number) => ({ index, count });
  const input = await askLong(text, "proofInput", undefined);
  // How far it has come is told by the first: the shares are alike.
  const tell = (index: number): Told | undefined => (index === 0 ? told : undefined);
  const parts = await Promise.all(
    workers.map((index) =>
      askLong(text, "proofFirst", { proof, input, share: share(index) }, tell(index), index),
    ),
  );
  const found = await askLong(text, "proofTold", { proof, parts });
  const seconds = await Promise.all(
    workers.map((index) =>
      askLong(text, "proofSecond", { proof, told: found, share: share(index) }, tell(index), index),
    ),
  );
  return askLong(text, "proofResult", { proof, seconds }, told);
}
