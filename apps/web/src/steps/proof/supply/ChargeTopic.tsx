import type { Balance, SupplyAnswer } from "@copperwright/engine";
import { printNumber, printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { SelectField } from "../../../entry/SelectField.tsx";
import { BalancePlot } from "./BalancePlot.tsx";
import { BalanceRows } from "./BalanceRows.tsx";
import { Excitation } from "./Excitation.tsx";
import { Figure } from "./Figure.tsx";
import { SourceFacts } from "./SourceFacts.tsx";
import { useSupply } from "./supplyStore.ts";
import { ampsText, restsOn, rpmText } from "./supplyWords.ts";
import { WhatIf } from "./WhatIf.tsx";
import { WithoutBattery } from "./WithoutBattery.tsx";

type TopicProps = { readonly answer: SupplyAnswer; readonly before: SupplyAnswer | null };

/** Output against demand over engine speed, for the lighting state chosen. */
export function ChargeTopic({ answer, before }: TopicProps): ReactNode {
  const lighting = useSupply((supply) => supply.lighting);
  const { balances } = answer;
  const balance = balances.find(({ state }) => state === lighting) ?? balances[0];
  if (balance === undefined)
    return <p>No state of the job says how it is ridden: name one in Circuits.</p>;
  const former = before?.balances.find(({ state }) => state === balance.state) ?? null;
  return (
    <>
      <LightingPicks balances={balances} now={balance.state} />
      <Met balance={balance} former={former} answer={answer} />
      <div className="supply-body">
        <div className="supply-picture">
          {balance.why === null && (
            <BalancePlot balance={balance} beforeA={former?.demandA ?? null} />
          )}
          <SourceFacts answer={answer} />
        </div>
        <div className="supply-side">
          <WhatIf />
        </div>
      </div>
      <BalanceRows balance={balance} answer={answer} />
      <Excitation answer={answer} />
      <WithoutBattery answer={answer} />
    </>
  );
}

/** More than this are a list to pull down. */
const MOST_PICKS = 4;

function LightingPicks({
  balances,
  now,
}: {
  readonly balances: readonly Balance[];
  readonly now: string;
}): ReactNode {
  const pick = (state: string): void => useSupply.setState({ lighting: state });
  if (balances.length > MOST_PICKS) {
    const choices = balances.map(({ state, name }) => ({ value: state, word: name }));
    return <SelectField label="lighting" value={now} choices={choices} onChoice={pick} />;
  }
  return (
    <div className="proof-picks" role="group" aria-label="Lighting">
      {balances.map(({ state, name }) => (
        <button
          key={state}
          type="button"
          className="act"
          aria-pressed={state === now}
          onClick={() => pick(state)}
        >
          {name}
        </button>
      ))}
    </div>
  );
}

type MetProps = {
  readonly balance: Balance;
  readonly former: Balance | null;
  readonly answer: SupplyAnswer;
};

/** The balance speed in one sentence, with its doubt, and what it was. */
function Met({ balance, former, answer }: MetProps): ReactNode {
  if (answer.sources.length === 0)
    return (
      <p className="supply-lead">
        It draws <Demand balance={balance} answer={answer} />, and nothing charges the battery: it
        runs down.
      </p>
    );
  if (balance.why !== null)
    return (
      <p className="supply-lead">
        It draws <Demand balance={balance} answer={answer} />; what charges it is not known:{" "}
        {balance.why}. Give the generator's amps at two speeds in Survey, and the curve appears.
      </p>
    );
  const { balanceRpm } = balance;
  return (
    <p className="supply-lead">
      It draws <Demand balance={balance} answer={answer} />.{" "}
      {balanceRpm === null ? (
        <b>At no speed looked at does its source give as much: the battery empties.</b>
      ) : (
        <>
          The ammeter stands at nought at{" "}
          <b>
            <Figure sum={balanceSum(balance, answer)} />
          </b>
          <Doubt balance={balance} />. Below it the battery gives what is missing.
        </>
      )}
      {former !== null && (
        <>
          {" "}
          As the job is: <Figure sum={balanceSum(former, answer)} />, drawing{" "}
          {ampsText(former.demandA)}.
        </>
      )}
    </p>
  );
}

/** Where a strong and a weak source of the same two points would meet the line. */
function Doubt({ balance }: { balance: Balance }): ReactNode {
  const { balanceLowRpm, balanceHighRpm } = balance;
  return (
    <>
      {balanceLowRpm !== null && (
        <>
          ; with a strong source of the same two points at{" "}
          <Figure sum={bandSum("strong", balanceLowRpm, balance)} />
        </>
      )}
      {balanceHighRpm === null ? (
        <b>, a weak one never gives it</b>
      ) : (
        <>
          , with a weak one at <Figure sum={bandSum("weak", balanceHighRpm, balance)} />
        </>
      )}
    </>
  );
}

function Demand({ balance, answer }: Omit<MetProps, "former">): ReactNode {
  const demand = answer.demands.find(({ state }) => state === balance.state);
  const largest = (demand?.rows ?? []).toSorted((a, b) => b.meanA - a.meanA).slice(0, 5);
  const sum = largest.map(
    ({ name, meanA, dutyRatio }) =>
      `${name} ${printNumber(meanA, 2)}${dutyRatio < 1 ? ` (${printNumber(100 * dutyRatio, 0)} % of the time)` : ""}`,
  );
  const more = (demand?.rows.length ?? 0) > largest.length ? " + smaller ones" : "";
  return (
    <Figure
      sum={{
        name: "drawn at the battery",
        result: printQuantity(balance.demandA, "A"),
        equation: `${sum.join(" + ")}${more}, less what the wires lose, at ${printQuantity(balance.atV, "V")}; ${printQuantity(balance.demandW, "W")}`,
        note: `${balance.name} · ${restsOn(answer, "volts the balance is struck at")}`,
      }}
    />
  );
}

function balanceSum(balance: Balance, { sources, ...answer }: SupplyAnswer) {
  const [source] = sources;
  const curve =
    source === undefined || source.ceilingA === null || source.emfPerThousandV === null
      ? ""
      : `; its two points: ${printNumber(source.emfPerThousandV, 2)} V per 1000 rpm, at most ${printQuantity(source.ceilingA, "A")}`;
  return {
    name: "balance speed",
    result: rpmText(balance.balanceRpm),
    equation: `least that gives ${printQuantity(balance.demandA, "A")} at ${printQuantity(balance.atV, "V")}${curve}`,
    note: [
      balance.name,
      restsOn(answer, "volts the balance is struck at"),
      `output known to ${printNumber(100 * balance.bandRatio, 0)} %`,
    ].join(" · "),
  };
}

const bandSum = (which: "strong" | "weak", speedRpm: number, balance: Balance) => ({
  name: `balance speed, ${which} source`,
  result: rpmText(speedRpm),
  equation: `the same with ${printNumber(100 * balance.bandRatio, 0)} % ${which === "strong" ? "more" : "less"} than the curve of its two points`,
  note: balance.name,
});
