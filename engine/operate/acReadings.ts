import type { RelaySettlement } from "../network/index.ts";
import type { BothSolutions, CompiledJob } from "./compileJob.ts";
import { type AcNet, currentNets } from "./currentNets.ts";
import { lawRow, lawsAsSolved } from "./elementRows.ts";
import { nodeLabel } from "./jobNodes.ts";
import type { ElementRow, NetRow, OperateState } from "./operateResult.ts";
import { type AcSolution, solveAcNet } from "./solveAcNet.ts";

/** One alternating net in a state. */
export interface NetReading {
  readonly net: AcNet;
  readonly row: NetRow;
  /** Solved in rms; null where not. */
  readonly ac: AcSolution | null;
  /** Current of each of its leads where only that is known (phases behind a rectifier), A rms. */
  readonly leadA: number | null;
}

export interface AcReadings {
  readonly nets: readonly NetReading[];
  readonly earthed: ReadonlySet<string>;
  /** False where a net that should have been solved was not. */
  readonly converged: boolean;
}

const PULSES = "its pulses are not computed";
/** Reason of every alternating net while the engine does not run. */
export const STANDING = "the engine does not run";

/** Every alternating net of a state that is already solved for direct current. */
export function acReadings(
  compiled: CompiledJob,
  state: OperateState,
  both: BothSolutions,
): AcReadings {
  const { jobNetwork } = compiled;
  const { names } = jobNetwork.nodes;
  const shorts = both.networkState.shorts.map(({ a, b }) => ({ from: names[a]!, to: names[b]! }));
  const { nets, earthed } = shorts.length === 0 ? compiled.nets : currentNets(jobNetwork, shorts);
  const readings = nets.map((net) => readNet(compiled, state, both, net));
  const converged = readings.every(
    ({ net, row }) => row.solved || net.use !== "lighting" || net.meetsDcThrough === null,
  );
  return { nets: readings, earthed, converged };
}

function readNet(
  compiled: CompiledJob,
  state: OperateState,
  both: BothSolutions,
  net: AcNet,
): NetReading {
  const answer = (
    solved: boolean,
    why: string | null,
    elements: readonly ElementRow[],
  ): NetRow => ({
    net: net.net,
    kind: "ac",
    pins: [...net.nodes].filter((name) => !name.endsWith("~")).sort(),
    from: `${net.generator}: ${net.use}`,
    solved,
    meetsDcThrough: net.meetsDcThrough,
    why,
    elements,
  });
  if (state.engine.mode !== "running") {
    return { net, row: answer(true, STANDING, []), ac: null, leadA: null };
  }
  if (net.use === "phase" || net.use === "charge") {
    const leadA = both.supplies.rows.find(({ part }) => part === net.generator)?.phaseA ?? null;
    const why = leadA === null ? "what it feeds is not known" : "known from its rectifier's output";
    return { net, row: answer(leadA !== null, why, []), ac: null, leadA };
  }
  if (net.use !== "lighting") return { net, row: answer(false, PULSES, []), ac: null, leadA: null };
  const laws = lawsAsSolved(compiled.jobNetwork, both.networkState, both.fromReleased.pulled);
  const { networkState } = both;
  const { speedRpm } = state.engine;
  const ac = solveAcNet({ compiled, net, laws, networkState, speedRpm });
  if (typeof ac === "string") return { net, row: answer(false, ac, []), ac: null, leadA: null };
  return { net, row: answer(true, null, acElementRows(compiled, net, ac)), ac, leadA: null };
}

/** Elements that end on the net, rms and unsigned; a source's power is negative. */
function acElementRows(
  { jobNetwork: { elements } }: CompiledJob,
  net: AcNet,
  { solution, laws }: AcSolution,
): readonly ElementRow[] {
  return elements.flatMap(({ id, kind, of, nodes, from, to, role }, k): ElementRow[] => {
    if (!net.nodes.has(from) && !net.nodes.has(to)) return [];
    const v = Math.abs(solution.nodeV[nodes[0]]! - solution.nodeV[nodes[1]]!);
    const currentA = Math.abs(solution.branchA[k]!);
    const sign = role.role === "acSource" ? -1 : 1;
    return [
      {
        id,
        kind,
        of,
        nodes: [nodeLabel(nodes[0]), nodeLabel(nodes[1])],
        law: lawRow(laws[k]!),
        currentA,
        powerW: sign * v * currentA,
      },
    ];
  });
}

/** Volts across and amperes through each element as the trade reads them: direct, or rms on an alternating net. */
export interface ElementReadings {
  readonly v: Float64Array;
  readonly currentA: Float64Array;
  /** Elements on an alternating net, with the reason where their net is not known. */
  readonly ac: ReadonlyMap<number, string | null>;
  /** Alternating amperes on earth shared with direct current, by element. */
  readonly sharedA: ReadonlyMap<number, number>;
}

/** Under this an alternating current on shared earth is not worth a word, A rms. */
const SHARED_LEAST_A = 1e-6;

export function elementReadings(
  { jobNetwork: { elements } }: CompiledJob,
  { solution }: RelaySettlement,
  { nets, earthed }: AcReadings,
): ElementReadings {
  const v = Float64Array.from(
    elements,
    ({ nodes: [a, b] }) => solution.nodeV[a]! - solution.nodeV[b]!,
  );
  const currentA = solution.branchA.slice(0, elements.length);
  const ac = new Map<number, string | null>();
  const sharedA = new Map<number, number>();
  for (const reading of nets) {
    if (reading.ac === null && reading.row.why === STANDING) continue;
    elements.forEach(({ kind, nodes: [a, b], from, to }, k) => {
      const isLead = reading.net.nodes.has(from) && reading.net.nodes.has(to);
      const touches = reading.net.nodes.has(from) || reading.net.nodes.has(to);
      if (touches) ac.set(k, reading.row.solved ? null : reading.row.why);
      if (reading.ac !== null) {
        const { nodeV, branchA } = reading.ac.solution;
        if (touches) {
          v[k] = Math.hypot(v[k]!, nodeV[a]! - nodeV[b]!);
          currentA[k] = Math.hypot(currentA[k]!, branchA[k]!);
        } else if (earthed.has(from) && earthed.has(to)) {
          const shared = Math.hypot(sharedA.get(k) ?? 0, branchA[k]!);
          if (shared > SHARED_LEAST_A) sharedA.set(k, shared);
        }
      } else if (reading.leadA !== null && isLead && (kind === "wire" || kind === "joint")) {
        currentA[k] = reading.leadA;
      }
    });
  }
  return { v, currentA, ac, sharedA };
}
