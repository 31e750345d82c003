import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { useTry } from "./tryStore.ts";
import type { SidePicture } from "./worker/trySide.ts";
import type { Shown } from "./worker/tryState.ts";
import type { RunView } from "./worker/tryView.ts";

/** The figure chosen for a run; null where it is too little to be worth a word. */
export function runText(run: RunView, shows: Shown): string | null {
  const { currentA, dropV, temperatureC } = run;
  if (shows === "current") return currentA < 0.05 ? null : printQuantity(currentA, "A");
  if (shows === "drop") return dropV === null || dropV < 0.01 ? null : printQuantity(dropV, "V");
  return temperatureC === null ? null : printQuantity(temperatureC, "C");
}

export function runSize({ currentA, dropV, temperatureC }: RunView, shows: Shown): number {
  if (shows === "current") return currentA;
  return shows === "drop" ? (dropV ?? 0) : (temperatureC ?? 0);
}

const APART_MM = 13;

/** What the most loaded wire of each run carries, written on the run: the largest first, none over another. */
export function RunValues({
  runs,
  side,
}: {
  runs: readonly RunView[];
  side: SidePicture;
}): ReactNode {
  const shows = useTry((bench) => bench.shows);
  const at = new Map(side.stations.map((station) => [station.id, station]));
  const placed: { readonly run: RunView; readonly x: number; readonly y: number }[] = [];
  for (const run of [...runs].sort((a, b) => runSize(b, shows) - runSize(a, shows))) {
    const place = side.runs.find(({ id }) => id === run.run);
    const [from, to] = [at.get(place?.from ?? ""), at.get(place?.to ?? "")];
    if (from === undefined || to === undefined || runText(run, shows) === null) continue;
    const [x, y] = [(from.xMm + to.xMm) / 2, (from.yMm + to.yMm) / 2];
    if (placed.some((one) => Math.hypot((one.x - x) * 0.7, (one.y - y) * 2) < APART_MM)) continue;
    placed.push({ run, x, y });
  }
  return (
    <g className="try-runs" pointerEvents="none">
      {placed.map(({ run, x, y }) => (
        <text key={run.run} x={x} y={y + 1.2} textAnchor="middle" className="try-run-value">
          {runText(run, shows)}
        </text>
      ))}
    </g>
  );
}
