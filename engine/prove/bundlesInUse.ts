import { bundleConductorTemperaturesC, heatMaterials, loomMaterials } from "../heat/index.ts";
import type { CurrentTallies } from "./currentTallies.ts";
import type { ProofPlan } from "./proofPlan.ts";
import type { ProvedBundle } from "./proveResult.ts";

const CEILING_C = 400;

/**
 * Hottest conductor of every stretch of loom with every wire in it at its largest lasting current at once. No single state does
 * that, so the temperature is never below the worst state's; the state named is the one in which the hottest wire carries most.
 */
export function bundlesInUse(
  { input, solver }: ProofPlan,
  tallies: CurrentTallies,
): readonly ProvedBundle[] {
  const { conductors, routed } = input;
  const packing = loomMaterials();
  return routed.stretches.map((stretch): ProvedBundle => {
    const wires = [...new Set(stretch.wires)].map((id) => conductors.get(id)!);
    const elements = wires.map(({ id }) => solver.compiled.elementOfConductor.get(id)!);
    const answer = bundleConductorTemperaturesC({
      wires: wires.map(({ ohmPerM20Max, conductorDiameterMm, odMm }) => ({
        ohmPerM20: ohmPerM20Max,
        conductorDiameterMm,
        outerDiameterMm: odMm,
      })),
      currentsA: elements.map((k) => tallies.lastingA[k]!),
      bundleDiameterMm: null,
      packingRatio: packing.packingRatio,
      conductivityWPerMK: packing.conductivityWPerMK,
      sleeve: null,
      ambientC: stretch.ambientC,
      materials: heatMaterials(wires[0]!.insulation),
      ceilingC: CEILING_C,
    });
    const overC = (i: number): number =>
      answer.ok ? answer.conductorsC[i]! - wires[i]!.classC : 0;
    const hottest = wires.reduce((best, _, i) => (overC(i) > overC(best) ? i : best), 0);
    const met = tallies.lastingState[elements[hottest]!];
    return {
      stretch: stretch.id,
      state: met == null ? null : { ...met.state, batteryV: met.batteryV },
      hottestWire: wires[hottest]!.id,
      conductorC: answer.ok ? answer.conductorsC[hottest]! : null,
      limitC: wires[hottest]!.classC,
    };
  });
}
