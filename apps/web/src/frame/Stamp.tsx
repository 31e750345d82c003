import type { CheckResult } from "@copperwright/engine";
import type { ReactNode } from "react";
import { useBench } from "../store/benchStore.ts";
import { goTo } from "../store/route.ts";
import { stampWords } from "./stampWords.ts";

/** The constant verdict: the check's after every edit, or the full proof's where that is worse. Tapped, it leads to the proof. */
export function Stamp(): ReactNode {
  const { result, ofEdit } = useBench((bench) => bench.verdict);
  const edit = useBench((bench) => bench.editCount);
  const experiment = useBench((bench) => bench.onTheBench);
  const proof = useBench((bench) => bench.proof);
  if (experiment !== null) {
    return (
      <button type="button" className="stamp dotted" onClick={() => goTo("try")}>
        <b className="stamp-word">on the bench</b>
        <span className="stamp-why">{experiment}</span>
      </button>
    );
  }
  const isChecking = result === null || ofEdit < edit;
  const { verdict, word, why, note } = stampWords(
    result,
    proof?.ofEdit === edit ? proof.verdict : null,
  );
  return (
    <button
      type="button"
      className={`stamp ${isChecking ? "dotted" : verdict}`}
      data-verdict={verdict}
      data-checking={isChecking}
      onClick={() => goTo("proof")}
    >
      <b className="stamp-word">{word}</b>
      <span className="stamp-why">{why}</span>
      {result !== null && <span className="stamp-counts">{countsText(result.counts)}</span>}
      {note !== null && <span className="stamp-counts">{note}</span>}
    </button>
  );
}

const countsText = ({ stop, mend, advise }: CheckResult["counts"]): string =>
  `${stop} stop · ${mend} mend · ${advise} advise`;
