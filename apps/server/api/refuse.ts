import type { Context } from "hono";
import type { ContentfulStatusCode } from "hono/utils/http-status";
import { SENTENCES, type SentenceCode, type SentenceWords } from "./sentences.ts";

/** A refusal as a value, for what is worked out away from a request. */
export interface Refused<Code extends SentenceCode = SentenceCode> {
  readonly ok: false;
  readonly code: Code;
  readonly words: Readonly<Record<string, string | number>>;
  /** What the engine refused, where it was the engine. */
  readonly refusals?: readonly unknown[];
}

export function refused<Code extends SentenceCode>(
  code: Code,
  words: SentenceWords<Code>,
  refusals?: readonly unknown[],
): Refused<Code> {
  return { ok: false, code, words, ...(refusals === undefined ? {} : { refusals }) };
}

/** The answer of a refusal: `{ ok: false, code, message }`, with the engine's own refusals where there are some. */
export function answerRefused(c: Context, { code, words, refusals }: Refused): Response {
  const { status, message } = SENTENCES[code];
  const filled = message.replace(/\{(\w+)\}/g, (whole, word: string) =>
    Object.hasOwn(words, word) ? String(words[word]) : whole,
  );
  const body = {
    ok: false,
    code,
    message: filled,
    ...(refusals === undefined ? {} : { refusals }),
  };
  return c.json(body, status as ContentfulStatusCode);
}

export function refuse<Code extends SentenceCode>(
  c: Context,
  code: Code,
  words: SentenceWords<Code>,
): Response {
  return answerRefused(c, refused(code, words));
}
