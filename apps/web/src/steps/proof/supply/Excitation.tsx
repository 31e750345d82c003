import type { SupplyAnswer } from "@copperwright/engine";
import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { Figure } from "./Figure.tsx";
import { ampsText } from "./supplyWords.ts";

/** Will an excited rotor begin to charge, with its charge lamp and with others. */
export function Excitation({ answer }: { answer: SupplyAnswer }): ReactNode {
  const { excitation } = answer;
  if (excitation === null) return null;
  const { generator, chargeLamp, state, leastA, rows, neededOhm, neededW } = excitation;
  return (
    <section aria-label="Does it begin to charge" className="supply-part">
      <h2>Does it begin to charge?</h2>
      <p>
        First field current of {generator} through {chargeLamp ?? "its own way"}, engine stopped:
      </p>
      <dl className="proof-facts">
        {rows.map((row) => (
          <Row key={row.lamp} row={row} leastA={leastA} state={state} />
        ))}
      </dl>
      {chargeLamp !== null && (
        <p className="note">
          With a light-emitting charge lamp {printQuantity(neededOhm, "ohm")} across it would do,
          made for {printQuantity(neededW, "W")} or more.
        </p>
      )}
    </section>
  );
}

type Row = NonNullable<SupplyAnswer["excitation"]>["rows"][number];

function Row({
  row: { lamp, fieldA, excites },
  leastA,
  state,
}: {
  readonly row: Row;
  readonly leastA: number;
  readonly state: string;
}): ReactNode {
  return (
    <>
      <dt>{lamp}</dt>
      <dd>
        <Figure
          sum={{
            name: `field current, charge lamp ${lamp}`,
            result: ampsText(fieldA),
            equation: `the whole network solved in: ${state}`,
            note: `needs ${ampsText(leastA)}; residual magnetism may start it with less, and is not relied on`,
            usedRatio: leastA / fieldA,
            usedText: `needs ${ampsText(leastA)}`,
          }}
        />
        , {excites ? "begins to charge" : "not to be relied on"}
      </dd>
    </>
  );
}
