import type { ProveResult } from "@copperwright/engine";
import { create } from "zustand";
import { front } from "../../engine/engineClient.ts";
import { faultText } from "../../engine/faultText.ts";
import { useBench } from "../../store/benchStore.ts";
import { sharedProof } from "./sharedProof.ts";

/** The full proof of the job on the bench, made in the background and made again after edits. */
export interface ProofRun {
  readonly jobKey: string;
  /** The last proof made; it stays in sight, marked old, while the next is made. */
  readonly result: ProveResult | null;
  readonly ofEdit: number;
  readonly tookS: number;
  readonly isRunning: boolean;
  readonly doneRatio: number;
  readonly word: string;
  readonly fault: string | null;
}

const NONE: Omit<ProofRun, "jobKey"> = {
  result: null,
  ofEdit: -1,
  tookS: 0,
  isRunning: false,
  doneRatio: 0,
  word: "",
  fault: null,
};

export const useProofRun = create<ProofRun>()(() => ({ jobKey: "", ...NONE }));

const REST_MS = 700;
let timer: ReturnType<typeof setTimeout> | null = null;

/** Asks for the proof of the job as it stands, once the hand has rested. Asked often, made once. */
export function proveSoon(): void {
  const { document, editCount } = useBench.getState();
  const key = document?.key ?? "";
  if (useProofRun.getState().jobKey !== key) useProofRun.setState({ jobKey: key, ...NONE });
  if (useProofRun.getState().ofEdit === editCount) return;
  if (timer !== null) clearTimeout(timer);
  timer = setTimeout(() => void prove(), useProofRun.getState().result === null ? 0 : REST_MS);
}

/** The proof of the job as it stands, made if need be; null where it could not be made. */
export function provedNow(): Promise<ProveResult | null> {
  const { editCount } = useBench.getState();
  const made = ({ ofEdit, result, fault }: ProofRun): ProveResult | null | undefined =>
    ofEdit !== editCount ? undefined : fault === null ? result : null;
  return new Promise((resolve) => {
    const stop = useProofRun.subscribe((run) => {
      const now = made(run);
      if (now === undefined) return;
      stop();
      resolve(now);
    });
    const already = made(useProofRun.getState());
    if (already === undefined) return proveSoon();
    stop();
    resolve(already);
  });
}

async function prove(): Promise<void> {
  const { isRunning } = useProofRun.getState();
  const { editCount, document } = useBench.getState();
  if (isRunning || document === null) return;
  const key = document.key;
  useProofRun.setState({ isRunning: true, doneRatio: 0, word: "begins", fault: null });
  const began = performance.now();
  try {
    const text = await front.text();
    const result = await sharedProof(text, tell);
    if (useBench.getState().document?.key === key) {
      const tookS = (performance.now() - began) / 1000;
      useProofRun.setState({ result, ofEdit: editCount, tookS, doneRatio: 1 });
      useBench.setState({ proof: { verdict: result.verdict, ofEdit: editCount } });
    }
  } catch (error) {
    const fault = faultText(error);
    useProofRun.setState({ fault, ofEdit: editCount });
  } finally {
    useProofRun.setState({ isRunning: false });
    // Edited meanwhile: the newer job has its turn now.
    if (useBench.getState().editCount !== editCount) proveSoon();
  }
}

const tell = (doneRatio: number, word: string): void => useProofRun.setState({ doneRatio, word });
