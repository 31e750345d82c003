import type { Balance, SupplyAnswer } from "@copperwright/engine";
import { printNumber, printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { Figure } from "./Figure.tsx";
import { restsOn } from "./supplyWords.ts";

type Row = Balance["rows"][number];

/** Speed by speed: what it could give, what is over, where the volts settle, what goes into the battery. */
export function BalanceRows({
  balance,
  answer,
}: {
  readonly balance: Balance;
  readonly answer: SupplyAnswer;
}): ReactNode {
  if (balance.rows.length === 0) return null;
  const volts = printQuantity(balance.atV, "V");
  const band = `${printNumber(100 * balance.bandRatio, 0)} %`;
  const figure = (row: Row, name: string, value: number, unit: string, equation: string) => (
    <td>
      <Figure
        sum={{
          name: `${name} at ${printQuantity(row.speedRpm, "rpm")}`,
          result: printQuantity(value, unit),
          equation,
          note: unit === "V" ? restsOn(answer, "charging current a battery takes") : "",
        }}
      />
    </td>
  );
  return (
    <details className="proof-why">
      <summary>Speed by speed</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled with the keys */}
      <div className="proof-scroll" tabIndex={0} role="group" aria-label="Speed by speed">
        <table className="proof-table">
          <thead>
            <tr>
              <th scope="col">rpm</th>
              <th scope="col">could give</th>
              <th scope="col">over</th>
              <th scope="col">settles at</th>
              <th scope="col">into battery</th>
            </tr>
          </thead>
          <tbody>
            {balance.rows.map((row) => (
              <tr key={row.speedRpm}>
                <th scope="row">{printNumber(row.speedRpm, 0)}</th>
                {figure(
                  row,
                  "could give",
                  row.availableA,
                  "A",
                  `curve of its two points at ${volts}, between ${printQuantity(row.availableLowA, "A")} and ${printQuantity(row.availableHighA, "A")} (${band})`,
                )}
                {figure(
                  row,
                  "left over",
                  row.surplusA,
                  "A",
                  `${printQuantity(row.availableA, "A")} − ${printQuantity(balance.demandA, "A")} at ${volts}`,
                )}
                {figure(
                  row,
                  "volts settle",
                  row.settledV,
                  "V",
                  "where source, loads and a battery three quarters full agree",
                )}
                {figure(
                  row,
                  "into the battery",
                  row.batteryA,
                  "A",
                  `what is given less what is drawn at ${printQuantity(row.settledV, "V")}`,
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}
