import type { ChangeToTry } from "@copperwright/engine";
import { printQuantity } from "@copperwright/engine/words";
import { type ReactNode, useEffect, useState } from "react";
import type { Consequence } from "../../engine/engineApi.ts";
import { front } from "../../engine/engineClient.ts";
import { useAnswer } from "../../engine/useAnswer.ts";
import { consequenceText } from "../../frame/consequenceText.ts";
import { useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";
import { usePrices } from "../parts/priceList.ts";
import { namesOf, type SpokenFinding } from "./findingRows.ts";
import { isBetter } from "./operationOf.ts";

/** For a finding that brings no change of its own: one size up or down of what it names, each tried on the whole job; only what helps is offered. */
export function Tried({ finding }: { finding: SpokenFinding }): ReactNode {
  const isGrave = finding.severity !== "advise" && finding.accepted === null;
  const ids = isGrave ? namesOf(finding) : [];
  const { answer } = useAnswer("proofChanges", { ids });
  const tried = useTried(answer ?? []);
  if (!isGrave || (answer ?? []).length === 0) return null;
  const good = tried.filter(({ consequence }) => isBetter(consequence));
  const isWhole = tried.length === answer!.length;
  return (
    <section className="proof-remedies" aria-label="Sizes tried">
      <h2>
        Sizes tried{" "}
        <span className="note">
          {isWhole
            ? `${tried.length} on the whole job, ${good.length} better`
            : `${tried.length} of ${answer!.length} so far`}
        </span>
      </h2>
      <div className="proof-cards">
        {good.map(({ change, consequence }, k) => (
          <div key={wordsOf(change)} className="proof-card">
            <p>
              <b>{wordsOf(change)}</b>
            </p>
            <p className="note">{consequenceText(consequence)}</p>
            <button
              type="button"
              className={k === 0 ? "act filled" : "act"}
              onClick={() => void edit(wordsOf(change), change.operation)}
            >
              apply
            </button>
          </div>
        ))}
      </div>
    </section>
  );
}

function wordsOf(change: ChangeToTry): string {
  return change.kind === "fuse"
    ? `${change.fuse} to ${printQuantity(change.ratingA, "A")}`
    : `wire ${change.wire} to ${printQuantity(change.areaMm2, "mm2")}`;
}

interface TriedChange {
  readonly change: ChangeToTry;
  readonly consequence: Consequence;
}

/** One after the other, so that the worker answers the hand in between. */
function useTried(changes: readonly ChangeToTry[]): readonly TriedChange[] {
  const editCount = useBench((bench) => bench.editCount);
  const [tried, setTried] = useState<readonly TriedChange[]>([]);
  const words = JSON.stringify(changes);
  useEffect(() => {
    let isCurrent = true;
    setTried([]);
    void (async () => {
      for (const change of changes) {
        const consequence = await front
          .consequence(change.operation, usePrices.getState().list?.text ?? null)
          .catch((): Consequence => ({ ok: false, refusals: [] }));
        if (!isCurrent) return;
        setTried((before) => [...before, { change, consequence }]);
      }
    })();
    return () => {
      isCurrent = false;
    };
  }, [words, editCount]);
  return tried;
}
