import type { Job } from "../job/index.ts";
import type { Conductors } from "../route/index.ts";
import { addedS, type LoadChange, withLedLamps } from "./changedLoads.ts";
import { type Balance, chargeBalance } from "./chargeBalance.ts";
import { chargeVolts } from "./chargeVolts.ts";
import { type CoilsLeftOn, coilsLeftOn } from "./coilsLeftOn.ts";
import { type Cranking, cranking } from "./cranking.ts";
import type { NoCranking } from "./crankingState.ts";
import { type DemandSum, demandSum } from "./demandList.ts";
import { type Excitation, excitation } from "./excitation.ts";
import { type LampFall, lampFall } from "./lampFall.ts";
import { type LampReality, lampReality } from "./lampReality.ts";
import { type CoilBalance, lightingCoils } from "./lightingCoils.ts";
import { RIDES, type RideName, type RideStep, rideSteps, stateFor } from "./rideSteps.ts";
import { type Ride, simulateRide } from "./simulateRide.ts";
import { type SourceHeat, sourceHeat } from "./sourceHeat.ts";
import { type Standing, standingStates } from "./standing.ts";
import { type SupplyFigureRow, supplyFigures } from "./supplyFigures.ts";
import { type SupplyModel, type SupplyOptions, supplyModel } from "./supplyModel.ts";
import { type SupplySourceRow, supplySourceRows } from "./supplySourceRows.ts";
import { type WithoutBattery, withoutBattery } from "./withoutBattery.ts";

/** What is asked beside the machine itself. */
export interface SupplyRequest extends SupplyOptions {
  readonly changes?: readonly LoadChange[];
  /** Volts at the posts the balance is struck at; absent: the table's. */
  readonly atV?: number;
  /** Charge at the start of a ride, 0 to 1; absent: three quarters. */
  readonly startRatio?: number;
  /** The rider's own ride, made by `readTrace`. */
  readonly trace?: readonly RideStep[];
}

export interface NamedRide extends Ride {
  readonly ride: RideName | "trace";
}

/**
 * Everything `copperwright supply` answers, as plain data. What a screen draws of it:
 *
 *   amps against speed       balances[]: curve (speedRpm, availableA) against the level demandA, bandRatio about it; balanceRpm and its band
 *   volts against speed      balances[].rows: settledV, batteryA; lamps[].rows: v, powerW, lightLowRatio, lightHighRatio, lifeRatio
 *   charge over the ride     rides[].rows: timeS, chargePercent, v, sourceA, demandA, batteryA
 *   volts to the headlamp    lampFall.fall: a step each, side battery, live, load, earth; but for the battery's, their dropV add up to postsV
 *                            (`placeNames` of the scenes' door calls each step's `of` as the papers do)
 *   cranking waterfall       cranking.rows[].fall, one a temperature and kind of starter: postsV, motorV, coilV
 *   left standing            standing[]: currentA, toHalfS, toEmptyS, toNoStartS
 *   heat                     heat[].rows: windingW, unitW, zenerW
 */
export interface SupplyAnswer {
  readonly nominalV: number;
  readonly earthPolarity: Job["supply"]["earthPolarity"];
  readonly ambientC: number;
  readonly atV: number;
  readonly duties: SupplyModel["duties"];
  readonly sources: readonly SupplySourceRow[];
  readonly balances: readonly Balance[];
  /** The same demand added up load by load at the posts, without what the wires lose. */
  readonly demands: readonly DemandSum[];
  readonly rides: readonly NamedRide[];
  readonly noRides: string | null;
  readonly cranking: Cranking | null;
  readonly noCranking: NoCranking | null;
  readonly standing: readonly Standing[];
  readonly coilsLeftOn: CoilsLeftOn | null;
  readonly excitation: Excitation | null;
  readonly heat: readonly SourceHeat[];
  readonly withoutBattery: WithoutBattery;
  readonly lightingCoils: readonly CoilBalance[];
  readonly lamps: readonly LampReality[];
  readonly lampFall: LampFall | null;
  /** Every table figure the answer rests on, those only remembered first. */
  readonly figures: readonly SupplyFigureRow[];
}

const START_RATIO = 0.75;

/** The machine with the changes somebody thinks about. */
export function changedModel(
  job: Job,
  conductors: Conductors,
  request: SupplyRequest,
): SupplyModel {
  const changes = request.changes ?? [];
  const model = supplyModel(withLedLamps(job, changes), conductors, request);
  const extraS = addedS(changes, job.supply.nominalV);
  const states = model.states.map((state) => {
    const currentA = state.demand.currentA.map((drawnA, k) => drawnA + extraS * state.demand.v[k]!);
    return { ...state, demand: { ...state.demand, currentA } };
  });
  return { ...model, states };
}

/** Will it charge, will it start, will it last. */
export function supplyAnswer(
  job: Job,
  conductors: Conductors,
  request: SupplyRequest = {},
): SupplyAnswer {
  const model = changedModel(job, conductors, request);
  const crank = cranking(model);
  const standing = standingStates(model);
  const lit = model.states.length === 0 ? null : stateFor(model.states, "lit");
  const rides = ridesOf(model, request, standing[0]?.currentA ?? 0);
  return {
    nominalV: job.supply.nominalV,
    earthPolarity: job.supply.earthPolarity,
    ambientC: model.ambientC,
    atV: request.atV ?? chargeVolts(job),
    duties: model.duties,
    sources: supplySourceRows(model),
    balances: model.states.map((state) => chargeBalance(model, state, request.atV)),
    demands: model.states.map((state) => demandSum(model, state, request.atV ?? chargeVolts(job))),
    ...rides,
    cranking: typeof crank === "string" ? null : crank,
    noCranking: typeof crank === "string" ? crank : null,
    standing,
    coilsLeftOn: coilsLeftOn(model),
    excitation: excitation(model),
    heat: lit === null ? [] : sourceHeat(model, lit),
    withoutBattery: withoutBattery(model),
    lightingCoils: lightingCoils(model),
    lamps: model.states.flatMap((state) => lampReality(model, state)),
    lampFall: lampFall(model),
    figures: supplyFigures(model),
  };
}

function ridesOf(
  model: SupplyModel,
  { trace, startRatio = START_RATIO }: SupplyRequest,
  parkedA: number,
): Pick<SupplyAnswer, "rides" | "noRides"> {
  const { battery } = model;
  if (battery === null) return { rides: [], noRides: "there is no battery to charge" };
  const run = (ride: NamedRide["ride"], steps: readonly RideStep[]): NamedRide => ({
    ride,
    ...simulateRide(model, battery, steps, { startRatio, parkedA }),
  });
  if (trace !== undefined) return { rides: [run("trace", trace)], noRides: null };
  const rides = RIDES.flatMap((ride) => {
    const steps = rideSteps(model, ride);
    return steps === null ? [] : [run(ride, steps)];
  });
  const noRides =
    rides.length > 0 ? null : "the output of its generator is not known at two speeds";
  return { rides, noRides };
}
