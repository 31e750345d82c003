import { type CurveLaw, type Law, type Solution, solveNetwork } from "../network/index.ts";
import type { CompiledJob } from "./compileJob.ts";
import type { AcNet } from "./currentNets.ts";
import { fitGeneratorLine, type GeneratorLine, shortedCurrentA } from "./generatorLine.ts";
import { OPEN } from "./jobElement.ts";
import { kneeV, regulatedCurve } from "./regulatedCurve.ts";
import type { NetworkState } from "./stateOverrides.ts";
import type { Generator } from "./supplySources.ts";

/** A lighting net solved in rms: volts and amperes of the whole network with this one source, signs without meaning. */
export interface AcSolution {
  readonly solution: Solution;
  readonly laws: readonly Law[];
}

interface AcQuestion {
  readonly compiled: CompiledJob;
  readonly net: AcNet;
  /** Laws of all elements as the direct-current solution left them. */
  readonly laws: readonly Law[];
  readonly networkState: NetworkState;
  readonly speedRpm: number;
}

/** What an ac clamp draws per volt below its set volts, S. */
const CLAMP_IDLE_S = 1e-6;

/**
 * One lighting coil in rms: E² = (V + R I)² + (X I)² into resistances, an ac shunt regulator taking what would raise its pin
 * above the set volts. All of it is in phase, because the loads are resistances. The battery is its internal resistance,
 * diodes do not conduct, contacts and relays stand as they do for direct current.
 *
 * @returns the reason in words where the coil's line is not known or the net cannot be solved apart.
 */
export function solveAcNet(question: AcQuestion): AcSolution | string {
  const { compiled, net, networkState, speedRpm } = question;
  if (net.meetsDcThrough !== null) return "it meets the battery's live side";
  const { elements, context } = compiled.jobNetwork;
  const source = elements.findIndex(
    ({ role, from }) => role.role === "acSource" && net.leads.includes(from),
  );
  const role = elements[source]?.role;
  if (role?.role !== "acSource") return "it has no lighting coil";
  const generator = context.parts.find((part) => part.id === role.generator) as Generator;
  const winding = generator.windings[role.windingIndex]!;
  const line = fitGeneratorLine(winding.points ?? [], {
    windingOhm: winding.ohm?.value ?? 0,
    diodeV: 0,
  });
  if (line === null) return "the coil's output is not known at two speeds";
  const curve = regulatedCurve(line, speedRpm, null);
  if (curve === null) return "the coil gives nothing at this speed";
  const laws = alternatingLaws(question, line);
  laws[source] = curve;
  const overrides = laws.map((law, branchIndex) => ({ branchIndex, law }));
  const solution = solveNetwork(compiled.compiledNetwork, {
    overrides,
    shorts: networkState.shorts,
  });
  return solution.converged ? { solution, laws } : "no solution was found";
}

function alternatingLaws(
  { compiled, net, laws, speedRpm }: AcQuestion,
  line: GeneratorLine,
): Law[] {
  const { elements, context } = compiled.jobNetwork;
  return elements.map(({ role, kind, from }, k): Law => {
    const law = laws[k]!;
    if (law.kind === "emf") return { kind: "ohm", ohm: law.internalOhm };
    if (law.kind === "diode") return OPEN;
    // The coil's own resistance is inside its curve.
    if (kind === "coil" && net.leads.includes(from)) return OPEN;
    if (role.role === "supply" || role.role === "exciter") return OPEN;
    if (role.role !== "acClamp" || !net.nodes.has(from)) return law;
    const unit = context.parts.find((part) => part.id === role.regulator);
    if (unit?.kind !== "regulator") throw new Error(`${role.regulator} is no regulator`);
    return clampCurve(unit.setV.value, shortedCurrentA(line, speedRpm));
  });
}

/** Nothing up to the set volts less its band, all the coil can give at the set volts. */
function clampCurve(setV: number, ceilingA: number): CurveLaw {
  const startV = kneeV(setV);
  return {
    kind: "curve",
    points: [
      [0, 0],
      [startV, startV * CLAMP_IDLE_S],
      [setV, startV * CLAMP_IDLE_S + ceilingA],
    ],
  };
}
