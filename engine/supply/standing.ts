import { presentParts } from "../job/index.ts";
import { restPositions } from "../operate/index.ts";
import { figure } from "../tables/index.ts";
import type { ChargedBattery } from "./batteryCharge.ts";
import { batteryTimeS } from "./peukertTimeS.ts";
import { SECONDS_AN_HOUR } from "./secondsAnHour.ts";
import type { SupplyModel } from "./supplyModel.ts";
import { placedLoads, readingOf } from "./workingLoads.ts";

/** What one part takes. */
export interface DrainRow {
  readonly load: string;
  readonly name: string;
  readonly currentA: number;
  readonly powerW: number;
}

/** A machine left standing so: what it takes and how long the battery stands it. */
export interface Standing {
  readonly state: string;
  readonly name: string;
  readonly currentA: number;
  readonly drains: readonly DrainRow[];
  /** Full to empty and to half; null: nothing is drawn or there is no battery. */
  readonly toEmptyS: number | null;
  readonly toHalfS: number | null;
  /** Until the share of tables/batteryRules is used that a starter or a coil still forgives, self-discharge counted. */
  readonly toNoStartS: number | null;
}

const LEAST_A = 1e-6;
const SECONDS_A_MONTH = 30 * 24 * SECONDS_AN_HOUR;

/** Key off, and every named state somebody may walk away from: engine stopped, nothing held pressed. */
export function standingStates(model: SupplyModel): readonly Standing[] {
  const { job, battery } = model;
  const buttons = presentParts(job).flatMap((part) =>
    part.kind === "switch" && part.momentary === true ? [part.id] : [],
  );
  const rest = { id: "at-rest", name: "everything at rest", positions: {} };
  const left = job.states.filter(
    ({ engine, positions }) =>
      (engine?.mode ?? "stopped") === "stopped" &&
      !buttons.some((id) => positions[id] !== undefined),
  );
  const rows = [rest, ...left].map(({ id, name, positions }) =>
    standingIn(model, battery, { id, name, set: positions }),
  );
  return rows.filter((row, k) => rows.findIndex((one) => sameDrain(one, row)) === k);
}

const sameDrain = (a: Standing, b: Standing): boolean =>
  a.drains.map(({ load }) => load).join() === b.drains.map(({ load }) => load).join() &&
  Math.abs(a.currentA - b.currentA) < LEAST_A;

/**
 * The state as `operate` solves it, from a full battery: emf behind its resistance.
 */
export function standingIn(
  { job, compiled }: SupplyModel,
  battery: ChargedBattery | null,
  state: {
    readonly id: string;
    readonly name: string;
    readonly set: Readonly<Record<string, string>>;
  },
): Standing {
  const positions = { ...restPositions(job, "stopped"), ...state.set };
  const solution = compiled.solve({ positions });
  const drains = placedLoads(compiled)
    .map(({ load, place }): DrainRow => {
      const { currentA, powerW } = readingOf(compiled, solution, place);
      return { load: load.ref, name: load.part.name, currentA: Math.abs(currentA), powerW };
    })
    .filter(({ currentA }) => currentA > LEAST_A)
    .sort((a, b) => b.currentA - a.currentA || (a.load < b.load ? -1 : 1));
  const emf = compiled.jobNetwork.elements.findIndex(({ kind }) => kind === "emf");
  const currentA = emf < 0 ? 0 : Math.max(0, -solution.elementA[emf]!);
  const draws = battery !== null && currentA > LEAST_A;
  const emptyS = draws ? batteryTimeS(battery, currentA) : null;
  return {
    state: state.id,
    name: state.name,
    currentA: currentA > LEAST_A ? currentA : 0,
    drains,
    toEmptyS: emptyS,
    toHalfS: emptyS === null ? null : emptyS / 2,
    toNoStartS: battery === null ? null : noStartS(battery, emptyS),
  };
}

/** Drain and self-discharge together: rates add. */
function noStartS({ chemistry }: ChargedBattery, emptyS: number | null): number | null {
  const usedRatio = figure("batteryRules", "drain-share", "value").value;
  const selfRatio = figure("batteryRules", "self-discharge-month", "value").value;
  const selfPerS = chemistry === "flooded" ? selfRatio / SECONDS_A_MONTH : 0;
  const rate = selfPerS + (emptyS === null ? 0 : 1 / emptyS);
  return rate > 0 ? usedRatio / rate : null;
}
