import type { ProveResult } from "@copperwright/engine";
import { useEffect, useState } from "react";
import { askLong } from "../../engine/engineClient.ts";
import { useBench } from "../../store/benchStore.ts";
import { useJobText } from "../../store/useJobText.ts";
import { provedNow, useProofRun } from "../proof/proofRun.ts";

/** Whether the full proof of the job as it stands lies beside its papers; it is laid there as soon as there is one. */
export function useProofKept(): boolean {
  const text = useJobText();
  const edit = useBench((bench) => bench.editCount);
  const { result, ofEdit } = useProofRun();
  const [keptOf, setKeptOf] = useState<string | null>(null);
  useEffect(() => {
    if (text === null || result === null || ofEdit !== edit) return;
    void keepProof(text, result).then(() => setKeptOf(text));
  }, [text, result, ofEdit, edit]);
  return text !== null && keptOf === text;
}

const keepProof = (text: string, result: ProveResult): Promise<void> =>
  askLong(text, "papersKeepProof", result);

/** Makes the proof that goes with the papers, where there is none yet and the check could judge the job. */
export async function proveForPapers(text: string): Promise<void> {
  if (useBench.getState().verdict.result?.withheld !== null) return;
  const result = await provedNow();
  if (result !== null) await keepProof(text, result);
}
