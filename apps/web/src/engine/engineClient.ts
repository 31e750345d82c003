import * as Comlink from "comlink";
import type { Answer, AnswerName, Question } from "./answers.ts";
import type { EngineApi } from "./engineApi.ts";

export type EngineClient = Comlink.Remote<EngineApi>;

function startWorker(): EngineClient {
  const worker = new Worker(new URL("./engineWorker.ts", import.meta.url), { type: "module" });
  return Comlink.wrap<EngineApi>(worker);
}

/**
 * Two workers: the front one answers what the hand waits for (edits, verdict, drawings), the back one what takes seconds (proof, papers), so that no
 * proof holds up a verdict. The back one is started when it is first needed and is given the text it works on; a second of its kind helps where work can be shared.
 */
export const front: EngineClient = startWorker();

interface BackWorker {
  readonly client: EngineClient;
  text: string | null;
}

const backs: BackWorker[] = [];

export async function ask<N extends AnswerName>(
  name: N,
  question: Question<N>,
): Promise<Answer<N>> {
  return (await front.answer(name, question, Comlink.proxy(quiet))) as Answer<N>;
}

/** A long question: asked of the back worker about the document given; a second one (`which` 1) takes its share of what two can do, a third (2) answers while both are at work. */
export async function askLong<N extends AnswerName>(
  text: string,
  name: N,
  question: Question<N>,
  progress: (doneRatio: number, word: string) => void = quiet,
  which: 0 | 1 | 2 = 0,
): Promise<Answer<N>> {
  backs[which] ??= { client: startWorker(), text: null };
  const back = backs[which];
  if (back.text !== text) {
    const opened = await back.client.open(text);
    if (!opened.ok) throw new Error(opened.refusals[0]?.message ?? "the job could not be read");
    back.text = text;
  }
  return (await back.client.answer(name, question, Comlink.proxy(progress))) as Answer<N>;
}

function quiet(): void {}
