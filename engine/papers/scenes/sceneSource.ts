import type { Job } from "../../job/index.ts";
import type { CheckedJob } from "../../judge/index.ts";
import { type BundleReader, bundleReader, type PackedBundles } from "../board/bundles.ts";
import { type PaperInput, sheetInfoOf } from "../paperInput.ts";
import { type SolvedState, solvedStates } from "../solvedStates.ts";
import { type TestSection, testSections } from "../test/testSections.ts";

/** A checked job with what several scenes need of it, each computed once and only when a scene asks. Make one for all scenes of one job. */
export interface SceneSource {
  /** Everything but the solved states and the end fittings, which no scene but a circuit's shows. */
  readonly input: PaperInput;
  readonly bundleOf: BundleReader;
  readonly packed: PackedBundles;
  /** With every named state solved. */
  readonly solved: () => PaperInput;
  /** Every test of the finished loom, without what has been read. */
  readonly tests: () => readonly TestSection[];
}

/**
 * @param before  of the same job before an edit: a mixture of diameters packed for it is not packed again, and where the edit only ticked or
 *                recorded something, neither its states nor its tests are solved again
 */
export function sceneSource(
  { design, result }: CheckedJob,
  before: SceneSource | null = null,
): SceneSource {
  const { job, conductors } = design;
  const info = sheetInfoOf(job, result);
  const paper = "a3";
  const common = {
    job,
    fingerprint: "",
    design,
    check: result,
    paper,
    info,
    unsavedCount: 0,
  } as const;
  const input: PaperInput = { ...common, fittings: [], states: [] };
  const packed: PackedBundles = new Map();
  const alike = before !== null && isSameButRecords(before.input.job, job) ? before : null;
  const states = once((): readonly SolvedState[] =>
    alike === null ? solvedStates(job, conductors) : alike.solved().states,
  );
  const solved = once((): PaperInput => ({ ...input, states: states() }));
  return {
    input,
    packed,
    bundleOf: bundleReader(input, packed, before?.packed),
    solved,
    tests: once(() => alike?.tests() ?? testSections(solved())),
  };
}

/** Ticks and readings change nothing that is computed. */
function isSameButRecords(one: Job, other: Job): boolean {
  const textOf = (job: Job): string => JSON.stringify({ ...job, build: [], tests: [] });
  return textOf(one) === textOf(other);
}

function once<T>(work: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: work() };
    return made.value;
  };
}

/** What every scene may be asked with. */
export type SceneAsked = CheckedJob | SceneSource;

export const sourceOf = (asked: SceneAsked): SceneSource =>
  "bundleOf" in asked ? asked : sceneSource(asked);
