import type { WireFact } from "@copperwright/engine";
import type { ReactNode } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { SlipRow } from "../../frame/Slip.tsx";
import { showSum } from "../../store/benchStore.ts";
import { figureText } from "../proof/sumOf.ts";
import { factSum } from "./factSum.ts";

/** Size, cut length, largest current and volts lost of a wire; each opens its sum. */
export function WireFactRows({ wire }: { wire: string }): ReactNode {
  const { answer: facts, isStale } = useAnswer("circuitsWire", wire);
  if (facts === null) {
    return (
      <p className="note">
        {isStale ? "working it out" : "this wire is not in the plan: it comes off"}
      </p>
    );
  }
  const { row, size, cut, carries, loses } = facts;
  const strands = `${row.strandCount}/${row.strandDiameterMm.toFixed(2)}`;
  const limitOf = (fact: WireFact): string =>
    fact.limit === null ? "" : `of ${figureText(fact.limit.value, fact.limit.unit)}`;
  return (
    <div aria-busy={isStale}>
      <SlipRow name="size" note={strands}>
        <Figure wire={wire} name="has" fact={size} />
      </SlipRow>
      <SlipRow name="cut" note={row.lengthBasis ?? "length not known"}>
        <Figure wire={wire} name="is cut to" fact={cut} isGuess={row.lengthBasis === "estimated"} />
      </SlipRow>
      <SlipRow name="carries" note={carries === null ? (row.why ?? "") : limitOf(carries)}>
        <Figure wire={wire} name="carries at most" fact={carries} />
      </SlipRow>
      <SlipRow name="loses" note={loses === null ? "" : limitOf(loses)}>
        <Figure wire={wire} name="loses" fact={loses} />
      </SlipRow>
    </div>
  );
}

type FigureProps = {
  readonly wire: string;
  readonly name: string;
  readonly fact: WireFact | null;
  readonly isGuess?: boolean;
};

function Figure({ wire, name, fact, isGuess = false }: FigureProps): ReactNode {
  if (fact === null) return <>not known</>;
  const { value, unit } = fact.working;
  return (
    <button
      type="button"
      className="figure-link"
      onClick={() => showSum(factSum(`Wire ${wire} ${name}`, fact))}
    >
      {isGuess && "≈ "}
      {figureText(value, unit)}
    </button>
  );
}
