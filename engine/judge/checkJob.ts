import type { Job } from "../job/index.ts";
import { type Finding, messageOf, remedyMessageOf } from "../messages/index.ts";
import { buildDesign } from "./buildDesign.ts";
import type { CheckResult, SpokenFinding } from "./checkResult.ts";
import { fuseRowsOf } from "./fuseRowsOf.ts";
import type { Design } from "./judge.ts";
import { judges } from "./judges.ts";
import { planJob } from "./planJob.ts";
import { polarityContradiction } from "./polarity/polarityContradiction.ts";
import { countsOf, verdictOf, withAcceptances } from "./verdictOf.ts";
import { wireRowsOf } from "./wireRowsOf.ts";

/** A job checked, with everything the check was made of: papers draw from it. */
export interface CheckedJob {
  readonly design: Design;
  readonly result: CheckResult;
}

/**
 * The whole flow on one page: lay out and size (`planJob`), solve (`buildDesign`), ask every judge, say the verdict.
 *
 * Where the declared earth contradicts the battery's joins nothing else is judged: every other answer would rest on one
 * of two facts that cannot both be true.
 */
export function checkJob(job: Job): CheckResult {
  return checkedJob(job).result;
}

export function checkedJob(job: Job): CheckedJob {
  const design = buildDesign(planJob(job));
  const contradictions = polarityContradiction(design);
  const isContradicted = contradictions.length > 0;
  const found = isContradicted ? contradictions : judges.flatMap((judge) => judge(design));
  const findings = withAcceptances(found, job.decisions).map(spoken).sort(inOrder);
  const counts = countsOf(findings);
  const result: CheckResult = {
    verdict: verdictOf(counts),
    counts,
    lengthsComplete: design.routed.lengthsComplete,
    passes: 1,
    settled: true,
    withheld: isContradicted
      ? "everything but the earth: its two facts contradict each other"
      : null,
    findings,
    wires: wireRowsOf(design),
    loads: isContradicted ? [] : design.loads,
    fuses: isContradicted ? [] : fuseRowsOf(design.fuses),
    statesSolved: design.worst.stateCount + design.declared.length,
  };
  return { design, result };
}

function spoken(finding: Finding): SpokenFinding {
  const remedies = finding.remedies.map((remedy) => {
    const message = remedyMessageOf(finding, remedy);
    return message === null ? remedy : { ...remedy, message };
  });
  return { ...finding, remedies, message: messageOf(finding) };
}

/** By subject, then code, then state: the same job always lists alike. */
function inOrder(a: SpokenFinding, b: SpokenFinding): number {
  const key = ({ subject, code, message }: SpokenFinding): string =>
    `${subject.id} ${code} ${message}`;
  return key(a) < key(b) ? -1 : 1;
}
