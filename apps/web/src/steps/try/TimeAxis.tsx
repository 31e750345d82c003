import type { FaultStory, WireHistory } from "@copperwright/engine";
import { printQuantity } from "@copperwright/engine/words";
import { type ReactNode, useEffect, useRef, useState } from "react";
import { showSum } from "../../store/benchStore.ts";
import { TimePlot } from "./TimePlot.tsx";
import { timeText } from "./timeText.ts";
import { useTry } from "./tryStore.ts";

type TimeAxisProps = {
  readonly story: FaultStory;
  readonly labelOf: (wire: string) => string;
};

/** What happened since the fault was set: current, the hottest wire and its insulation's limit, the band in which the fuse goes; a flag through time. */
export function TimeAxis({ story, labelOf }: TimeAxisProps): ReactNode {
  const box = useRef<HTMLDivElement>(null);
  const [widthPx, setWidth] = useState(0);
  const atS = useTry((bench) => bench.atS) ?? story.fromS;
  useEffect(() => {
    if (box.current === null) return;
    const watch = new ResizeObserver(([entry]) => setWidth(entry?.contentRect.width ?? 0));
    watch.observe(box.current);
    return () => watch.disconnect();
  }, []);
  const [wire] = story.wires;
  return (
    <section className="try-time" aria-label="What happened, in time">
      <header>
        <h2>What happened</h2>
        <p>{fuseSentence(story)}</p>
        <p className="note" aria-live="polite">
          {momentWords(story, atS)}
        </p>
        {wire !== undefined && (
          <button type="button" className="figure-link" onClick={() => explain(wire, labelOf)}>
            {wireSentence(wire, labelOf(wire.wire))}
          </button>
        )}
      </header>
      <div ref={box}>
        {widthPx > 0 && (
          <TimePlot story={story} wire={wire} widthPx={widthPx} atS={atS} labelOf={labelOf} />
        )}
      </div>
    </section>
  );
}

export function fuseSentence({ first, stages }: FaultStory): string {
  if (first === null || first.opensMinS === null) {
    return "No fuse opens: nothing ends this by itself.";
  }
  const rating = `${first.part}, ${printQuantity(first.ratingA, "A")}, carries ${printQuantity(Math.abs(first.currentA), "A")}`;
  if (first.opensMaxS === null) {
    return `${rating}: it may open from ${timeText(first.opensMinS)} on, and is never promised to.`;
  }
  const next = stages[2]?.opened;
  const later = next == null ? "" : ` Then ${next} goes.`;
  return `${rating}: it opens between ${timeText(first.opensMinS)} and ${timeText(first.opensMaxS)}.${later}`;
}

/** What of the fuse can be said at the flag's moment. */
export function momentWords({ first }: FaultStory, atS: number): string {
  if (first === null || first.opensMinS === null) return "";
  const { part, opensMinS, opensMaxS } = first;
  if (opensMaxS !== null && atS >= opensMaxS) return `at the flag ${part} has gone`;
  return atS < opensMinS ? `at the flag ${part} is whole` : `at the flag ${part} may have gone`;
}

function wireSentence(
  { peakC, overLimitAtS, beyondModelAtS, peakAtS }: WireHistory,
  label: string,
): string {
  const reach = `wire ${label} reaches ${printQuantity(peakC, "C")}`;
  if (beyondModelAtS !== null) return `${reach} in ${timeText(beyondModelAtS)} and burns on`;
  const over = overLimitAtS === null ? "" : `, over its limit from ${timeText(overLimitAtS)}`;
  return `${reach} after ${timeText(peakAtS)}${over}`;
}

function explain(wire: WireHistory, labelOf: (wire: string) => string): void {
  const { startC, peakC, currents, limits, marginK, stretch } = wire;
  const chosen = { kind: "wire", id: wire.wire } as const;
  showSum({
    name: `wire ${labelOf(wire.wire)}`,
    result: printQuantity(peakC, "C"),
    equation: `${printQuantity(startC, "C")} + ∫ (I² R(T) − heat given off) dt ÷ C`,
    inputs: [
      { text: printQuantity(currents[0]?.currentA ?? 0, "A"), from: "solved", goTo: chosen },
      ...(stretch === null ? [] : [{ text: `worst in ${stretch}`, from: "route", goTo: chosen }]),
    ],
    note: `limit ${printQuantity(limits.shortC, "C")} for seconds (published), ${printQuantity(limits.longC, "C")} for hours (remembered); fuse at its latest; neighbours as warm as before`,
    usedText: `${printQuantity(marginK, "K")} left`,
    usedRatio: (peakC - startC) / Math.max(1, peakC - startC + marginK),
  });
}
