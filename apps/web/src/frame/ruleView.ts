/** The loom unrolled along a steel rule, zero at its front: what the top edge shows. */
export interface RuleView {
  readonly leastMm: number;
  readonly mostMm: number;
  readonly stations: readonly RuleStation[];
  readonly runs: readonly RuleRun[];
}

export interface RuleStation {
  readonly id: string;
  readonly name: string;
  readonly atMm: number;
  /** Stands off the main line: drawn as a twig. */
  readonly isBranch: boolean;
}

export interface RuleRun {
  readonly id: string;
  readonly fromMm: number;
  readonly toMm: number;
  /** Outside diameter, mm; null where nothing runs. */
  readonly odMm: number | null;
  readonly isMeasured: boolean;
  readonly isBranch: boolean;
}
