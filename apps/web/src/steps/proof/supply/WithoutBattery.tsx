import type { SupplyAnswer } from "@copperwright/engine";
import { printNumber, printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { Figure } from "./Figure.tsx";
import { rpmText } from "./supplyWords.ts";

/** Whether a capacitor may stand in for the battery, and how far the volts fall between pulses. */
export function WithoutBattery({ answer }: { answer: SupplyAnswer }): ReactNode {
  const { allowed, reasons, leastUf, mostUf, leastV, earthed, ripple } = answer.withoutBattery;
  return (
    <section aria-label="Without a battery" className="supply-part">
      <h2>Without a battery?</h2>
      <p>
        {allowed
          ? `It may run on a capacitor of ${printNumber(leastUf, 0)} to ${printNumber(mostUf, 0)} microfarad for ${printQuantity(leastV, "V")} or more, its ${earthed} pole on the frame`
          : "It is not to be run without its battery"}
        : {reasons.join("; ")}.
      </p>
      {allowed && ripple !== null && (
        <dl className="proof-facts">
          {ripple.rows.map(({ polePairCount, pulseHz, rippleV }) => (
            <div key={polePairCount} className="supply-pair">
              <dt>{polePairCount} pole pairs</dt>
              <dd>
                falls by{" "}
                <Figure
                  sum={{
                    name: `volts between two pulses, ${polePairCount} pole pairs`,
                    result: printQuantity(rippleV, "V"),
                    equation: `${printQuantity(ripple.currentA, "A")} ÷ (${printNumber(ripple.capacitanceUf, 0)} microfarad × ${printNumber(pulseHz, 0)} pulses a second)`,
                    note: `at ${rpmText(ripple.speedRpm)}, the slowest at which the source carries the lights; an upper bound`,
                  }}
                />
              </dd>
            </div>
          ))}
        </dl>
      )}
    </section>
  );
}
