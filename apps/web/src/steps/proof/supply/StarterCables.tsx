import type { SupplyAnswer } from "@copperwright/engine";
import { printNumber, printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { Figure } from "./Figure.tsx";

type Side = NonNullable<SupplyAnswer["cranking"]>["cables"][number];

/** Live and earth side of the starter's way: drop against its limit, and how long the copper stands it. */
export function StarterCables({ cables }: { cables: readonly Side[] }): ReactNode {
  if (cables.length === 0) return null;
  return (
    <section aria-label="Starter cables" className="supply-part">
      <h2>Cables, warm</h2>
      <ul className="supply-list">
        {cables.map((side) => (
          <li key={side.side}>
            <Cable side={side} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function Cable({ side }: { side: Side }): ReactNode {
  const { dropV, limitV, holds, leastMm2, standsS, neededMm2 } = side;
  const name = side.side === "live" ? "live lead" : "earth way";
  return (
    <>
      {side.side === "live" ? "Live lead" : "Earth way"} loses{" "}
      <Figure
        sum={{
          name: `${name} of the starter loses`,
          result: printQuantity(dropV, "V"),
          equation: "sum of its steps in the fall above",
          note: `limit ${printQuantity(limitV, "V")} · common practice`,
          usedRatio: dropV / limitV,
          usedText: `of ${printQuantity(limitV, "V")}`,
        }}
      />
      , {holds ? "within" : <b>more than</b>} {printQuantity(limitV, "V")}. Its thinnest copper,{" "}
      {printQuantity(leastMm2, "mm2")}, stands this for{" "}
      <Figure
        sum={{
          name: `${name}: its thinnest copper stands the cranking current`,
          result: printQuantity(standsS, "s"),
          equation: `(k × ${printQuantity(leastMm2, "mm2")} ÷ current)², no heat given off`,
        }}
      />
      .{neededMm2 !== null && ` Copper of ${printNumber(neededMm2, 1)} mm² would bring it inside.`}
      {!holds &&
        neededMm2 === null &&
        " Contacts alone are over it: clean them, copper will not do."}
    </>
  );
}
