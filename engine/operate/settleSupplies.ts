import type { BranchOverride, CurveLaw, Law, RelaySettlement } from "../network/index.ts";
import { figure } from "../tables/index.ts";
import { exciterCurve, isBeyondKnee } from "./exciterCurve.ts";
import { openCircuitV } from "./generatorLine.ts";
import { OPEN } from "./jobElement.ts";
import type { SupplyRow } from "./operateResult.ts";
import type { PlacedSource } from "./placedSources.ts";
import { RUNNING_RPM } from "./readState.ts";
import { regulatedCurve } from "./regulatedCurve.ts";
import type { NetworkState, QuickState } from "./stateOverrides.ts";
import { supplyRow } from "./supplyRow.ts";

/** How the sources that are controlled from elsewhere came to rest. */
export interface SuppliesSettled {
  readonly settled: boolean;
  readonly roundCount: number;
  readonly rows: readonly SupplyRow[];
}

const MOST_ROUNDS = 60;
/** A sensed voltage has come to rest when a round moves it by less, V. */
const AT_REST_V = 1e-7;
/** So has a field current that moves by less, A. */
const AT_REST_A = 1e-7;

/** What is controlled from elsewhere, one source. */
export interface Control {
  /** Volts at its own output at which it stops giving; null: unregulated. */
  readonly setV: number | null;
  readonly cutOutClosed: boolean;
  /** Volts it feeds its field with; null: not excited. */
  readonly exciterV: number | null;
  /** It gives all the machine can: the resistance before the field is not what limits it. */
  readonly isExciterLimited: boolean;
  /** Null until it is known whether its field was fed. */
  readonly started: boolean | null;
  /** A dynamo's own field, A: it makes this on top of the output its points state. */
  readonly fieldA: number;
}

interface Question {
  readonly sources: readonly PlacedSource[];
  /** What the sources are with the engine still (see `stillSupplies`). */
  readonly still: readonly BranchOverride[];
  readonly state: QuickState;
  readonly set: NetworkState;
  /** Solves the state, relays settled, under overrides. */
  readonly once: (
    overrides: readonly BranchOverride[],
    initialV: Float64Array | null,
  ) => RelaySettlement;
}

interface Answer {
  readonly settlement: RelaySettlement;
  readonly overrides: readonly BranchOverride[];
  readonly supplies: SuppliesSettled;
}

/**
 * Solves a state with its charging sources: each is a curve at its speed; what a sense wire, a cut-out or a field does to it is
 * changed between solves until nothing moves. A cut-out that opens stays open, so the rounds cannot chase each other.
 */
export function settleSupplies({ sources, still, state, set, once }: Question): Answer {
  const speedRpm = state.engine?.mode === "running" ? (state.engine.speedRpm ?? RUNNING_RPM) : 0;
  if (speedRpm === 0) {
    // Nothing that stands still moves a control: one round is all.
    const overrides = [...set.overrides, ...still];
    const settlement = once(overrides, null);
    const rows = sources.map((placed) =>
      supplyRow(placed, firstControl(placed, 0, false), 0, settlement),
    );
    return { settlement, overrides, supplies: { settled: true, roundCount: 1, rows } };
  }
  const excited = state.excited ?? false;
  let controls = sources.map((placed) => firstControl(placed, speedRpm, excited));
  let initialV: Float64Array | null = null;
  for (let roundCount = 1; ; roundCount++) {
    const laws = new Map<number, Law>();
    sources.forEach((placed, s) => {
      writeLaws(placed, controls[s]!, speedRpm, laws);
    });
    const overrides = [
      ...set.overrides,
      ...[...laws].map(([branchIndex, law]) => ({ branchIndex, law })),
    ];
    const settlement = once(overrides, initialV);
    const next = sources.map((placed, s) =>
      nextControl(placed, controls[s]!, speedRpm, settlement),
    );
    const settled = next.every((control, s) => atRest(control, controls[s]!));
    if (settled || roundCount === MOST_ROUNDS || !settlement.converged) {
      const rows = sources.map((placed, s) =>
        supplyRow(placed, controls[s]!, speedRpm, settlement),
      );
      return { settlement, overrides, supplies: { settled, roundCount, rows } };
    }
    controls = next;
    initialV = settlement.solution.nodeV;
  }
}

/** The laws of sources that stand still. */
export function stillSupplies(sources: readonly PlacedSource[]): readonly BranchOverride[] {
  const laws = new Map<number, Law>();
  for (const placed of sources) writeLaws(placed, firstControl(placed, 0, false), 0, laws);
  return [...laws].map(([branchIndex, law]) => ({ branchIndex, law }));
}

