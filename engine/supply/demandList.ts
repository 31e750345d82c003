import { loadsOf } from "../job/index.ts";
import { lampAnchor } from "../operate/index.ts";
import { figure } from "../tables/index.ts";
import { dutyOf } from "./averagedJob.ts";
import { solveStiff } from "./demandCurve.ts";
import type { LightingState } from "./lightingStates.ts";
import { ridden, type SupplyModel } from "./supplyModel.ts";
import { placedLoads, workingRefs } from "./workingLoads.ts";

/** One load at the volts of the posts, no wire between. */
export interface DemandRow {
  readonly load: string;
  readonly name: string;
  readonly dutyRatio: number;
  /** While it draws, A. */
  readonly currentA: number;
  /** Its mean, A. */
  readonly meanA: number;
}

/** I = P/V, or P/Vn (V/Vn)^x. */
export function lampCurrentA(
  lamp: { readonly ratedV: number; readonly ratedW: number },
  v: number,
  lampExponent: number,
): number {
  return (lamp.ratedW / lamp.ratedV) * (v / lamp.ratedV) ** lampExponent;
}

/**
 * The balance a workshop does on paper: every load of a lighting state at the volts of the posts, times its share of the time. The
 * network's demand is smaller by what the wires lose.
 *
 * @param lampExponent  −1 constant watts (the balance of the trade), 1 a resistance, or the lamp law's.
 */
export function demandList(
  model: SupplyModel,
  state: LightingState,
  v: number,
  lampExponent: number,
): readonly DemandRow[] {
  const { job, averaged, duty, duties } = model;
  const positions = ridden(state, duty);
  const solved = solveStiff(averaged, { positions, flash: "on" }, job.supply.nominalV);
  const on = workingRefs(averaged, placedLoads(averaged), solved);
  return loadsOf(job).flatMap((load): DemandRow[] => {
    if (!on.has(load.ref) || load.ac) return [];
    const { part } = load;
    const pins = pinIds(part.id, load.pins);
    const dutyRatio = dutyOf(job, part, pins, duty, duties);
    const currentA =
      load.kind === "filament" && part.kind === "lamp"
        ? lampCurrentA(anchored(lampAnchor(part.filaments[load.index]!)), v, lampExponent)
        : v / (load.resistanceOhm ?? Number.POSITIVE_INFINITY);
    return [{ load: load.ref, name: part.name, dutyRatio, currentA, meanA: dutyRatio * currentA }];
  });
}

const anchored = ({ v, powerW }: { readonly v: number; readonly powerW: number }) => ({
  ratedV: v,
  ratedW: powerW,
});

function pinIds(part: string, [a, b]: readonly [string, string]): readonly [string, string] {
  return [a.slice(part.length + 1), b.slice(part.length + 1)];
}

/** Demand of one lighting state by three ways of taking a lamp. */
export interface DemandSum {
  readonly state: string;
  /** Lamps as constant watts: the trade's balance. */
  readonly constantWattsA: number;
  /** Lamps as fixed resistances. */
  readonly resistanceA: number;
  /** Lamps by the law of tables/lampLaws. */
  readonly lampLawA: number;
  readonly rows: readonly DemandRow[];
}

/** Sums of `demandList`; the rows are those of the lamp law. */
export function demandSum(model: SupplyModel, state: LightingState, v: number): DemandSum {
  const sumA = (rows: readonly DemandRow[]): number =>
    rows.reduce((sum, { meanA }) => sum + meanA, 0);
  const exponent =
    model.options.lampExponent ?? figure("lampLaws", "current-exponent", "value").value;
  const rows = demandList(model, state, v, exponent);
  return {
    state: state.id,
    constantWattsA: sumA(demandList(model, state, v, -1)),
    resistanceA: sumA(demandList(model, state, v, 1)),
    lampLawA: sumA(rows),
    rows,
  };
}
