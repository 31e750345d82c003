import type { Operation, SpokenFinding } from "@copperwright/engine";
import type { ReactNode } from "react";
import { consequenceText } from "../../frame/consequenceText.ts";
import { SeverityTag } from "../../frame/SeverityTag.tsx";
import { useConsequence } from "../../frame/useConsequence.ts";
import { GRAVEST_FIRST } from "../../frame/verdictWord.ts";
import { useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";
import { goTo } from "../../store/route.ts";

/** What is worst about a thing, in one sentence, with the change that would mend it and what that change leads to. */
export function WorstFinding({ ids }: { ids: readonly string[] }): ReactNode {
  const findings = useBench((bench) => bench.verdict.result?.findings ?? null);
  if (findings === null) return null;
  const isAbout = ({ subject, also }: SpokenFinding): boolean =>
    [subject.id, ...also].some((one) => ids.some((id) => one === id || isWithin(one, id)));
  const own = findings
    .filter((finding) => finding.accepted === null && isAbout(finding))
    .sort((p, q) => GRAVEST_FIRST.indexOf(p.severity) - GRAVEST_FIRST.indexOf(q.severity));
  const [worst] = own;
  if (worst === undefined) return null;
  const tried = worst.remedies.filter(({ change }) => change.length > 0);
  const remedy = tried.find(({ cures }) => cures === true) ?? tried[0];
  return (
    <div className="slip-finding">
      <details>
        <summary>
          <SeverityTag severity={worst.severity} /> {firstSentence(worst.message)}
        </summary>
        <p>{worst.message}</p>
      </details>
      {remedy !== undefined && (
        <RemedyButton
          key={`${worst.code} ${remedy.message}`}
          words={remedy.message ?? "mend it"}
          change={remedy.change as readonly Operation[]}
        />
      )}
      {own.length > 1 && (
        <button type="button" className="figure-link" onClick={() => goTo("proof")}>
          and {own.length - 1} more, in Proof
        </button>
      )}
    </div>
  );
}

/** As far as the first full stop that ends a sentence. */
const firstSentence = (message: string): string =>
  /^.*?[.!?](?=\s|$)/.exec(message)?.[0] ?? message;

const isWithin = (one: string, id: string): boolean =>
  one.startsWith(`${id}.`) || one.startsWith(`${id}:`);

/** The remedy with its outcome on it, tried on a copy before it is offered. */
function RemedyButton({
  words,
  change,
}: {
  words: string;
  change: readonly Operation[];
}): ReactNode {
  const operation: Operation = { op: "batch", name: words, operations: change };
  const outcome = useConsequence(operation);
  return (
    <button
      type="button"
      className="act filled remedy"
      disabled={outcome !== null && !outcome.ok}
      onClick={() => void edit(words, operation)}
    >
      <b>{words}</b>
      <span>{consequenceText(outcome)}</span>
    </button>
  );
}
