import type { ReactNode } from "react";
import { useBench } from "../store/benchStore.ts";
import { goTo } from "../store/route.ts";

const WORDS: Readonly<Record<string, string>> = {
  fit: "fit",
  mend: "mend",
  stop: "stop",
  "not-proven": "not proven",
};

/** The constant verdict. Tapped, it leads to the proof at the worst finding. */
export function Stamp(): ReactNode {
  const { result, ofEdit } = useBench((bench) => bench.verdict);
  const edit = useBench((bench) => bench.editCount);
  const bench = useBench((state) => state.onTheBench);
  if (bench !== null) {
    return (
      <button type="button" className="stamp dotted" onClick={() => goTo("try")}>
        <b className="stamp-word">on the bench</b>
        <span className="stamp-why">{bench}</span>
      </button>
    );
  }
  const isChecking = result === null || ofEdit < edit;
  const verdict = result?.verdict ?? "checking";
  const counts = result?.counts;
  const count = verdict === "fit" ? "" : ` ${counts?.[COUNTED[verdict] ?? "stop"] ?? ""}`;
  return (
    <button
      type="button"
      className={`stamp ${isChecking ? "dotted" : verdict}`}
      data-verdict={verdict}
      data-checking={isChecking}
      onClick={() => goTo("proof")}
    >
      <b className="stamp-word">
        {result === null ? "not yet" : (WORDS[verdict] ?? verdict)}
        {count}
      </b>
      <span className="stamp-why">
        {result === null ? "being worked out" : headline(result.findings, verdict)}
      </span>
      {counts !== undefined && (
        <span className="stamp-counts">
          {counts.stop} stop · {counts.mend} mend · {counts.advise} advise
        </span>
      )}
    </button>
  );
}

const COUNTED: Readonly<Record<string, "stop" | "mend" | "notProven">> = {
  stop: "stop",
  mend: "mend",
  "not-proven": "notProven",
};

function headline(
  findings: readonly { severity: string; message: string; subject: { id: string } }[],
  verdict: string,
): string {
  const worst = findings.find(({ severity }) => severity === verdict);
  if (worst === undefined) return "nothing has to be put right";
  const [sentence = ""] = worst.message.split(/(?<=\.)\s/);
  return sentence.length > 90 ? `at ${worst.subject.id}` : sentence;
}
