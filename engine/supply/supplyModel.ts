import type { Job } from "../job/index.ts";
import { type CompiledJob, compileJob, conditionsOf } from "../operate/index.ts";
import type { Conductors } from "../route/index.ts";
import { averagedJob } from "./averagedJob.ts";
import { type ChargedBattery, chargedBattery } from "./batteryCharge.ts";
import { type ChargingSource, chargingSources } from "./chargingSource.ts";
import { closedBoxes } from "./closedBoxes.ts";
import { type DemandCurve, demandCurve } from "./demandCurve.ts";
import { type Duties, tableDuties } from "./duties.ts";
import type { DutySwitches } from "./dutySwitches.ts";
import { type LightingState, lightingStates } from "./lightingStates.ts";

/** What differs from the plain question. */
export interface SupplyOptions {
  readonly ambientC?: number;
  readonly lampExponent?: number;
  readonly aged?: boolean;
  readonly duties?: Partial<Duties>;
}

/** A lighting state with what it draws and what feeds it, both seen from the battery posts. */
export interface ModelState extends LightingState {
  readonly demand: DemandCurve;
  readonly sources: readonly ChargingSource[];
}

/** A machine as the supply questions see it: solved once as a network, then a few curves. */
export interface SupplyModel {
  readonly job: Job;
  readonly conductors: Conductors;
  readonly options: SupplyOptions;
  readonly ambientC: number;
  readonly duties: Duties;
  readonly duty: DutySwitches;
  /** The job as it is, and with part-time loads at their means. */
  readonly compiled: CompiledJob;
  readonly averaged: CompiledJob;
  readonly states: readonly ModelState[];
  readonly battery: ChargedBattery | null;
}

/**
 * Lays a machine out for supply questions. Every lighting state is solved as the whole network with the loads at their means;
 * a source is the ellipse of its two points behind the resistance of the way to the posts.
 */
export function supplyModel(
  asGiven: Job,
  conductors: Conductors,
  options: SupplyOptions = {},
): SupplyModel {
  const job = closedBoxes(asGiven);
  const conditions = conditionsOf(job, options);
  const { ambientC } = conditions;
  const compiled = compileJob(job, conductors, { conditions });
  const { states, duty } = lightingStates(compiled);
  const duties = { ...tableDuties(), ...options.duties };
  const mean = averagedJob(job, duty, duties);
  const averaged = compileJob(mean, conductors, { conditions });
  const setV = compiled.jobNetwork.sources.find((source) => source.setV !== null)?.setV ?? null;
  const held =
    setV === null
      ? averaged
      : compileJob(mean, conductors, {
          conditions: { ...conditions, battery: { emfV: setV, internalOhm: HELD_OHM } },
        });
  const modelled = states.flatMap((state): ModelState[] => {
    const positions = ridden(state, duty);
    const demand = demandCurve(averaged, { positions, flash: "on" });
    return demand === null ? [] : [{ ...state, demand, sources: chargingSources(held, positions) }];
  });
  const battery = chargedBattery(job, ambientC);
  return {
    job,
    conductors,
    options,
    ambientC,
    duties,
    duty,
    compiled,
    averaged,
    states: modelled,
    battery,
  };
}

/** Resistance of the battery the held volts are found with, Ω: it takes next to nothing wherever above or below they lie. */
const HELD_OHM = 1;

/** Positions with one brake switch on and the indicators to one side, as the averaged job draws them at their means. */
export function ridden(
  { positions }: LightingState,
  { stop, turn }: DutySwitches,
): Readonly<Record<string, string>> {
  const set = { ...positions };
  for (const { part, position } of stop.slice(0, 1)) set[part] = position;
  for (const { part, position } of turn.slice(0, 1)) set[part] = position;
  return set;
}
