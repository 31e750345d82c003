import { adiabaticEndC, heatCapacityJPerMK, heatMaterials } from "../heat/index.ts";
import type { Finding } from "../messages/index.ts";
import { figure } from "../tables/index.ts";
import type { CurrentTallies } from "./currentTallies.ts";
import { proofFinding } from "./proofFinding.ts";
import type { ProofPlan } from "./proofPlan.ts";

/** Wires that the starter's current, flowing for as long as heat counts as all kept, takes beyond what their insulation stands for seconds. */
export function startingFindings(plan: ProofPlan, tallies: CurrentTallies): readonly Finding[] {
  const { conductors } = plan.input;
  const longest = figure("heatLimits", "adiabatic-longest", "value");
  return [...conductors.values()].flatMap((conductor): Finding[] => {
    const element = plan.solver.compiled.elementOfConductor.get(conductor.id)!;
    const currentA = tallies.startingA[element]!;
    const limit = figure("insulations", conductor.insulation, "adiabaticEndC");
    const materials = heatMaterials(conductor.insulation);
    const round = {
      areaMm2: conductor.areaMm2,
      conductorDiameterMm: conductor.conductorDiameterMm,
      outerDiameterMm: conductor.odMm,
      insulationShareRatio: 0,
    };
    const peakC = adiabaticEndC({
      ohmPerM20: conductor.ohmPerM20Max,
      alphaPerK: materials.conductor.alphaPerK,
      startC: conductor.ambientC,
      capacityJPerMK: heatCapacityJPerMK(round, materials),
      i2tA2s: currentA ** 2 * longest.value,
    });
    if (peakC <= limit.value) return [];
    const kind = conductor.kind === "flyLead" ? "flyLead" : "wire";
    return [
      proofFinding(plan, {
        code: "proof-hot-starting",
        severity: "stop",
        subject: { kind, id: conductor.id },
        numbers: { currentA, timeS: longest.value, peakC },
        limit,
      }),
    ];
  });
}
