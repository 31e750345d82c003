import type { SupplyAnswer } from "@copperwright/engine";
import { printQuantity } from "@copperwright/engine/words";
import { type ReactNode, useState } from "react";
import { CoilLighting } from "./CoilLighting.tsx";
import { Figure } from "./Figure.tsx";
import { LampRows } from "./LampRows.tsx";
import { Waterfall } from "./Waterfall.tsx";

type LampProps = {
  readonly answer: SupplyAnswer;
  readonly names: Readonly<Record<string, string>>;
};

/** Volts from the battery to the largest lamp and back, and every lamp at the volts it gets. */
export function LampTopic({ answer, names }: LampProps): ReactNode {
  const { lampFall } = answer;
  return (
    <>
      {lampFall !== null && (
        <>
          <p className="supply-lead">
            From the battery to the {lampFall.name} and back: it gets{" "}
            <Figure
              sum={{
                name: `${lampFall.name} gets`,
                result: printQuantity(lampFall.v, "V"),
                equation: `${printQuantity(lampFall.postsV, "V")} at the battery less every step below`,
                note: `as in: ${lampFall.state}`,
              }}
            />{" "}
            of the {printQuantity(lampFall.postsV, "V")} at the battery.
          </p>
          <Waterfall
            label={`Volts from the battery to the ${lampFall.name} and back`}
            fall={lampFall.fall}
            names={names}
          />
        </>
      )}
      <LampsByState answer={answer} />
      <CoilLighting answer={answer} />
    </>
  );
}

function LampsByState({ answer }: { answer: SupplyAnswer }): ReactNode {
  const { lamps, balances } = answer;
  const states = [...new Set(lamps.map(({ state }) => state))];
  const [picked, setPicked] = useState<string | null>(null);
  const now = states.find((state) => state === picked) ?? states[0];
  if (now === undefined) return null;
  const nameOf = (state: string): string =>
    balances.find((one) => one.state === state)?.name ?? state;
  return (
    <section aria-label="Lamps at the volts they get" className="supply-part">
      <h2>Lamps at the volts they get</h2>
      <div className="proof-picks" role="group" aria-label="Lighting">
        {states.map((state) => (
          <button
            key={state}
            type="button"
            className="act"
            aria-pressed={state === now}
            onClick={() => setPicked(state)}
          >
            {nameOf(state)}
          </button>
        ))}
      </div>
      <LampRows lamps={lamps.filter(({ state }) => state === now)} />
    </section>
  );
}
