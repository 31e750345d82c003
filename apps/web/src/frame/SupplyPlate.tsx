import type { Job } from "@copperwright/engine";
import type { ReactNode } from "react";

/** Volts, live pole and earthed pole: on every screen and sheet, because every sign hangs on it. */
export function SupplyPlate({ supply }: { supply: Job["supply"] }): ReactNode {
  const earth = supply.earthPolarity === "positive" ? "+" : "−";
  const live = supply.earthPolarity === "positive" ? "−" : "+";
  return (
    <p className="plate">
      <span className="only-spoken">{`${supply.nominalV} volts, ${supply.earthPolarity} earth`}</span>
      <b>{supply.nominalV} V</b>
      <span className="plate-poles">
        live {live}
        <br />
        earth {earth}
      </span>
      <svg
        viewBox="0 0 24 24"
        width="24"
        height="24"
        aria-hidden="true"
        stroke="currentColor"
        strokeWidth="2"
      >
        <path d="M12 2v10M3 12h18M7 16h10M10.5 20h3" />
      </svg>
    </p>
  );
}
