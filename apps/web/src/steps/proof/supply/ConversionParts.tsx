import type { Conversion } from "@copperwright/engine";
import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { choose } from "../../../store/benchStore.ts";
import { Figure } from "./Figure.tsx";

type Part = Conversion["parts"][number];
type Fuse = Conversion["fuses"][number];

const ORDER = ["replace", "rewind", "adjust", "keep"] as const;
const SAID = {
  replace: "Replace",
  rewind: "Rewind",
  adjust: "Adjust",
  keep: "Keep",
} as const;

/** What becomes of every part, grouped by what is to be done, with the reason. */
export function ConversionParts({
  parts,
  fuses,
}: {
  readonly parts: readonly Part[];
  readonly fuses: readonly Fuse[];
}): ReactNode {
  const rating = new Map(fuses.map((one) => [one.fuse, one]));
  return ORDER.map((action) => {
    const own = parts.filter((part) => part.action === action);
    if (own.length === 0) return null;
    const list = (
      <ul className="supply-list supply-plan">
        {own.map((part) => (
          <li key={part.part}>
            <PartLine part={part} fuse={rating.get(part.part)} />
          </li>
        ))}
      </ul>
    );
    if (action === "keep")
      return (
        <details key={action} className="proof-why">
          <summary>Keep: {own.length} parts</summary>
          {list}
        </details>
      );
    return (
      <section key={action} aria-label={SAID[action]} className="supply-part">
        <h2>
          {SAID[action]} <span className="note">{own.length}</span>
        </h2>
        {list}
      </section>
    );
  });
}

function PartLine({ part, fuse }: { part: Part; fuse: Fuse | undefined }): ReactNode {
  const { beforeA, afterA } = part;
  return (
    <>
      <button
        type="button"
        className="figure-link"
        onClick={() => choose({ kind: "part", id: part.part })}
      >
        {part.name || part.part}
      </button>
      <span>
        {part.reason}
        {beforeA !== null && afterA !== null && (
          <>
            {" · "}
            <Figure
              sum={{
                name: `${part.name} takes`,
                result: `${printQuantity(beforeA, "A")} now, ${printQuantity(afterA, "A")} then`,
                equation: "its watts ÷ the volts it is made for",
              }}
            />
          </>
        )}
        {fuse !== undefined && (
          <>
            {" · "}
            <Figure
              sum={{
                name: `${fuse.fuse} rating`,
                result: `${printQuantity(fuse.beforeA, "A")} now, ${printQuantity(fuse.afterA, "A")} then`,
                equation: `largest lasting load ${printQuantity(fuse.loadBeforeA, "A")} now, ${printQuantity(fuse.loadAfterA, "A")} then`,
                note: fuse.reason,
              }}
            />
          </>
        )}
      </span>
    </>
  );
}