function firstControl(
  { source, line, exciter }: PlacedSource,
  speedRpm: number,
  excited: boolean,
): Control {
  const idleV = line === null ? 0 : openCircuitV(line, speedRpm);
  const offeredV = Math.min(idleV, source.setV ?? idleV);
  const turns = line !== null && speedRpm > 0;
  return {
    setV: source.setV,
    cutOutClosed: turns && source.cutInV !== null && offeredV >= source.cutInV,
    exciterV: turns && excited && exciter >= 0 ? offeredV : null,
    isExciterLimited: false,
    started: turns ? (exciter < 0 || excited ? true : null) : false,
    fieldA: 0,
  };
}

function writeLaws(
  { line, output, exciter, cutOut }: PlacedSource,
  control: Control,
  speedRpm: number,
  laws: Map<number, Law>,
): void {
  const curve =
    line === null || control.started !== true ? null : regulatedCurve(line, speedRpm, control.setV);
  if (curve !== null) laws.set(output, shifted(curve, control.fieldA));
  if (cutOut >= 0 && !control.cutOutClosed) laws.set(cutOut, OPEN);
  if (exciter >= 0 && control.exciterV !== null && line !== null) {
    const { exciterV: emfV, isExciterLimited: isLimited } = control;
    laws.set(exciter, exciterCurve({ line, speedRpm, emfV }, isLimited));
  }
}

/** The curve of a source that gives some amperes more at any volts. */
function shifted({ kind, points }: CurveLaw, moreA: number): CurveLaw {
  return moreA === 0
    ? { kind, points }
    : { kind, points: points.map(([v, currentA]) => [v, currentA - moreA] as const) };
}

function nextControl(
  placed: PlacedSource,
  control: Control,
  speedRpm: number,
  { solution: { nodeV, branchA } }: RelaySettlement,
): Control {
  if (control.started === false) return control;
  const { source, positive, negative, sense, cutOut, exciter } = placed;
  const outputV = nodeV[positive]! - nodeV[negative]!;
  if (control.started === null) {
    const fieldA = placed.fieldWinding < 0 ? null : Math.abs(branchA[placed.fieldWinding]!);
    const leastA = figure("elementRules", "field-start", "value").value;
    const started = fieldA === null || fieldA >= leastA;
    return { ...control, started, exciterV: started ? (source.setV ?? outputV) : null };
  }
  const cutOutA = cutOut < 0 ? 0 : branchA[cutOut]!;
  return {
    started: true,
    setV:
      source.setV === null || sense === null ? control.setV : sensedSetV(placed, control, nodeV),
    // Reverse current opens it; it does not close again in the same state.
    cutOutClosed: control.cutOutClosed && cutOutA > 0,
    exciterV: exciter < 0 ? null : outputV,
    isExciterLimited: isLimitedNow(placed, control, speedRpm, branchA),
    fieldA: dynamoFieldA(placed, branchA),
  };
}

function isLimitedNow(
  { line, exciter }: PlacedSource,
  { exciterV: emfV, isExciterLimited }: Control,
  speedRpm: number,
  branchA: Float64Array,
): boolean {
  if (exciter < 0 || emfV === null || line === null) return false;
  return isBeyondKnee({ line, speedRpm, emfV }, -branchA[exciter]!, isExciterLimited);
}

/**
 * Output points of a dynamo are read beyond its control box, so what its own field takes is not in them; the network has the field as a
 * winding all the same, fed from the terminal.
 */
function dynamoFieldA({ cutOut, fieldWinding }: PlacedSource, branchA: Float64Array): number {
  return cutOut < 0 || fieldWinding < 0 ? 0 : Math.abs(branchA[fieldWinding]!);
}

/**
 * Output volts at which the sensed place stands at the set volts, as the drops are now. A unit that senses what the exciter
 * feeds is compared with the exciter's volts of the same round, or the two would chase each other.
 */
function sensedSetV(placed: PlacedSource, control: Control, nodeV: Float64Array): number {
  const { source, positive, negative, sense } = placed;
  const fedV = source.sensesExciter ? control.exciterV : null;
  const outputV = fedV ?? nodeV[positive]! - nodeV[negative]!;
  // The sensed node stands for the live terminal: it is measured against the earthed one, whichever sign that has.
  const earthedV = nodeV[isPositiveLive(placed, nodeV) ? negative : positive]!;
  const sensedV = Math.abs(nodeV[sense!]! - earthedV);
  return source.setV! + outputV - sensedV;
}

/** Which terminal is live: the one further from the reference. */
function isPositiveLive({ positive, negative }: PlacedSource, nodeV: Float64Array): boolean {
  return Math.abs(nodeV[positive]!) >= Math.abs(nodeV[negative]!);
}

function atRest(next: Control, before: Control): boolean {
  const near = (one: number | null, other: number | null): boolean =>
    one === other || (one !== null && other !== null && Math.abs(one - other) <= AT_REST_V);
  return (
    next.started === before.started &&
    next.cutOutClosed === before.cutOutClosed &&
    next.isExciterLimited === before.isExciterLimited &&
    near(next.setV, before.setV) &&
    Math.abs(next.fieldA - before.fieldA) <= AT_REST_A &&
    near(next.exciterV, before.exciterV)
  );
}
