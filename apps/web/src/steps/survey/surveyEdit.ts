import { ask } from "../../engine/engineClient.ts";
import { edit } from "../../store/editing.ts";
import type { SurveyChange } from "./surveyAnswers.ts";

/** One change of the survey: the engine says how it is done, the bench does it. */
export async function surveyEdit(what: string, change: SurveyChange): Promise<boolean> {
  return edit(what, await ask("surveyChange", change));
}
