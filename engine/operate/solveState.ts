import { batteriesOf, presentParts } from "../job/index.ts";
import { floatingNodes, type RelaySettlement } from "../network/index.ts";
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
  const lamps = lampRows(job, jobNetwork, settled.solution, state);
  return {
    state,
    reference: { pin: jobNetwork.nodes.names[0]! },
    converged: settled.converged && settled.settled && both.supplies.settled,
    iterationCount: settled.iterationCount,
    kclResidualA: settled.kclResidualA,
    relayRoundCount: settled.roundCount,
    supplyRoundCount: both.supplies.roundCount,
    pins: pinRows(compiled, settled),
    elements: elementRows(jobNetwork, both.networkState, settled),
    wires: wireRows(compiled, state, settled),
    lamps,
    loads: otherLoadRows(job, jobNetwork, settled.solution, state),
    relays: relayRows(jobNetwork.relays, settled),
    fuses: fuseRows(compiled, settled),
    batteries: batteryRows(compiled, settled),
    supplies: both.supplies.rows,
    nets: [],
    strayLit: lamps
      .filter(({ lit, expected }) => lit && expected === false)
      .map(({ part, filament }) => `${part}:${filament}`),
    whenHeld: whenHeld(compiled, state, both, lamps),
  };
}

/** Pins the job knows, by id; nodes inside parts and joints are no pins. */
function pinRows(compiled: CompiledJob, settled: RelaySettlement): readonly PinRow[] {
  const { names } = compiled.jobNetwork.nodes;
  const floating = new Set(floatingNodes(compiled.compiledNetwork, settled.solution));
  return names
    .map((pin, node) => ({
      pin,
      node: nodeLabel(node),
      net: "dc",
      v: floating.has(node) ? null : settled.solution.nodeV[node]!,
      floating: floating.has(node),
    }))
    .filter(({ pin }) => !pin.endsWith("~"))
    .sort((a, b) => (a.pin < b.pin ? -1 : 1));
}

function wireRows(
  { conductors, jobNetwork, elementOfConductor }: CompiledJob,
  state: OperateState,
  { solution }: RelaySettlement,
): readonly WireRow[] {
  return [...elementOfConductor]
    .map(([id, k]): WireRow => {
      const conductor = conductors.get(id)!;
      const { from, to, nodes } = jobNetwork.elements[k]!;
      const dropV = solution.nodeV[nodes[0]]! - solution.nodeV[nodes[1]]!;
      const currentA = solution.branchA[k]!;
      const ends = { wire: id, from, to, currentA, conductorC: state.conductorC };
      if (conductor.lengthMm === null) {
        return { ...ends, ohm: null, dropV: null, lossW: null, why: "length not known" };
      }
      const ohm = conductorOhm(conductor, state.conductorC) + (state.extraOhm[id] ?? 0);
      return { ...ends, ohm, dropV, lossW: dropV * currentA };
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

function fuseRows(
  { job, jobNetwork }: CompiledJob,
  { solution }: RelaySettlement,
): readonly FuseRow[] {
  const parts = new Map(presentParts(job).map((part) => [part.id, part]));
  return jobNetwork.elements.flatMap(({ kind, of }, k) => {
    const part = parts.get(of);
    if (kind !== "fuse" || part?.kind !== "fuse") return [];
    const currentA = solution.branchA[k]!;
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
  { job, jobNetwork }: CompiledJob,
  state: OperateState,
  { differ, fromPulled }: BothSolutions,
  lamps: OperateSolution["lamps"],
): OperateSolution["whenHeld"] {
  if (!differ) return null;
  const other = lampRows(job, jobNetwork, fromPulled.solution, state);
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
