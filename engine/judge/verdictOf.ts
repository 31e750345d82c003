import type { Decisions } from "../job/index.ts";
import type { Finding } from "../messages/index.ts";
import type { CheckResult, Verdict } from "./checkResult.ts";
import { findingOf } from "./findingOf.ts";

/** Any stop, then anything not proven, then anything to mend; advice leaves a machine fit. */
export function verdictOf(counts: CheckResult["counts"]): Verdict {
  if (counts.stop > 0) return "stop";
  if (counts.notProven > 0) return "not-proven";
  return counts.mend > 0 ? "mend" : "fit";
}

/** How many findings of each severity still count: an accepted one does not. */
export function countsOf(findings: readonly Finding[]): CheckResult["counts"] {
  const count = (severity: Finding["severity"]): number =>
    findings.filter((one) => one.severity === severity && one.accepted === null).length;
  return {
    stop: count("stop"),
    mend: count("mend"),
    advise: count("advise"),
    notProven: count("not-proven"),
  };
}

type Acceptance = NonNullable<Decisions["accepted"]>[number];

/**
 * Findings with what somebody answers for marked. An acceptance of a stop is refused, and says so; one of a finding that has
 * since come to name more than was answered for no longer holds, and says what is new.
 */
export function withAcceptances(
  findings: readonly Finding[],
  { accepted = [] }: Decisions,
): readonly Finding[] {
  const isMeant = ({ code, subject }: Finding, by: Acceptance): boolean =>
    code === by.code && subject.id === by.subject;
  const marked = findings.map((finding) => {
    const by = accepted.find((one) => isMeant(finding, one) && beyond(finding, one).length === 0);
    if (by === undefined || !finding.acceptable) return finding;
    return { ...finding, accepted: { reason: by.reason, by: by.by } };
  });
  const answers = accepted.flatMap((by): readonly Finding[] => {
    const subject = { kind: "job", id: by.id } as const;
    const named = { acceptedCode: by.code, acceptedSubject: by.subject };
    const meant = marked.filter((one) => isMeant(one, by) && one.accepted === null);
    if (meant.some(({ acceptable }) => !acceptable)) {
      const code = "accept-refused";
      return [findingOf({ code, severity: "mend", subject, numbers: named })];
    }
    const isNew = [...new Set(meant.flatMap((one) => beyond(one, by)))].sort();
    if (isNew.length === 0) return [];
    const code = "accept-outgrown";
    const numbers = { ...named, newCount: isNew.length };
    return [findingOf({ code, severity: "mend", subject, also: isNew, numbers })];
  });
  return [...marked, ...answers];
}

/** What a finding names beyond what was answered for. */
const beyond = ({ also }: Finding, by: Acceptance): readonly string[] =>
  also.filter((id) => !(by.also ?? []).includes(id));
