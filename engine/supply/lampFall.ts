import { chargeVolts } from "./chargeVolts.ts";
import { solveStiff } from "./demandCurve.ts";
import { type FallStep, fallOf } from "./fallOf.ts";
import type { SupplyModel } from "./supplyModel.ts";
import { placedLoads, readingOf } from "./workingLoads.ts";

/** Volts from the battery posts to the largest lamp and back. */
export interface LampFall {
  readonly lamp: string;
  readonly name: string;
  readonly state: string;
  readonly postsV: number;
  readonly v: number;
  /** Without the battery's own fall. */
  readonly fall: readonly FallStep[];
}

/** The largest filament the battery feeds, in the first state that lights it; null where it feeds none. */
export function lampFall({ job, compiled, states }: SupplyModel): LampFall | null {
  const lamps = placedLoads(compiled)
    .filter(({ load }) => load.kind === "filament" && !load.ac)
    .toSorted((a, b) => b.ratedW - a.ratedW);
  for (const { load, place } of lamps) {
    const state = states.find(({ working }) => working.includes(load.ref));
    if (state === undefined) continue;
    const postsV = chargeVolts(job);
    const solved = solveStiff(compiled, { positions: state.positions }, postsV);
    const fall = fallOf(compiled, solved, place).filter(({ side }) => side !== "battery");
    const v = Math.abs(readingOf(compiled, solved, place).v);
    return { lamp: load.ref, name: load.part.name, state: state.name, postsV, v, fall };
  }
  return null;
}
