import { printNumber, printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { verdictWord } from "../../frame/verdictWord.ts";
import { useBench } from "../../store/benchStore.ts";
import { useProofRun } from "./proofRun.ts";

/** What the full proof covered: states, faults, what was solved in full, the largest residual; how far the one being made has come. */
export function ProofSummary(): ReactNode {
  const { result, isRunning, doneRatio, word, tookS, ofEdit, fault } = useProofRun();
  const edit = useBench((bench) => bench.editCount);
  const isOld = result !== null && ofEdit !== edit;
  return (
    <section className="proof-summary" aria-label="The full proof" aria-busy={isRunning}>
      {isRunning && (
        <p aria-live="polite">
          proving {printNumber(100 * doneRatio, 0)} %, {word}
          <progress value={doneRatio} max={1} aria-label="Share of the proof done" />
        </p>
      )}
      {fault !== null && <p>The proof could not be made: {fault}</p>}
      {result !== null && <Covered result={result} />}
      {result !== null && (
        <p className="note">
          {printQuantity(tookS, "s")} on this machine{isOld && ", before the last change"}
        </p>
      )}
    </section>
  );
}

function Covered({
  result,
}: {
  result: NonNullable<ReturnType<typeof useProofRun.getState>["result"]>;
}): ReactNode {
  const { coverage, verdict } = result;
  const count = (value: number): string => printNumber(value, 0);
  const faults = coverage.opens + coverage.shortsToEarth + coverage.shortsToNeighbour;
  const picoA = coverage.largestKclResidualA * 1e12;
  return (
    <>
      <p>
        Full proof: <b>{verdictWord(verdict)}</b>
      </p>
      <p>
        <b>{count(coverage.productCount)}</b> combinations of switches stand for{" "}
        <b>{count(coverage.statesSolved)}</b> states in {count(coverage.groups.length)}{" "}
        {coverage.groups.length === 1 ? "group" : "groups"}; <b>{count(faults)}</b> faults,{" "}
        <b>{count(coverage.faultStatesCovered)}</b> faulted states covered,{" "}
        <b>{count(coverage.solvedInFull)}</b> solved in full, largest residual{" "}
        {picoA < 1000 ? `${count(Math.max(1, picoA))} pA` : `${count(picoA / 1000)} nA`}
      </p>
    </>
  );
}
