import { batteryOf } from "../job/index.ts";
import { type Law, settleFrom } from "../network/index.ts";
import { type CompiledJob, compileJob, conditionsOf } from "../operate/index.ts";
import { figure } from "../tables/index.ts";
import { type CrankingState, crankingState, type NoCranking } from "./crankingState.ts";
import { type FallStep, fallOf } from "./fallOf.ts";
import { type FieldKind, loadedA, type MotorLine, motorLine, speedRatio } from "./motorLine.ts";
import { type CableSide, starterCables } from "./starterCables.ts";
import type { SupplyModel } from "./supplyModel.ts";
import { supplyRule } from "./supplyRule.ts";
import { placedLoads, readingOf } from "./workingLoads.ts";

/** The starter turning at one temperature. */
export interface CrankingRow {
  readonly ambientC: number;
  /** What the engine asks of torque, over a warm one. */
  readonly demandRatio: number;
  readonly field: FieldKind;
  readonly currentA: number;
  readonly motorV: number;
  /** At the battery posts. */
  readonly postsV: number;
  /** Across the ignition coil that gets least; null: none works in this state. */
  readonly coilV: number | null;
  /** Over a warm engine's; null where no stall is stated; 0: it does not turn. */
  readonly speedRatio: number | null;
  readonly turns: boolean;
  /** Posts at or above the least volts of tables/supplyRules. */
  readonly postsHold: boolean;
  /** From the battery's EMF round to its other pole, in order. */
  readonly fall: readonly FallStep[];
}

export interface Cranking {
  readonly motor: string;
  readonly state: string;
  readonly rows: readonly CrankingRow[];
  /** Live and earth side of its way, warm. */
  readonly cables: readonly CableSide[];
  /** What could not be answered and why. */
  readonly notes: readonly string[];
}

const WARM_C = 25;
const COLD_C = -10;

/**
 * Starter, cables, contacts and battery solved as the network they are, warm and at −10 °C. Cold, the battery has the share of its power
 * tables/batteryRules says and the engine asks for more torque; how current follows torque depends on the starter's field, which nobody
 * states, so both ways are given.
 */
export function cranking(model: SupplyModel): Cranking | NoCranking {
  const found = crankingState(model.compiled);
  if (typeof found === "string") return found;
  const line = motorLine(found.motor);
  const warm = crankAt(model, found, {
    ambientC: WARM_C,
    demandRatio: 1,
    field: "series",
    warm: null,
    line,
  });
  const cables = starterCables(warm.fall, model.conductors, model.job.supply.nominalV);
  const notes =
    line === null
      ? [
          "Its stall is not stated, so a cold engine cannot be answered for: give stall amps and volts.",
        ]
      : [];
  const cold =
    line === null
      ? []
      : (["series", "magnet"] as const).map((field) =>
          crankAt(model, found, {
            ambientC: COLD_C,
            demandRatio: engineDemandRatio(COLD_C),
            field,
            warm,
            line,
          }),
        );
  return { motor: found.motor.id, state: found.name, rows: [warm, ...cold], cables, notes };
}

interface Asked {
  readonly ambientC: number;
  readonly demandRatio: number;
  readonly field: FieldKind;
  readonly warm: CrankingRow | null;
  readonly line: MotorLine | null;
}

function crankAt(model: SupplyModel, found: CrankingState, asked: Asked): CrankingRow {
  const { job, conductors, options } = model;
  const conditions = { ...conditionsOf(job, options), ambientC: asked.ambientC };
  const compiled = compileJob(job, conductors, { conditions });
  const runOhm = found.motor.runOhm.value;
  let solved = solveWith(compiled, found, runOhm);
  let stalls = false;
  if (asked.warm !== null && asked.line !== null) {
    const wantedA = loadedA(asked.warm.currentA, asked.demandRatio, asked.field);
    // Everything but the motor is close to an EMF behind a resistance: two solves tell it.
    const other = solveWith(compiled, found, 2 * runOhm);
    const behindOhm = (other.motorV - solved.motorV) / (solved.currentA - other.currentA);
    const emfV = solved.motorV + behindOhm * solved.currentA;
    const stallA = emfV / (behindOhm + asked.line.windingOhm);
    stalls = wantedA >= stallA;
    const currentA = Math.min(wantedA, stallA);
    solved = solveWith(compiled, found, (emfV - behindOhm * currentA) / currentA);
  }
  const turning =
    asked.line === null
      ? null
      : stalls
        ? 0
        : speedRatio(
            asked.line,
            { v: (asked.warm ?? solved).motorV, currentA: (asked.warm ?? solved).currentA },
            { v: solved.motorV, currentA: solved.currentA },
            asked.field,
          );
  const leastV = (supplyRule("crank-least") * job.supply.nominalV) / TABLE_V;
  return {
    ambientC: asked.ambientC,
    demandRatio: asked.demandRatio,
    field: asked.field,
    ...solved,
    speedRatio: turning,
    turns: turning === null || turning > 0,
    postsHold: solved.postsV >= leastV,
  };
}

const TABLE_V = 12;

function solveWith(compiled: CompiledJob, { place, state }: CrankingState, motorOhm: number) {
  const set = compiled.networkState(state);
  const law: Law = { kind: "ohm", ohm: motorOhm };
  const overrides = [...set.overrides, { branchIndex: place, law }];
  const start = set.relays.map((relay) => relay.held);
  const { solution } = settleFrom(compiled.compiledNetwork, set.relays, start, {
    overrides,
    shorts: set.shorts,
  });
  const answer = { nodeV: solution.nodeV, elementA: solution.branchA };
  const { v, currentA } = readingOf(compiled, answer, place);
  const posts = batteryOf(compiled.job)!;
  const at = (ref: string): number => answer.nodeV[compiled.jobNetwork.nodes.indexOf.get(ref)!]!;
  const coils = placedLoads(compiled)
    .filter(({ load }) => load.part.kind === "coil")
    .map((coil) => readingOf(compiled, answer, coil.place))
    .filter((reading) => Math.abs(reading.currentA) > LEAST_A);
  return {
    currentA: Math.abs(currentA),
    motorV: Math.abs(v),
    postsV: Math.abs(at(posts.livePost) - at(posts.earthedPost)),
    coilV: coils.length === 0 ? null : Math.min(...coils.map((one) => Math.abs(one.v))),
    fall: fallOf(compiled, answer, place),
  };
}

const LEAST_A = 0.05;

/** What an engine asks of its starter over what it asks at 27 °C, on straight lines through the table; beyond it the nearest row. */
export function engineDemandRatio(ambientC: number): number {
  const points = [-29, -18, 0, 27].map(
    (rowC) => [rowC, figure("batteryRules", `engine-demand-${rowC}`, "value").value] as const,
  );
  const above = points.findIndex(([rowC]) => rowC >= ambientC);
  if (above === 0) return points[0]![1];
  if (above < 0) return points.at(-1)![1];
  const [toC, to] = points[above]!;
  const [fromC, from] = points[above - 1]!;
  return from + ((to - from) * (ambientC - fromC)) / (toC - fromC);
}
