import type { CheckedJob } from "../../judge/index.ts";
import { type BundleReader, bundleReader } from "../board/bundles.ts";
import { type PaperInput, sheetInfoOf } from "../paperInput.ts";
import { solvedStates } from "../solvedStates.ts";

/** A checked job with what several scenes need of it, each computed once and only when a scene asks. Make one for all scenes of one job. */
export interface SceneSource {
  /** Everything but the solved states and the end fittings, which no scene but a circuit's shows. */
  readonly input: PaperInput;
  /** Bundles packed so far. */
  readonly bundleOf: BundleReader;
  /** With every named state solved. */
  readonly solved: () => PaperInput;
}

export function sceneSource({ design, result }: CheckedJob): SceneSource {
  const { job, conductors } = design;
  const info = sheetInfoOf(job, result);
  const paper = "a3";
  const common = { job, fingerprint: "", design, check: result, paper, info } as const;
  const input: PaperInput = { ...common, fittings: [], states: [] };
  let solved: PaperInput | null = null;
  return {
    input,
    bundleOf: bundleReader(input),
    solved: () => {
      solved ??= { ...input, states: solvedStates(job, conductors) };
      return solved;
    },
  };
}

/** What every scene may be asked with. */
export type SceneAsked = CheckedJob | SceneSource;

export const sourceOf = (asked: SceneAsked): SceneSource =>
  "bundleOf" in asked ? asked : sceneSource(asked);
