import { loomRuleOf } from "@copperwright/engine/scenes";
import type { Held } from "../engine/held.ts";
import type { RuleView } from "./ruleView.ts";

export const frameAnswers = {
  /** The loom along the rule. */
  rule: (held: Held): RuleView => loomRuleOf(held.checked()),
};
