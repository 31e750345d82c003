import type { ConvertTo, Job } from "@copperwright/engine";
import { type ReactNode, useState } from "react";
import { useLongAnswer } from "../../../engine/useLongAnswer.ts";
import { useBench } from "../../../store/benchStore.ts";
import { useStock } from "../../parts/useStock.ts";
import { ConversionPlan } from "./ConversionPlan.tsx";
import { SUPPLY_WORKER } from "./useSupplyAsking.ts";

const VOLTS = [6, 12] as const;
const EARTHS = ["negative", "positive"] as const;
type Earth = Job["supply"]["earthPolarity"];

/** The machine on other volts, on the other earth, or both: planned part by part, checked, and made a new job if wanted. */
export function ConvertTopic(): ReactNode {
  const { nominalV, earthPolarity } = useBench((bench) => bench.document!.job.supply);
  const [volts, setVolts] = useState<Job["supply"]["nominalV"]>(nominalV === 12 ? 6 : 12);
  const [earth, setEarth] = useState<Earth>(earthPolarity);
  const to: ConvertTo = {
    ...(volts !== nominalV && { nominalV: volts }),
    ...(earth !== earthPolarity && { earth }),
  };
  const isSame = Object.keys(to).length === 0;
  const stockText = useStock().list?.text ?? null;
  const question = isSame ? null : { to, stockText };
  const { answer, isStale, fault } = useLongAnswer("supplyConversion", question, SUPPLY_WORKER);
  const view = fault === null ? answer : null;
  return (
    <>
      <div className="proof-picks">
        <Picks label="Volts" words={VOLTS} said={(v) => `${v} V`} now={volts} onPick={setVolts} />
        <Picks
          label="Earth"
          words={EARTHS}
          said={(pole) => `${pole} earth`}
          now={earth}
          onPick={setEarth}
        />
      </div>
      {isSame && (
        <p className="supply-lead">
          That is the machine as it is: {nominalV} V, {earthPolarity} earth. Choose other volts or
          the other earth.
        </p>
      )}
      <p className="note" aria-live="polite">
        {!isSame && isStale && "planning: every part, fuse and wire is gone through and checked"}
      </p>
      {fault !== null && <p role="alert">The plan could not be made: {fault}</p>}
      {!isSame && view?.ok === false && (
        <p role="alert">
          The price list was not taken: {view.refusals[0]?.message} {view.refusals[0]?.remedy}
        </p>
      )}
      {!isSame && !isStale && view?.ok === true && <ConversionPlan view={view} />}
    </>
  );
}

type PicksProps<T> = {
  readonly label: string;
  readonly words: readonly T[];
  readonly said: (word: T) => string;
  readonly now: unknown;
  readonly onPick: (word: T) => void;
};

function Picks<T extends string | number>({
  label,
  words,
  said,
  now,
  onPick,
}: PicksProps<T>): ReactNode {
  return (
    <div className="proof-picks" role="group" aria-label={label}>
      {words.map((word) => (
        <button
          key={word}
          type="button"
          className="act"
          aria-pressed={word === now}
          onClick={() => onPick(word)}
        >
          {said(word)}
        </button>
      ))}
    </div>
  );
}
