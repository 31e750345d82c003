import { create } from "zustand";

/** Something a step lays on the rule, at its mm along the loom. */
export interface RuleMark {
  readonly fromMm: number;
  readonly toMm?: number;
  readonly text?: string;
  readonly tone: "copper" | "stop" | "mend" | "advise" | "verdigris" | "ink";
}

/** Each step puts its own marks and takes them away when it is left. */
export const useRuleMarks = create<{ readonly marks: readonly RuleMark[] }>()(() => ({
  marks: [],
}));

export function layOnRule(marks: readonly RuleMark[]): void {
  useRuleMarks.setState({ marks });
}
