import { type LoomRule, loomRule, type MachineRule, machineRule } from "../../layout/index.ts";
import { type SceneAsked, sourceOf } from "./sceneSource.ts";

/** The whole loom along one rule, front to rear; plain data, nothing drawn. */
export function machineRuleOf(asked: SceneAsked): MachineRule {
  const { input, bundleOf } = sourceOf(asked);
  return machineRule(input.job, input.design.routed, (wires) => bundleOf(wires).asLaidMm);
}

/** Every loom by itself, trunk and branches, with every change of thickness. */
export function loomRuleOf(asked: SceneAsked): readonly LoomRule[] {
  const { input, bundleOf } = sourceOf(asked);
  const { job, design } = input;
  return job.looms.map(({ id }) =>
    loomRule(job, design.routed, id, (wires) => bundleOf(wires).asLaidMm),
  );
}
