import type { Remedy } from "@copperwright/engine";
import { type ReactNode, useState } from "react";
import { consequenceText } from "../../frame/consequenceText.ts";
import { useConsequence } from "../../frame/useConsequence.ts";
import { say } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";
import { actOf } from "./actOf.ts";
import type { SpokenFinding } from "./findingRows.ts";
import { operationOf } from "./operationOf.ts";
import { Tried } from "./Tried.tsx";

/** What would mend it: each change tried on the whole job, its consequence told before it is made; applied, seen, undone. */
export function Remedies({ finding }: { finding: SpokenFinding }): ReactNode {
  const firstThatCan = finding.remedies.findIndex(({ change }) => change.length > 0);
  if (finding.remedies.length === 0) return <Tried finding={finding} />;
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
      {firstThatCan < 0 && <Tried finding={finding} />}
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
