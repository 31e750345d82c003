import {
  explanationOf,
  mergedFirst,
  type ProveResult,
  preparedProof,
  proofWork,
  provedResult,
  proveFirst,
  proveSecond,
  type TimeCurrent,
  timeCurrentOf,
} from "@copperwright/engine";
import type { Progress } from "../../engine/answers.ts";
import type { Held } from "../../engine/held.ts";
import { type Whereabouts, whereabouts } from "./whereabouts.ts";

/** Shares of the whole that the stages take, roughly: only for telling how far it has come. */
const TRUTH_RATIO = 0.15;
const FIRST_RATIO = 0.45;
const SECOND_RATIO = 0.9;
const WHOLE = { index: 0, count: 1 };

/** What the worker answers for Proof. */
export const proofAnswers = {
  /** Every state, every place open, every short; told as it gets on. */
  proofWhole: (held: Held, _question: undefined, progress: Progress): ProveResult => {
    progress(0, "laying the states out");
    const work = proofWork(preparedProof(held.checked().design));
    const first = mergedFirst(work.plan, [
      proveFirst(work, WHOLE, (stage, done, of) => {
        if (stage === "truth") progress(TRUTH_RATIO, "every state solved");
        else progress(share(TRUTH_RATIO, FIRST_RATIO, done / of), `open ${done} of ${of}`);
      }),
    ]);
    const second = proveSecond(work, first.tallies, WHOLE, (_stage, done, of) =>
      progress(share(FIRST_RATIO, SECOND_RATIO, done / of), "every wire and every short"),
    );
    progress(SECOND_RATIO, "changes that would mend it");
    return provedResult(work, first, [second], {});
  },
  proofPlot: (held: Held, { fuse }: { readonly fuse: string }): TimeCurrent | null =>
    fuse === "" ? null : timeCurrentOf(held.checked(), fuse),
  /** Why a kind of finding matters, paragraph by paragraph. */
  proofWhy: (_held: Held, { code }: { readonly code: string }): readonly string[] =>
    code === "" ? [] : explanationOf(code),
  proofWhere: (held: Held): Whereabouts => whereabouts(held.checked().design),
};

const share = (from: number, to: number, ratio: number): number => from + (to - from) * ratio;
