import { batteriesOf, presentParts } from "../job/index.ts";
import { floatingNodes, type RelaySettlement } from "../network/index.ts";
import {
  type AcReadings,
  acReadings,
  type ElementReadings,
  elementReadings,
  STANDING,
} from "./acReadings.ts";
import type { BothSolutions, CompiledJob } from "./compileJob.ts";
import { elementRows } from "./elementRows.ts";
import { fuseOpensS } from "./fuseBand.ts";
import { nodeLabel } from "./jobNodes.ts";
import { lampRows, otherLoadRows } from "./loadRows.ts";
import { conductorOhm } from "./loomElements.ts";
import type {
  FuseRow,
  OperateSolution,
  OperateState,
  PinRow,
  RelayRow,
  WireRow,
} from "./operateResult.ts";

/** One state solved and read in trade words, without what fuses do later. */
export type SolvedState = Omit<OperateSolution, "afterFuses" | "afterFusesByMin">;

export function solveState(compiled: CompiledJob, state: OperateState): SolvedState {
  const both = compiled.solveBoth(state);
  const settled = both.fromReleased;
  const { job, jobNetwork } = compiled;
  const ac = acReadings(compiled, state, both);
  const readings = elementReadings(compiled, settled, ac);
  const lamps = lampRows(job, jobNetwork, readings, state);
  return {
    state,
    reference: { pin: jobNetwork.nodes.names[0]! },
    converged: settled.converged && settled.settled && both.supplies.settled && ac.converged,
    iterationCount: settled.iterationCount,
    kclResidualA: settled.kclResidualA,
    relayRoundCount: settled.roundCount,
    supplyRoundCount: both.supplies.roundCount,
    pins: pinRows(compiled, settled, ac),
    elements: elementRows(jobNetwork, both.networkState, settled),
    wires: wireRows(compiled, state, readings),
    lamps,
    loads: otherLoadRows(job, jobNetwork, readings, state),
    relays: relayRows(jobNetwork.relays, settled),
    fuses: fuseRows(compiled, readings),
    batteries: batteryRows(compiled, settled),
    supplies: both.supplies.rows,
    nets: ac.nets.map(({ row }) => row),
    strayLit: lamps
      .filter(({ lit, expected }) => lit && expected === false)
      .map(({ part, filament }) => `${part}:${filament}`),
    whenHeld: whenHeld(compiled, state, both, ac, lamps),
  };
}

/** Pins the job knows, by id; nodes inside parts and joints are no pins. */
function pinRows(
  compiled: CompiledJob,
  settled: RelaySettlement,
  { nets }: AcReadings,
): readonly PinRow[] {
  const { names } = compiled.jobNetwork.nodes;
  const floating = new Set(floatingNodes(compiled.compiledNetwork, settled.solution));
  return names
    .map((pin, node): PinRow => {
      const on = nets.find(({ net }) => net.nodes.has(pin));
      const isFloating = floating.has(node);
      const place = { pin, node: nodeLabel(node), net: on?.net.net ?? "dc" };
      if (on === undefined || on.row.why === STANDING) {
        const v = isFloating ? null : settled.solution.nodeV[node]!;
        return { ...place, v, floating: isFloating };
      }
      const acV = on.ac === null ? null : Math.abs(on.ac.solution.nodeV[node]!);
      return { ...place, v: acV, floating: false };
    })
    .filter(({ pin }) => !pin.endsWith("~"))
    .sort((a, b) => (a.pin < b.pin ? -1 : 1));
}

function wireRows(
  { conductors, jobNetwork, elementOfConductor }: CompiledJob,
  state: OperateState,
  readings: ElementReadings,
): readonly WireRow[] {
  return [...elementOfConductor]
    .map(([id, k]): WireRow => {
      const conductor = conductors.get(id)!;
      const { from, to } = jobNetwork.elements[k]!;
      const currentA = readings.currentA[k]!;
      const acA = readings.sharedA.get(k);
      const netWhy = readings.ac.get(k);
      const row = {
        wire: id,
        from,
        to,
        currentA,
        conductorC: state.conductorC,
        ...(netWhy !== undefined && { kind: "ac" as const }),
        ...(acA !== undefined && { acA }),
      };
      const why = conductor.lengthMm === null ? "length not known" : netWhy;
      if (conductor.lengthMm === null) {
        return { ...row, ohm: null, dropV: null, lossW: null, why: why! };
      }
      const ohm = conductorOhm(conductor, state.conductorC) + (state.extraOhm[id] ?? 0);
      if (typeof why === "string") return { ...row, ohm, dropV: null, lossW: null, why };
      // On an ac net only the current is known of a phase lead; its drop follows from it.
      const dropV = netWhy === undefined ? readings.v[k]! : currentA * ohm;
      return { ...row, ohm, dropV, lossW: dropV * currentA };
    })
    .sort((a, b) => (a.wire < b.wire ? -1 : 1));
}

function relayRows(
  relays: CompiledJob["jobNetwork"]["relays"],
  { coilV, pulled, buzzing }: RelaySettlement,
): readonly RelayRow[] {
  return relays.map(({ id, pullInV, dropOutV }, k) => ({
    part: id,
    coilV: coilV[k]!,
    pullInV,
    dropOutV,
    pulled: pulled[k]!,
    buzzing: buzzing.includes(id),
  }));
}

function fuseRows({ job, jobNetwork }: CompiledJob, readings: ElementReadings): readonly FuseRow[] {
  const parts = new Map(presentParts(job).map((part) => [part.id, part]));
  return jobNetwork.elements.flatMap(({ kind, of }, k) => {
    const part = parts.get(of);
    if (kind !== "fuse" || part?.kind !== "fuse") return [];
    const currentA = readings.currentA[k]!;
    const { minS, maxS } = fuseOpensS(part, currentA);
    return [{ part: of, currentA, ratingA: part.ratingA, opensMinS: minS, opensMaxS: maxS }];
  });
}

function batteryRows({ job, jobNetwork }: CompiledJob, { solution }: RelaySettlement) {
  const { elements } = jobNetwork;
  return batteriesOf(job).flatMap(({ battery }) => {
    const k = elements.findIndex(
      ({ kind, of }) => kind === "emf" && of.startsWith(`${battery.id}:`),
    );
    if (k < 0) return [];
    const [positive, negative] = elements[k]!.nodes;
    return [
      {
        part: battery.id,
        currentA: -solution.branchA[k]!,
        terminalV: solution.nodeV[positive]! - solution.nodeV[negative]!,
      },
    ];
  });
}

function whenHeld(
  compiled: CompiledJob,
  state: OperateState,
  { differ, fromPulled }: BothSolutions,
  ac: AcReadings,
  lamps: OperateSolution["lamps"],
): OperateSolution["whenHeld"] {
  if (!differ) return null;
  const { job, jobNetwork } = compiled;
  const other = lampRows(job, jobNetwork, elementReadings(compiled, fromPulled, ac), state);
  const changed = (isLit: boolean): readonly string[] =>
    other
      .filter((row, k) => row.lit === isLit && lamps[k]!.lit !== isLit)
      .map(({ part, filament }) => `${part}:${filament}`);
  return {
    pulled: jobNetwork.relays.filter((_, k) => fromPulled.pulled[k]).map(({ id }) => id),
    lit: changed(true),
    dead: changed(false),
  };
}
