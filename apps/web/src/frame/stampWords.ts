import type { CheckResult } from "@copperwright/engine";
import { verdictWord } from "./verdictWord.ts";

export interface StampWords {
  readonly verdict: string;
  readonly word: string;
  readonly why: string;
  /** What the full proof says of it; null where it has not been made of this job. */
  readonly note: string | null;
}

/** From the least to the most serious. */
const ORDER = ["fit", "mend", "not-proven", "stop"];
const LONGEST_WHY_LETTERS = 90;

/** What the stamp says. A full proof that comes out worse than the check has the word: nothing is called fit that the proof does not call fit. */
export function stampWords(result: CheckResult | null, proofVerdict: string | null): StampWords {
  if (result === null) {
    return { verdict: "checking", word: "not yet", why: "being worked out", note: null };
  }
  const isWorse =
    proofVerdict !== null && ORDER.indexOf(proofVerdict) > ORDER.indexOf(result.verdict);
  const verdict = isWorse ? proofVerdict : result.verdict;
  const word = verdictWord(verdict);
  if (isWorse) {
    return {
      verdict,
      word,
      why: "the full proof found more than the check",
      note: "see the proof",
    };
  }
  const count = countOf(result);
  return {
    verdict,
    word: count === null ? word : `${word} ${count}`,
    why: headline(result),
    note: proofVerdict === "fit" ? "proven in every state" : null,
  };
}

function countOf({ verdict, counts }: CheckResult): number | null {
  if (verdict === "stop") return counts.stop;
  if (verdict === "mend") return counts.mend;
  return verdict === "not-proven" ? counts.notProven : null;
}

function headline({ findings, verdict }: CheckResult): string {
  const worst = findings.find(({ severity }) => severity === verdict);
  if (worst === undefined) return "nothing has to be put right";
  const [sentence = ""] = worst.message.split(/(?<=\.)\s/);
  return sentence.length > LONGEST_WHY_LETTERS ? `at ${worst.subject.id}` : sentence;
}
