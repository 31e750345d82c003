import type { SupplyAnswer } from "@copperwright/engine";
import { printNumber, printQuantity } from "@copperwright/engine/words";
import { type ChangeEvent, type ReactNode, useState } from "react";
import { say } from "../../../store/benchStore.ts";
import { Figure } from "./Figure.tsx";
import { type Ride, RidePlot } from "./RidePlot.tsx";
import { useSupply } from "./supplyStore.ts";
import { restsOn, spellText } from "./supplyWords.ts";
import { rideWord } from "./topicAnswer.ts";
import { WhatIf } from "./WhatIf.tsx";

type TopicProps = { readonly answer: SupplyAnswer; readonly before: SupplyAnswer | null };

const SHORT = "about an hour";

/** Charge over the ride: the table's rides, or the rider's own. */
export function RideTopic({ answer, before }: TopicProps): ReactNode {
  const { rides, noRides } = answer;
  const [picked, setPicked] = useState(SHORT);
  if (noRides !== null)
    return (
      <>
        <p className="supply-lead">No ride was reckoned: {noRides}.</p>
        <OwnRide />
      </>
    );
  const words = [SHORT, ...rides.map(({ ride }) => ride)];
  const isOne = rides.length === 1;
  const shown = (all: readonly Ride[]): readonly Ride[] =>
    isOne
      ? all
      : picked === SHORT
        ? all.filter(({ ride }) => ride !== "rally")
        : all.filter(({ ride }) => ride === picked);
  return (
    <>
      {!isOne && (
        <div className="proof-picks" role="group" aria-label="Ride">
          {words.map((word) => (
            <button
              key={word}
              type="button"
              className="act"
              aria-pressed={word === picked}
              onClick={() => setPicked(word)}
            >
              {word === SHORT ? SHORT : rideWord(word)}
            </button>
          ))}
        </div>
      )}
      <div className="supply-body">
        <div className="supply-picture">
          <RidePlot rides={shown(rides)} before={shown(before?.rides ?? [])} />
        </div>
        <div className="supply-side">
          <WhatIf />
        </div>
      </div>
      <RideTable rides={rides} before={before?.rides ?? []} answer={answer} />
      <OwnRide />
    </>
  );
}

function RideTable({
  rides,
  before,
  answer,
}: {
  readonly rides: readonly Ride[];
  readonly before: readonly Ride[];
  readonly answer: SupplyAnswer;
}): ReactNode {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled with the keys
    <div className="proof-scroll" tabIndex={0} role="group" aria-label="Rides">
      <table className="proof-table">
        <thead>
          <tr>
            <th scope="col">ride</th>
            <th scope="col">takes</th>
            <th scope="col">from</th>
            <th scope="col">to</th>
            {before.length > 0 && <th scope="col">job as it is</th>}
            <th scope="col">least volts</th>
            <th scope="col">note</th>
          </tr>
        </thead>
        <tbody>
          {rides.map((ride) => (
            <RideRow
              key={ride.ride}
              ride={ride}
              former={before.find((one) => one.ride === ride.ride)}
              hasFormer={before.length > 0}
              answer={answer}
            />
          ))}
        </tbody>
      </table>
    </div>
  );
}

type RideRowProps = {
  readonly ride: Ride;
  readonly former: Ride | undefined;
  readonly hasFormer: boolean;
  readonly answer: SupplyAnswer;
};

const OVER_AH = 0.05;
const HOUR_J = 3600;

const percent = (value: number): string => `${printNumber(value, 0)}\u00a0%`;

const wattHours = (energyJ: number): string => `${printNumber(energyJ / HOUR_J, 0)} Wh`;

const endSum = (ride: Ride, answer: SupplyAnswer) => {
  const { sourceJ, loadsJ, batteryLossJ, storedJ, residualRatio } = ride.energy;
  return {
    name: `${rideWord(ride.ride)}: charge at the end`,
    result: percent(ride.endPercent),
    equation: `${percent(ride.startPercent)}, then ${wattHours(sourceJ)} given − ${wattHours(loadsJ)} used − ${wattHours(batteryLossJ)} lost in the battery = ${wattHours(storedJ)} stored`,
    note: [
      `closes to ${printNumber(100 * residualRatio, 3)} %`,
      restsOn(answer, "ampere-hours got back"),
      restsOn(answer, "Peukert's law"),
    ]
      .filter((one) => one !== "")
      .join(" · "),
  };
};

function RideRow({ ride, former, hasFormer, answer }: RideRowProps): ReactNode {
  const note =
    ride.emptyAtS !== null
      ? `flat after ${spellText(ride.emptyAtS)}`
      : ride.overchargeAh > OVER_AH
        ? `${printNumber(ride.overchargeAh, 1)} Ah into a full battery, which boils it`
        : "";
  return (
    <tr>
      <th scope="row">{rideWord(ride.ride)}</th>
      <td>{spellText(ride.durationS)}</td>
      <td>{percent(ride.startPercent)}</td>
      <td>
        <Figure sum={endSum(ride, answer)} />
      </td>
      {hasFormer && <td>{former === undefined ? "" : percent(former.endPercent)}</td>}
      <td>
        <Figure
          sum={{
            name: `${rideWord(ride.ride)}: least volts at the battery`,
            result: printQuantity(ride.leastV, "V"),
            equation: `source, loads and battery agree there; least charge ${percent(ride.leastPercent)}`,
          }}
        />
      </td>
      <td className="supply-words">{note}</td>
    </tr>
  );
}

const MOST_BYTES = 5 * 1024 * 1024;

/** The rider's own ride from a file. */
function OwnRide(): ReactNode {
  const trace = useSupply((supply) => supply.trace);
  const pick = async (event: ChangeEvent<HTMLInputElement>): Promise<void> => {
    const [file] = event.target.files ?? [];
    event.target.value = "";
    if (file === undefined) return;
    if (file.size > MOST_BYTES) {
      say(`${file.name} is larger than 5 MB, which no ride needs. Thin its moments out.`);
      return;
    }
    useSupply.setState({ trace: { name: file.name, text: await file.text() } });
  };
  return (
    <section className="supply-own" aria-label="Your own ride">
      <label className="act supply-file">
        {trace === null ? "your own ride from a file" : "another file"}
        <input
          type="file"
          accept=".csv,text/csv"
          className="only-spoken"
          onChange={(event) => void pick(event)}
        />
      </label>
      {trace !== null && (
        <button type="button" className="act" onClick={() => useSupply.setState({ trace: null })}>
          let go of {trace.name}
        </button>
      )}
      <p className="note">
        CSV with the headings timeS,speedRpm and if wanted lights: the name of a lighting state, or
        off while parked. Each line holds until the next.
      </p>
    </section>
  );
}
