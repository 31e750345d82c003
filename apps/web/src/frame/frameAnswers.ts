import type { Held } from "../engine/held.ts";
import { type RuleView, ruleView } from "./ruleView.ts";

export const frameAnswers = {
  /** The loom along the rule. */
  rule: (held: Held): RuleView => ruleView(held),
};
