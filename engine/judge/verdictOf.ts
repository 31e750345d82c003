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

/** Findings with what somebody answers for marked; an acceptance of a stop is refused, and says so. */
export function withAcceptances(
  findings: readonly Finding[],
  { accepted = [] }: Decisions,
): readonly Finding[] {
  const isMeant = ({ code, subject }: Finding, by: (typeof accepted)[number]): boolean =>
    code === by.code && subject.id === by.subject;
  const marked = findings.map((finding) => {
    const by = accepted.find((one) => isMeant(finding, one));
    if (by === undefined || !finding.acceptable) return finding;
    return { ...finding, accepted: { reason: by.reason, by: by.by } };
  });
  const refused = accepted
    .filter((by) => findings.some((one) => isMeant(one, by) && !one.acceptable))
    .map((by) =>
      findingOf({
        code: "accept-refused",
        severity: "mend",
        subject: { kind: "job", id: by.id },
        numbers: { acceptedCode: by.code, acceptedSubject: by.subject },
      }),
    );
  return [...marked, ...refused];
}
