import type { Conversion } from "@copperwright/engine";
import { printNumber, printQuantity } from "@copperwright/engine/words";
import { type ReactNode, useState } from "react";
import { moneyText } from "../../../frame/moneyText.ts";
import { SeverityTag } from "../../../frame/SeverityTag.tsx";
import { useBench } from "../../../store/benchStore.ts";
import { makeJob } from "../../jobs/jobList.ts";
import { ConversionParts } from "./ConversionParts.tsx";
import { ConversionWires } from "./ConversionWires.tsx";
import { countsText } from "./countsText.ts";
import type { ConversionView } from "./supplyAnswers.ts";

type Done = Extract<ConversionView, { readonly ok: true }>;

const WORST = ["stop", "not-proven", "mend"] as const;
const MOST_TOLD = 6;

/** The conversion planned and checked, and the way to take it. */
export function ConversionPlan({ view }: { view: Done }): ReactNode {
  const { plan, text, cost } = view;
  const changed = plan.parts.filter(({ action }) => action !== "keep").length;
  return (
    <>
      <p className="supply-lead">
        {changed} of {plan.parts.length} parts change. Checked as it is now:{" "}
        <b>{plan.before.verdict}</b>, {countsText(plan.before.counts)}. Converted:{" "}
        <b>{plan.after.verdict}</b>, {countsText(plan.after.counts)}.
      </p>
      <Take text={text} />
      {cost !== null && (
        <p>
          To buy by the shop's list: <b>{moneyText(cost.totalPrice, cost.currency)}</b>
          {!cost.isComplete && (
            <span className="note"> without {cost.missingCount} lines that have no price</span>
          )}
        </p>
      )}
      {cost === null && (
        <p className="note">Give a shop's price list in Parts, and what it costs stands here.</p>
      )}
      <StillToMend after={plan.after} />
      <ConversionParts parts={plan.parts} fuses={plan.fuses} />
      <ConversionWires wires={plan.wires} />
      <Balances balances={plan.balances} />
    </>
  );
}

/** The converted machine as a job of its own; the one on the bench stays. */
function Take({ text }: { text: string }): ReactNode {
  const role = useBench((bench) => bench.visitor?.role ?? "view");
  const [isBusy, setBusy] = useState(false);
  if (role === "view") return null;
  const make = async (): Promise<void> => {
    setBusy(true);
    await makeJob({ from: "text", text });
    setBusy(false);
  };
  return (
    <div className="supply-adds">
      <button type="button" className="act filled" disabled={isBusy} onClick={() => void make()}>
        make it a new job
      </button>
      <p className="note">This job stays as it is; the new one opens at Survey.</p>
    </div>
  );
}

function StillToMend({ after }: { after: Conversion["after"] }): ReactNode {
  const worst = WORST.flatMap((severity) =>
    after.findings.filter((one) => one.severity === severity && one.accepted === null),
  );
  if (worst.length === 0) return null;
  return (
    <section aria-label="Still to mend" className="supply-part">
      <h2>Still to mend when it is converted</h2>
      <ul className="supply-list">
        {worst.slice(0, MOST_TOLD).map((one) => (
          <li key={one.message} className="supply-finding">
            <SeverityTag severity={one.severity} />
            <span>{one.message}</span>
          </li>
        ))}
      </ul>
      {worst.length > MOST_TOLD && (
        <p className="note">and {worst.length - MOST_TOLD} more, told by the new job's proof</p>
      )}
    </section>
  );
}

function Balances({ balances }: { balances: Conversion["balances"] }): ReactNode {
  const rpm = (speedRpm: number | null): string =>
    speedRpm === null ? "not known" : printNumber(Math.ceil(speedRpm / 10) * 10, 0);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a wide table is scrolled with the keys
    <div className="proof-scroll" tabIndex={0} role="group" aria-label="Balance before and after">
      <table className="proof-table">
        <thead>
          <tr>
            <th scope="col">lights</th>
            <th scope="col">draws now</th>
            <th scope="col">then</th>
            <th scope="col">balance rpm now</th>
            <th scope="col">then</th>
          </tr>
        </thead>
        <tbody>
          {balances.map((one) => (
            <tr key={one.state}>
              <th scope="row">{one.name}</th>
              <td>{printQuantity(one.demandBeforeA, "A")}</td>
              <td>{printQuantity(one.demandAfterA, "A")}</td>
              <td>{rpm(one.beforeRpm)}</td>
              <td>{rpm(one.afterRpm)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
