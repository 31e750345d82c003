import type { SupplyAnswer } from "@copperwright/engine";
import type { ReactNode } from "react";
import { choose, useBench } from "../../../store/benchStore.ts";
import { thingKinds } from "../thingKinds.ts";
import { Figure } from "./Figure.tsx";
import { ampsText, voltsText } from "./supplyWords.ts";
import { type WaterfallBar, waterfallBars } from "./waterfallBars.ts";

type WaterfallProps = {
  readonly label: string;
  readonly fall: NonNullable<SupplyAnswer["lampFall"]>["fall"];
  readonly names: Readonly<Record<string, string>>;
};

const SIDE_WORDS = {
  battery: "inside the battery",
  live: "live side",
  load: "",
  earth: "earth side",
} as const;

/** Volts lost step by step, each bar beginning where the one above ended; between its two sides stands what the load itself gets. */
export function Waterfall({ label, fall, names }: WaterfallProps): ReactNode {
  const bars = waterfallBars(fall, names);
  return (
    <ol className="supply-fall" aria-label={label}>
      {bars.map((bar, k) => (
        <li key={bar.key} className={bar.side}>
          {bar.side === "load" ? (
            <p>
              <Name bar={bar} /> gets <Drop bar={bar} />
            </p>
          ) : (
            <>
              <span className="supply-fall-name">
                <Name bar={bar} />
                {bars[k - 1]?.side !== bar.side && (
                  <span className="note"> {SIDE_WORDS[bar.side]}</span>
                )}
              </span>
              <Bar bar={bar} />
              <Drop bar={bar} />
            </>
          )}
        </li>
      ))}
    </ol>
  );
}

/** A name that leads to its thing, where it stands for one. */
function Name({ bar }: { bar: WaterfallBar }): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const [of = ""] = bar.of;
  const owner = of.split(/[:.]/)[0] ?? of;
  const kindOf = thingKinds(job);
  const id = kindOf(of) === null ? owner : of;
  const kind = kindOf(id);
  if (bar.of.length > 1 || kind === null) return <>{bar.name}</>;
  return (
    <button type="button" className="figure-link" onClick={() => choose({ kind, id })}>
      {bar.name}
    </button>
  );
}

function Bar({ bar }: { bar: WaterfallBar }): ReactNode {
  return (
    <svg viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
      <rect
        x={100 * bar.fromRatio}
        y={0}
        width={Math.max(0.6, 100 * bar.lengthRatio)}
        height={10}
        className={bar.side}
      />
    </svg>
  );
}

function Drop({ bar }: { bar: WaterfallBar }): ReactNode {
  const isLoad = bar.side === "load";
  return (
    <Figure
      sum={{
        name: isLoad ? `${bar.name} gets` : `lost in ${bar.name}`,
        result: voltsText(bar.dropV),
        equation: isLoad
          ? `volts between its pins at ${ampsText(bar.currentA)}, the whole network solved`
          : `${ampsText(bar.currentA)} through ${bar.of.join(", ")}`,
        note: isLoad ? "" : SIDE_WORDS[bar.side],
      }}
    />
  );
}
