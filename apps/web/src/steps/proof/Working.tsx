import type { WorkingStep } from "@copperwright/engine";
import { type ReactNode, useMemo } from "react";
import { choose, showSum, useBench } from "../../store/benchStore.ts";
import type { SpokenFinding } from "./findingRows.ts";
import { figureText, inputChosen, limitText, sumOfStep } from "./sumOf.ts";
import { thingKinds } from "./thingKinds.ts";

/** The working as equation lines, each input leading to what it came from; the limit last, with whose it is and how sure. */
export function Working({ finding }: { finding: SpokenFinding }): ReactNode {
  const { working, limit, leansOnMemory } = finding;
  return (
    <section className="proof-working" aria-label="Working">
      <h2>Working</h2>
      {working.map((step) => (
        <Line key={`${step.name} ${step.equation}`} step={step} finding={finding} />
      ))}
      {working.length === 0 && <Numbers finding={finding} />}
      {limit !== null && (
        <p className="proof-limit">
          {limitText(limit)}
          {leansOnMemory && <b> · rests on a remembered figure</b>}
        </p>
      )}
    </section>
  );
}

function Line({ step, finding }: { step: WorkingStep; finding: SpokenFinding }): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const kindOf = useMemo(() => thingKinds(job), [job]);
  return (
    <div className="proof-line">
      <p>
        {step.name} ={" "}
        <button
          type="button"
          className="figure-link"
          onClick={() => showSum(sumOfStep(step, finding, kindOf))}
        >
          <b>{figureText(step.value, step.unit)}</b>
        </button>
      </p>
      <p className="proof-equation">{step.equation}</p>
      <p className="note">
        {step.inputs.map((input) => {
          const goTo = inputChosen(input, finding.subject, kindOf);
          const text = `${input.name} ${figureText(input.value, input.unit)}`;
          return (
            <span key={`${input.name} ${input.value}`} className="proof-input">
              {goTo === null ? (
                text
              ) : (
                <button type="button" className="figure-link" onClick={() => choose(goTo)}>
                  {text}
                </button>
              )}{" "}
              ({input.from})
            </span>
          );
        })}
      </p>
    </div>
  );
}

const UNITS: Readonly<Record<string, string>> = {
  A: "A",
  V: "V",
  W: "W",
  C: "C",
  K: "K",
  S: "s",
  Mm: "mm",
  Mm2: "mm2",
  Ohm: "ohm",
  Percent: "%",
  Rpm: "rpm",
  Ah: "Ah",
  H: "h",
};

/** A finding without equations shows the figures it was made of, by the name and unit they carry. */
function Numbers({ finding }: { finding: SpokenFinding }): ReactNode {
  const told = Object.entries(finding.numbers).flatMap(([key, value]) => {
    const unit = /(Mm2|Percent|Ohm|Rpm|Mm|Ah|[AVWCKSH])$/.exec(key)?.[0];
    if (typeof value !== "number" || unit === undefined) return [];
    const words = key.slice(0, -unit.length).replace(/([A-Z])/g, " $1");
    return [{ key, words: words.toLowerCase().trim(), text: figureText(value, UNITS[unit] ?? "") }];
  });
  if (told.length === 0)
    return <p className="note">Nothing is reckoned here: it is a matter of what joins what.</p>;
  return (
    <>
      {told.map(({ key, words, text }) => (
        <p key={key} className="proof-line">
          {words || key} = <b>{text}</b>
        </p>
      ))}
    </>
  );
}
