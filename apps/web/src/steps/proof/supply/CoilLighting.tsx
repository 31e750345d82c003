import type { SupplyAnswer } from "@copperwright/engine";
import { printNumber, printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { Figure } from "./Figure.tsx";
import { shareText } from "./supplyWords.ts";

type Coil = SupplyAnswer["lightingCoils"][number];

/** An alternating lighting coil: watts asked against watts had, and what the lamps make of it. */
export function CoilLighting({ answer }: { answer: SupplyAnswer }): ReactNode {
  const { lightingCoils } = answer;
  if (lightingCoils.length === 0) return null;
  return (
    <section aria-label="Lit by the coil" className="supply-part">
      <h2>Lit by the coil, alternating</h2>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled with the keys */}
      <div className="proof-scroll" tabIndex={0} role="group" aria-label="Lit by the coil">
        <table className="proof-table">
          <thead>
            <tr>
              <th scope="col">state</th>
              <th scope="col">coil / asked</th>
              <th scope="col">rpm</th>
              <th scope="col">volts rms</th>
              <th scope="col">taken</th>
              <th scope="col">least light</th>
            </tr>
          </thead>
          {lightingCoils.map((coil) => (
            <CoilRows
              key={`${coil.generator} ${coil.state}`}
              coil={coil}
              name={answer.balances.find(({ state }) => state === coil.state)?.name ?? coil.state}
            />
          ))}
        </table>
      </div>
    </section>
  );
}

function CoilRows({ coil, name }: { readonly coil: Coil; readonly name: string }): ReactNode {
  const { generator, coilW, askedW, rows } = coil;
  return (
    <tbody>
      {rows.map((row, k) => (
        <tr key={row.speedRpm}>
          {k === 0 && (
            <>
              <th scope="rowgroup" rowSpan={rows.length}>
                {name}
              </th>
              <td rowSpan={rows.length}>
                {coilW === null ? "not stated" : printQuantity(coilW, "W")} /{" "}
                {printQuantity(askedW, "W")}
              </td>
            </>
          )}
          <td>{printNumber(row.speedRpm, 0)}</td>
          <td>
            <Figure
              sum={{
                name: `${generator}, ${name}, brightest lamp at ${printQuantity(row.speedRpm, "rpm")}`,
                result: printQuantity(row.v, "V"),
                equation: "coil, wires and lamps solved in rms",
              }}
            />
          </td>
          <td>{printQuantity(row.takenW, "W")}</td>
          <td>{shareText(row.relativeLight)}</td>
        </tr>
      ))}
    </tbody>
  );
}
