import type { SupplyAnswer } from "@copperwright/engine";
import { printNumber, printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { Figure } from "./Figure.tsx";
import { rangeText } from "./supplyWords.ts";

type Lamp = SupplyAnswer["lamps"][number];
type Row = Lamp["rows"][number];

/** Each lamp from a standing engine to the fastest: volts, watts, light, life. */
export function LampRows({ lamps }: { lamps: readonly Lamp[] }): ReactNode {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled with the keys
    <div className="proof-scroll" tabIndex={0} role="group" aria-label="Lamps">
      <table className="proof-table">
        <thead>
          <tr>
            <th scope="col">lamp</th>
            <th scope="col">rpm</th>
            <th scope="col">volts</th>
            <th scope="col">takes</th>
            <th scope="col">light</th>
            <th scope="col">life</th>
          </tr>
        </thead>
        {lamps.map((lamp) => (
          <tbody key={lamp.lamp}>
            {lamp.rows.map((row, k) => (
              <LampRow key={row.speedRpm} lamp={lamp} row={row} isFirst={k === 0} />
            ))}
          </tbody>
        ))}
      </table>
    </div>
  );
}

function LampRow({
  lamp,
  row,
  isFirst,
}: {
  readonly lamp: Lamp;
  readonly row: Row;
  readonly isFirst: boolean;
}): ReactNode {
  const at = row.speedRpm === 0 ? "engine stopped" : `at ${printQuantity(row.speedRpm, "rpm")}`;
  const named = (what: string): string => `${lamp.name}, ${what} ${at}`;
  const volts = printQuantity(row.v, "V");
  const rated = `${volts} over the ${printQuantity(lamp.anchorV, "V")} it is rated at`;
  return (
    <tr>
      {isFirst && (
        <th scope="rowgroup" rowSpan={lamp.rows.length}>
          {lamp.name}, {printQuantity(lamp.ratedW, "W")}
        </th>
      )}
      <td>{row.speedRpm === 0 ? "stopped" : printNumber(row.speedRpm, 0)}</td>
      <td>
        <Figure
          sum={{
            name: named("volts"),
            result: volts,
            equation: `${printQuantity(row.postsV, "V")} at the battery less what its way loses`,
          }}
        />
      </td>
      <td>{printQuantity(row.powerW, "W")}</td>
      <td>
        <Figure
          sum={{
            name: named("light"),
            result: rangeText(row.lightLowRatio, row.lightHighRatio),
            equation: `${rated}, by the gentle and by the steep published law`,
          }}
        />
      </td>
      <td>
        {row.lifeRatio === null ? (
          <span className="note">no law holds</span>
        ) : (
          <Figure
            sum={{
              name: named("life"),
              result: `× ${lifeText(row.lifeRatio)}`,
              equation: `${rated}, to the power of the published law`,
            }}
          />
        )}
      </td>
    </tr>
  );
}

const WHOLE = 10;

const lifeText = (ratio: number): string => printNumber(ratio, ratio >= WHOLE ? 0 : 2);
