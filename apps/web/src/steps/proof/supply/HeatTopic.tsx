import type { SupplyAnswer } from "@copperwright/engine";
import { printNumber, printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { Figure } from "./Figure.tsx";
import { restsOn } from "./supplyWords.ts";
import { WhatIf } from "./WhatIf.tsx";

type Source = SupplyAnswer["heat"][number];
type Row = Source["rows"][number];
type TopicProps = { readonly answer: SupplyAnswer; readonly before: SupplyAnswer | null };

/** Where the watts go that nobody uses: stator, regulator, zener. */
export function HeatTopic({ answer, before }: TopicProps): ReactNode {
  if (answer.heat.length === 0)
    return (
      <p className="supply-lead">
        Heat needs the amps the generator gives at two speeds, and a state with lights on.
      </p>
    );
  return (
    <>
      {answer.heat.map((source) => (
        <SourceHeat
          key={source.generator}
          source={source}
          former={before?.heat.find((one) => one.generator === source.generator)}
          answer={answer}
        />
      ))}
      <WhatIf />
    </>
  );
}

type SourceProps = {
  readonly source: Source;
  readonly former: Source | undefined;
  readonly answer: SupplyAnswer;
};

function SourceHeat({ source, former, answer }: SourceProps): ReactNode {
  const { generator, isShunt, rows, state } = source;
  const hasZener = rows.some(({ zenerW }) => zenerW !== null);
  const lights = answer.balances.find((one) => one.state === state)?.name ?? state;
  return (
    <section aria-label={`Heat of ${generator}`} className="supply-part">
      <p className="supply-lead">
        {isShunt
          ? "A shunt unit loads the stator whatever is saved: what is switched off goes into unit and winding instead."
          : "The winding is loaded with what is used: whatever is switched off spares it."}
      </p>
      <p>
        {generator}, with {lights}, the battery nearly full:
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled with the keys */}
      <div className="proof-scroll" tabIndex={0} role="group" aria-label={`Heat of ${generator}`}>
        <table className="proof-table">
          <thead>
            <tr>
              <th scope="col">rpm</th>
              <th scope="col">used</th>
              <th scope="col">in the winding</th>
              <th scope="col">winding heat</th>
              <th scope="col">regulator heat</th>
              {hasZener && <th scope="col">zener heat</th>}
              {former !== undefined && <th scope="col">regulator, job as it is</th>}
            </tr>
          </thead>
          <tbody>
            {rows.map((row, k) => (
              <HeatRow
                key={row.speedRpm}
                row={row}
                isShunt={isShunt}
                hasZener={hasZener}
                former={former?.rows[k]}
                answer={answer}
              />
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

type RowProps = {
  readonly row: Row;
  readonly isShunt: boolean;
  readonly hasZener: boolean;
  readonly former: Row | undefined;
  readonly answer: SupplyAnswer;
};

function HeatRow({ row, isShunt, hasZener, former, answer }: RowProps): ReactNode {
  const { speedRpm, outputA, windingA, windingW, unitW, zenerW } = row;
  const at = `at ${printQuantity(speedRpm, "rpm")}`;
  const amps = (currentA: number): string => printQuantity(currentA, "A");
  const figure = (
    name: string,
    value: number | null,
    unit: string,
    equation: string,
  ): ReactNode => (
    <td>
      {value === null ? (
        "not known"
      ) : (
        <Figure
          sum={{
            name: `${name} ${at}`,
            result: printQuantity(value, unit),
            equation,
            note: isShunt ? restsOn(answer, "heat of a shunt regulator") : "",
          }}
        />
      )}
    </td>
  );
  const unit = isShunt
    ? `drop of the rectifier × ${amps(outputA)} + drop of the shunt × (${amps(windingA)} − ${amps(outputA)})`
    : `drop of the rectifier × ${amps(outputA)}`;
  return (
    <tr>
      <th scope="row">{printNumber(speedRpm, 0)}</th>
      {figure("used", outputA, "A", "given to the machine with the battery nearly full")}
      {figure(
        "in the winding",
        windingA,
        "A",
        isShunt ? "all it can give into a short, at every moment" : "what is used",
      )}
      {figure("winding heat", windingW, "W", `${amps(windingA)}² × resistance of the winding`)}
      {figure("regulator heat", unitW, "W", unit)}
      {hasZener &&
        figure(
          "zener heat",
          zenerW,
          "W",
          "current it takes × its volts: it burns what nothing else takes",
        )}
      {former !== undefined && <td>{printQuantity(former.unitW, "W")}</td>}
    </tr>
  );
}
