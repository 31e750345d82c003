import * as Comlink from "comlink";
import type { Answer, AnswerName, Question } from "./answers.ts";
import type { EngineApi, Opened } from "./engineApi.ts";

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
  opened: Promise<Opened>;
}

const backs: BackWorker[] = [];

export async function ask<N extends AnswerName>(
  name: N,
  question: Question<N>,
): Promise<Answer<N>> {
  return (await front.answer(name, question, undefined)) as Answer<N>;
}

/**
 * A long question: asked of a back worker about the document given; a second one (`workerIndex` 1) takes its share of what two can do, a third answers
 * while both are at work. Document and question are sent together: a worker takes its messages in turn, so no other document comes between them.
 */
export async function askLong<N extends AnswerName>(
  text: string,
  name: N,
  question: Question<N>,
  progress?: (doneRatio: number, word: string) => void,
  workerIndex = 0,
): Promise<Answer<N>> {
  const back = backWorker(workerIndex);
  if (back.text !== text) {
    back.text = text;
    back.opened = back.client.open(text);
  }
  const told = progress && Comlink.proxy(progress);
  const [opened, answer] = await Promise.allSettled([
    back.opened,
    back.client.answer(name, question, told),
  ]);
  if (opened.status === "rejected") throw opened.reason;
  if (!opened.value.ok) {
    if (back.text === text) back.text = null;
    throw new Error(opened.value.refusals[0]?.message ?? "the job could not be read");
  }
  if (answer.status === "rejected") throw answer.reason;
  return answer.value as Answer<N>;
}

function backWorker(index: number): BackWorker {
  const none: Opened = { ok: false, refusals: [] };
  backs[index] ??= { client: startWorker(), text: null, opened: Promise.resolve(none) };
  return backs[index];
}
