import type { Progress } from "../../engine/answers.ts";
import type { Held } from "../../engine/held.ts";
import type { papersAnswers } from "./papersAnswers.ts";

type PapersAnswers = typeof papersAnswers;

/** An answer whose code is loaded with the first paper asked for: a verdict has no need of what makes files. */
const later =
  <N extends keyof PapersAnswers>(name: N) =>
  async (
    held: Held,
    question: Parameters<PapersAnswers[N]>[1],
    progress: Progress,
  ): Promise<Awaited<ReturnType<PapersAnswers[N]>>> => {
    const answers = (await import("./papersAnswers.ts")).papersAnswers;
    const answer = answers[name] as (
      held: Held,
      question: unknown,
      progress: Progress,
    ) => ReturnType<PapersAnswers[N]>;
    return await answer(held, question, progress);
  };

export const papersLater = {
  papersKeepProof: later("papersKeepProof"),
  papersList: later("papersList"),
  papersPage: later("papersPage"),
  papersPdf: later("papersPdf"),
  papersTakeAway: later("papersTakeAway"),
  papersTicks: later("papersTicks"),
  papersPack: later("papersPack"),
} satisfies { readonly [N in keyof PapersAnswers]: unknown };
