import {
  type ChangeToTry,
  changesToTry,
  explanationOf,
  type FirstPart,
  type FirstTold,
  mergedFirst,
  type ProofInput,
  type ProveResult,
  preparedProof,
  proofWork,
  provedResult,
  proveFirst,
  proveOnTrial,
  proveSecond,
  type SecondPart,
  type Share,
  type TimeCurrent,
  timeCurrentOf,
  withTriedChanges,
} from "@copperwright/engine";
import type { Progress } from "../../engine/answers.ts";
import type { Held } from "../../engine/held.ts";
import { type Whereabouts, whereabouts } from "./whereabouts.ts";

/** Shares of the whole that the stages take, roughly: only for telling how far it has come. */
const TRUTH_RATIO = 0.15;
const FIRST_RATIO = 0.45;
const SECOND_RATIO = 0.9;

type Work = ReturnType<typeof proofWork>;
type First = ReturnType<typeof mergedFirst>;

/** What this worker keeps between the stages of the proof it has a share in; the next proof takes its place. */
let begun: { readonly proof: number; readonly work: Work; first: First | null } | null = null;

function workOf(proof: number): NonNullable<typeof begun> {
  if (begun?.proof !== proof)
    throw new Error("this share belongs to a proof that is no longer made");
  return begun;
}

/** Names one proof among those that were begun. */
export interface OfProof {
  readonly proof: number;
}

/**
 * What the worker answers for Proof. The whole proof is made in two stages, each shared among workers: the first share, what all first
 * shares found, the second share, the result. What crosses is plain data, and the answer does not depend on how many there were.
 */
export const proofAnswers = {
  /** The job as it will be, with lengths, copper and guards: what every share is made from. */
  proofInput: (held: Held): ProofInput => preparedProof(held.checked().design),
  proofFirst: (
    _held: Held,
    { proof, input, share }: OfProof & { readonly input: ProofInput; readonly share: Share },
    progress: Progress,
  ): FirstPart => {
    progress(0, "laying the states out");
    const work = proofWork(input);
    begun = { proof, work, first: null };
    return proveFirst(work, share, (stage, done, of) => {
      if (stage === "truth") progress(TRUTH_RATIO, "every state solved");
      else progress(between(TRUTH_RATIO, FIRST_RATIO, done / of), `open ${done} of ${of}`);
    });
  },
  proofTold: (
    _held: Held,
    { proof, parts }: OfProof & { readonly parts: readonly FirstPart[] },
  ): FirstTold => {
    const own = workOf(proof);
    own.first = mergedFirst(own.work.plan, parts);
    const { states, tallies } = own.first;
    return { states, tallies };
  },
  proofSecond: (
    _held: Held,
    { proof, told, share }: OfProof & { readonly told: FirstTold; readonly share: Share },
    progress: Progress,
  ): SecondPart =>
    proveSecond(workOf(proof).work, told, share, (_stage, done, of) =>
      progress(between(FIRST_RATIO, SECOND_RATIO, done / of), "every wire and every short"),
    ),
  proofResult: (
    held: Held,
    { proof, seconds }: OfProof & { readonly seconds: readonly SecondPart[] },
    progress: Progress,
  ): ProveResult => {
    const { work, first } = workOf(proof);
    if (first === null) throw new Error("the first shares of this proof were not put together");
    progress(SECOND_RATIO, "changes that would mend it");
    const result = provedResult(work, first, seconds, {});
    return withTriedChanges(preparedProof(held.checked().design), result, proveOnTrial);
  },
  /** One size up or down of what a finding names, for a finding that brings no change of its own. */
  proofChanges: (
    held: Held,
    { ids }: { readonly ids: readonly string[] },
  ): readonly ChangeToTry[] => {
    const { job, conductors } = held.checked().design;
    return changesToTry(job, conductors, ids);
  },
  proofPlot: (held: Held, { fuse }: { readonly fuse: string }): TimeCurrent | null =>
    fuse === "" ? null : timeCurrentOf(held.checked(), fuse),
  /** Why a kind of finding matters, paragraph by paragraph. */
  proofWhy: (_held: Held, { code }: { readonly code: string }): readonly string[] =>
    code === "" ? [] : explanationOf(code),
  proofWhere: (held: Held): Whereabouts => whereabouts(held.checked().design),
};

const between = (from: number, to: number, ratio: number): number => from + (to - from) * ratio;
