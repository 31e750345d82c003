import type { SumSentence } from "../store/documentState.ts";

/** The sum line as one sentence: name, result, equation, limit and source. */
export function sumText({ name, result, equation, note, usedText }: SumSentence): string {
  const used = usedText === undefined ? "" : ` ${usedText}.`;
  return `${name} ${result} = ${equation}.${used} ${note}`.replace(/\s+/g, " ").trim();
}
