import type { SupplyAnswer } from "@copperwright/engine";
import { printNumber, printQuantity } from "@copperwright/engine/words";
import { type ReactNode, useState } from "react";
import { Figure } from "./Figure.tsx";
import { StarterCables } from "./StarterCables.tsx";
import { restsOn, shareText } from "./supplyWords.ts";
import { Waterfall } from "./Waterfall.tsx";

type Cranking = NonNullable<SupplyAnswer["cranking"]>;
type Row = Cranking["rows"][number];

type StartProps = {
  readonly answer: SupplyAnswer;
  readonly names: Readonly<Record<string, string>>;
};

/** Cranking: amps, and the volts lost step by step; or the kick. */
export function StartTopic({ answer, names }: StartProps): ReactNode {
  const { cranking, noCranking } = answer;
  const [picked, setPicked] = useState(0);
  if (cranking === null) return <Kicked answer={answer} names={names} why={noCranking} />;
  const row = cranking.rows[picked] ?? cranking.rows[0]!;
  return (
    <>
      <div className="proof-picks" role="group" aria-label="How cold">
        {cranking.rows.map((one, k) => (
          <button
            key={`${one.ambientC} ${one.field}`}
            type="button"
            className="act"
            aria-pressed={one === row}
            onClick={() => setPicked(k)}
          >
            {caseWord(one)}
          </button>
        ))}
      </div>
      <p className="supply-lead">
        <Cranked row={row} answer={answer} />
      </p>
      <Waterfall
        label={`Volts while the starter turns, ${caseWord(row)}`}
        fall={row.fall}
        names={names}
      />
      <StarterCables cables={cranking.cables} />
      {cranking.notes.map((note) => (
        <p key={note} className="note">
          {note}
        </p>
      ))}
      <p className="note">
        As in: {cranking.state}. Nobody states a starter's field, so both kinds are reckoned cold.
      </p>
    </>
  );
}

const caseWord = ({ ambientC, demandRatio, field }: Row): string =>
  demandRatio === 1
    ? `warm, ${printQuantity(ambientC, "C")}`
    : `${printQuantity(ambientC, "C")}, ${field === "series" ? "series field" : "magnets"}`;

function Cranked({ row, answer }: { readonly row: Row; readonly answer: SupplyAnswer }): ReactNode {
  const volts = (name: string, v: number, equation: string): ReactNode => (
    <Figure
      sum={{
        name: `${name}, ${caseWord(row)}`,
        result: printQuantity(v, "V"),
        equation,
        note: restsOn(answer, "least volts at the posts while cranking"),
      }}
    />
  );
  return (
    <>
      {row.turns ? "It turns" : <b>It does not turn</b>}
      {row.turns && row.speedRatio !== null && row.demandRatio !== 1 && (
        <> at {shareText(row.speedRatio)} of its warm speed</>
      )}
      , taking{" "}
      <Figure
        sum={{
          name: `starter current, ${caseWord(row)}`,
          result: printQuantity(row.currentA, "A"),
          equation:
            row.demandRatio === 1
              ? "battery, cables, contacts and motor solved as one network"
              : `an engine that asks ${printNumber(row.demandRatio, 2)} times the warm torque of a starter with ${row.field === "series" ? "a series field" : "magnets"}`,
        }}
      />
      . The posts stand at{" "}
      {volts("at the battery posts", row.postsV, "EMF less what the battery itself loses")}
      {!row.postsHold && <b>, too low</b>}, the motor gets{" "}
      {volts("at the motor", row.motorV, "posts less what cables and contacts lose")}
      {row.coilV !== null && (
        <>
          , the ignition{" "}
          {volts(
            "at the ignition coil that gets least",
            row.coilV,
            "the whole network solved while the starter turns",
          )}
        </>
      )}
      .
    </>
  );
}

function Kicked({ answer, names, why }: StartProps & { readonly why: string | null }): ReactNode {
  const { coilsLeftOn } = answer;
  return (
    <>
      <p className="supply-lead">
        {why === "no starter"
          ? "It is kicked over: there is no starter."
          : `Cranking was not reckoned: ${why}.`}
      </p>
      {coilsLeftOn === null ? (
        <p>No ignition coil hangs on the battery.</p>
      ) : (
        <p>
          While it is kicked the battery alone feeds the ignition:{" "}
          {coilsLeftOn.coils.map((coil, k) => (
            <span key={coil.load}>
              {k > 0 && ", "}
              {names[coil.load] ?? coil.load}{" "}
              <Figure
                sum={{
                  name: `${names[coil.load] ?? coil.load} while it is kicked, contacts closed`,
                  result: printQuantity(coil.v, "V"),
                  equation: `the whole network solved in: ${coilsLeftOn.state}, engine stopped`,
                  note: `takes ${printQuantity(coil.powerW, "W")}; from a full battery`,
                }}
              />
            </span>
          ))}
          .
        </p>
      )}
    </>
  );
}
