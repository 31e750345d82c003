import type { SupplyAnswer } from "@copperwright/engine";
import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { Figure } from "./Figure.tsx";
import { ampsText, restsOn, spellText } from "./supplyWords.ts";

type Standing = SupplyAnswer["standing"][number];

interface StandProps {
  readonly answer: SupplyAnswer;
  readonly names: Readonly<Record<string, string>>;
}

/** Left standing: what it draws, when it is flat, when it may not start any more. */
export function StandTopic({ answer, names }: StandProps): ReactNode {
  const { standing } = answer;
  return (
    <>
      <p className="supply-lead">
        From a full battery, engine stopped, nobody holding a button. Parking light, key left on and
        at rest each have their line.
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled with the keys */}
      <div className="proof-scroll" tabIndex={0} role="group" aria-label="Left standing">
        <table className="proof-table">
          <thead>
            <tr>
              <th scope="col">left standing</th>
              <th scope="col">draws</th>
              <th scope="col">may not start</th>
              <th scope="col">flat</th>
              <th scope="col">half empty</th>
            </tr>
          </thead>
          <tbody>
            {standing.map((row) => (
              <Row key={row.state} row={row} answer={answer} />
            ))}
          </tbody>
        </table>
      </div>
      <LeftOn answer={answer} names={names} />
      <Drains standing={standing} />
    </>
  );
}

function Row({
  row,
  answer,
}: {
  readonly row: Standing;
  readonly answer: SupplyAnswer;
}): ReactNode {
  const { name, currentA, drains, toEmptyS, toHalfS, toNoStartS } = row;
  const largest = drains.slice(0, 4).map((one) => `${one.name} ${ampsText(one.currentA)}`);
  const time = (what: string, timeS: number | null, equation: string, used: string): ReactNode => (
    <td>
      <Figure
        sum={{
          name: `${name}: ${what}`,
          result: spellText(timeS),
          equation,
          note: restsOn(answer, used),
        }}
      />
    </td>
  );
  const drawn = currentA === 0 ? "nothing" : ampsText(currentA);
  return (
    <tr>
      <th scope="row">{name}</th>
      <td>
        <Figure
          sum={{
            name: `${name}: drawn from the battery`,
            result: drawn,
            equation: `${largest.join(" + ") || "nothing"}${drains.length > 4 ? " + smaller ones" : ""}`,
            note: "the whole network solved from a full battery",
          }}
        />
      </td>
      {time(
        "may not start after",
        toNoStartS,
        `drain ${drawn} and what the battery loses by itself, up to the share a starter or a coil still forgives`,
        "battery while standing and starting",
      )}
      {time(
        "flat",
        toEmptyS,
        `capacity at its rate ÷ ${drawn}, more drawn gives less`,
        "Peukert's law",
      )}
      {time("half empty", toHalfS, "half the time to flat", "Peukert's law")}
    </tr>
  );
}

/** The key left on where the contacts happened to stop closed. */
function LeftOn({ answer, names }: StandProps): ReactNode {
  const { coilsLeftOn: left } = answer;
  if (left === null) return null;
  return (
    <section aria-label="Key left on" className="supply-part">
      <h2>Key left on, contacts closed</h2>
      <p>
        {left.coils.map((coil, k) => (
          <span key={coil.load}>
            {k > 0 && ", "}
            {names[coil.load] ?? coil.load} burns{" "}
            <Figure
              sum={{
                name: `heat in ${names[coil.load] ?? coil.load}, contacts closed`,
                result: printQuantity(coil.powerW, "W"),
                equation: `${printQuantity(coil.v, "V")} across it, engine stopped`,
                note: `as in: ${left.state}`,
              }}
            />
          </span>
        ))}
        . The battery gives {ampsText(left.currentA)} and is flat after{" "}
        <Figure
          sum={{
            name: "key left on: flat after",
            result: spellText(left.toEmptyS),
            equation: `capacity at its rate ÷ ${ampsText(left.currentA)}`,
            note: restsOn(answer, "Peukert's law"),
          }}
        />
        .
      </p>
    </section>
  );
}

function Drains({ standing }: { standing: readonly Standing[] }): ReactNode {
  const drawing = standing.filter(({ drains }) => drains.length > 0);
  if (drawing.length === 0) return null;
  return (
    <details className="proof-why">
      <summary>Who draws it, part by part</summary>
      {drawing.map(({ state, name, drains }) => (
        <section key={state} aria-label={name} className="supply-part">
          <h3>{name}</h3>
          <ul className="supply-list">
            {drains.map((one) => (
              <li key={one.load}>
                {one.name}, {one.load}: {ampsText(one.currentA)}, {printQuantity(one.powerW, "W")}
              </li>
            ))}
          </ul>
        </section>
      ))}
    </details>
  );
}
