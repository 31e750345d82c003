import { useCallback, useState } from "react";
import type { PaperChoice } from "./papersAnswers.ts";

const KEPT = "copperwright-papers";
const USUAL: PaperChoice = {
  paper: "a4",
  board: { boardWidthMm: 1200, marginMm: 10, overlapMm: 10 },
};

/** Paper and board of this device: what its printer takes and how wide the board on its wall is. */
export function usePaperChoice(): readonly [PaperChoice, (choice: PaperChoice) => void] {
  const [choice, setChoice] = useState<PaperChoice>(readKept);
  const keep = useCallback((next: PaperChoice) => {
    localStorage.setItem(KEPT, JSON.stringify(next));
    setChoice(next);
  }, []);
  return [choice, keep];
}

function readKept(): PaperChoice {
  try {
    const kept = JSON.parse(localStorage.getItem(KEPT) ?? "null") as Partial<PaperChoice> | null;
    const isKnown = kept?.paper === "a4" || kept?.paper === "a3" || kept?.paper === "letter";
    return isKnown
      ? { paper: kept.paper ?? "a4", board: { ...USUAL.board, ...kept.board } }
      : USUAL;
  } catch {
    return USUAL;
  }
}
