import type { Operation, SpokenFinding } from "@copperwright/engine";
import { type ReactNode, useEffect, useState } from "react";
import type { Consequence } from "../../engine/engineApi.ts";
import { front } from "../../engine/engineClient.ts";
import { SeverityTag } from "../../frame/SeverityTag.tsx";
import { GRAVEST_FIRST } from "../../frame/verdictWord.ts";
import { useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";
import { goTo } from "../../store/route.ts";
import { consequenceText } from "./consequenceText.ts";

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
  const count = useBench((bench) => bench.editCount);
  const [outcome, setOutcome] = useState<Consequence | null>(null);
  const operation: Operation = { op: "batch", name: words, operations: change };
  useEffect(() => {
    let isCurrent = true;
    setOutcome(null);
    void front.consequence(operation).then((answer) => isCurrent && setOutcome(answer));
    return () => {
      isCurrent = false;
    };
  }, [count, JSON.stringify(change)]);
  return (
    <button
      type="button"
      className="act filled remedy"
      disabled={outcome !== null && !outcome.ok}
      onClick={() => void edit(words, operation)}
    >
      <b>{words}</b>
      <span>{outcome === null ? "being tried" : consequenceText(outcome)}</span>
    </button>
  );
}
