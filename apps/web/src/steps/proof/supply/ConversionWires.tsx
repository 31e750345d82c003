import type { Conversion } from "@copperwright/engine";
import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";

type Wire = Conversion["wires"][number];

/** Wires that the other volts trouble stand in sight; the rest stay where they lie. */
export function ConversionWires({ wires }: { wires: readonly Wire[] }): ReactNode {
  const troubled = wires.filter(
    ({ newFindings, makeId, makeAfterId }) => newFindings.length > 0 || makeId !== makeAfterId,
  );
  return (
    <section aria-label="Wires" className="supply-part">
      <h2>Wires</h2>
      <p>
        {wires.length - troubled.length} of {wires.length} wires stay as they are
        {troubled.length > 0 && `; ${troubled.length} want another make or a look`}.
      </p>
      {troubled.length > 0 && (
        <ul className="supply-list supply-plan">
          {troubled.map((wire) => (
            <li key={wire.wire}>
              <b>{wire.wire}</b>
              <span>{wireText(wire)}</span>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function wireText({ beforeA, afterA, makeId, makeAfterId, newFindings }: Wire): string {
  const amps =
    beforeA === null || afterA === null
      ? ""
      : `${printQuantity(beforeA, "A")} now, ${printQuantity(afterA, "A")} then`;
  const make = makeId === makeAfterId ? "" : `${makeId} becomes ${makeAfterId}`;
  const found = newFindings.map((code) => code.replaceAll("-", " ")).join(", ");
  return [amps, make, found].filter((one) => one !== "").join("; ");
}
