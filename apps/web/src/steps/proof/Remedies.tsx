import type { Operation, Remedy } from "@copperwright/engine";
import { type ReactNode, useEffect, useState } from "react";
import type { Consequence } from "../../engine/engineApi.ts";
import { front } from "../../engine/engineClient.ts";
import { say, useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";
import { consequenceText, operationOf } from "./consequenceText.ts";
import type { SpokenFinding } from "./findingRows.ts";

/** What would mend it: each change tried on the whole job, its consequence told before it is made; applied, seen, undone. */
export function Remedies({ finding }: { finding: SpokenFinding }): ReactNode {
  if (finding.remedies.length === 0) return null;
  const firstThatCan = finding.remedies.findIndex(({ change }) => change.length > 0);
  return (
    <section className="proof-remedies" aria-label="What would mend it">
      <h2>
        What would mend it{" "}
        <span className="note">each tried on the whole job and checked again</span>
      </h2>
      <div className="proof-cards">
        {finding.remedies.map((remedy, k) => (
          <RemedyCard
            key={`${remedy.kind} ${JSON.stringify(remedy.change)}`}
            remedy={remedy}
            finding={finding}
            isFirst={k === firstThatCan}
          />
        ))}
      </div>
    </section>
  );
}

type CardProps = {
  readonly remedy: Remedy;
  readonly finding: SpokenFinding;
  readonly isFirst: boolean;
};

function RemedyCard({ remedy, finding, isFirst }: CardProps): ReactNode {
  const operation = operationOf(remedy, finding);
  const consequence = useConsequence(operation);
  const words = remedy.message ?? remedy.kind ?? "change it";
  const [isBusy, setBusy] = useState(false);
  const apply = async (): Promise<void> => {
    if (operation === null) return;
    setBusy(true);
    const isDone = await edit(actOf(operation, words), operation);
    setBusy(false);
    if (isDone) say("Done, and being proved again. Undo stands at the left.");
  };
  return (
    <div className="proof-card">
      <p>
        <b>{words}</b>
      </p>
      <p className="note">
        {operation === null
          ? "to be done by hand"
          : `${remedy.cures === true ? "proved to cure it · " : ""}${consequenceText(consequence)}`}
      </p>
      {operation !== null && (
        <button
          type="button"
          className={isFirst ? "act filled" : "act"}
          disabled={isBusy || consequence?.ok === false}
          onClick={() => void apply()}
        >
          apply
        </button>
      )}
    </div>
  );
}

/** What the act is called in the undo list: short, with the thing and its new value. */
function actOf(operation: Operation, words: string): string {
  if (operation.op !== "set") return words.length > 60 ? "mend what was found" : words;
  const { id = "job", path, value } = operation;
  const make = typeof value === "object" && value !== null && "make" in value ? value.make : value;
  return `${id} ${String(path.at(-1))} to ${String(make)}`;
}

/** Tried in the worker on a copy, again after every edit. */
function useConsequence(operation: Operation | null): Consequence | null {
  const editCount = useBench((bench) => bench.editCount);
  const [tried, setTried] = useState<Consequence | null>(null);
  const words = JSON.stringify(operation);
  useEffect(() => {
    let isCurrent = true;
    setTried(null);
    if (operation !== null) {
      void front.consequence(operation).then((answer) => isCurrent && setTried(answer));
    }
    return () => {
      isCurrent = false;
    };
  }, [words, editCount]);
  return tried;
}
