import { frameAnswers } from "../frame/frameAnswers.ts";
import { buildAnswers } from "../steps/build/buildAnswers.ts";
import { circuitsAnswers } from "../steps/circuits/circuitsAnswers.ts";
import { jobsAnswers } from "../steps/jobs/jobsAnswers.ts";
import { loomAnswers } from "../steps/loom/loomAnswers.ts";
import { boardAnswers } from "../steps/loomBoard/boardAnswers.ts";
import { papersLater } from "../steps/papers/papersLater.ts";
import { partsAnswers } from "../steps/parts/partsAnswers.ts";
import { proofAnswers } from "../steps/proof/proofAnswers.ts";
import { supplyAnswers } from "../steps/proof/supply/supplyAnswers.ts";
import { surveyAnswers } from "../steps/survey/surveyAnswers.ts";
import { testAnswers } from "../steps/test/testAnswers.ts";
import { tryAnswers } from "../steps/try/tryAnswers.ts";
import { wiringAnswers } from "../steps/wiring/wiringAnswers.ts";
import type { Held } from "./held.ts";

/**
 * Every question a screen may ask of the worker, by name. An answer is a pure function of the job held and the question; it may be a promise.
 * Each step keeps its own in its folder, so that what a screen shows and what it asks stand side by side.
 */
export const ANSWERS = {
  ...frameAnswers,
  ...jobsAnswers,
  ...surveyAnswers,
  ...circuitsAnswers,
  ...wiringAnswers,
  ...tryAnswers,
  ...proofAnswers,
  ...supplyAnswers,
  ...loomAnswers,
  ...boardAnswers,
  ...partsAnswers,
  ...buildAnswers,
  ...testAnswers,
  ...papersLater,
} satisfies Record<string, (held: Held, question: never, progress: Progress) => unknown>;

/** How far a long answer has come, 0 to 1, with a word for a person. */
export type Progress = (doneRatio: number, word: string) => void;

export type AnswerName = keyof typeof ANSWERS;
export type Question<N extends AnswerName> =
  Parameters<(typeof ANSWERS)[N]> extends [Held, infer Q, ...unknown[]] ? Q : undefined;
export type Answer<N extends AnswerName> = Awaited<ReturnType<(typeof ANSWERS)[N]>>;
