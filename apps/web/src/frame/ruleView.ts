import { machineRuleOf } from "@copperwright/engine/scenes";
import type { Held } from "../engine/held.ts";

/** The whole loom along one steel rule, with the wires each run carries: what the top edge shows. */
export type RuleView = ReturnType<typeof machineRuleOf> & {
  readonly wiresOf: Readonly<Record<string, readonly string[]>>;
};

export type RuleStation = RuleView["stations"][number];
export type RuleRun = RuleView["runs"][number];

export function ruleView(held: Held): RuleView {
  const wires = new Map<string, Set<string>>();
  for (const stretch of held.checked().design.routed.stretches) {
    const here = wires.get(stretch.run) ?? new Set();
    for (const wire of stretch.wires) here.add(wire);
    wires.set(stretch.run, here);
  }
  const wiresOf = Object.fromEntries([...wires].map(([run, ids]) => [run, [...ids]]));
  return { ...machineRuleOf(held.scenes()), wiresOf };
}
