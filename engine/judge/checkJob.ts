import type { Job } from "../job/index.ts";
import { type Finding, messageOf, remedyMessageOf } from "../messages/index.ts";
import { buildDesign, onOneNetwork } from "./buildDesign.ts";
import type { CheckResult, SpokenFinding } from "./checkResult.ts";
import { sharedReturns } from "./earth/sharedReturns.ts";
import { fuseRowsOf } from "./fuseRowsOf.ts";
import type { Design, Judge } from "./judge.ts";
import { judges } from "./judges.ts";
import { planJob } from "./planJob.ts";
import { polarityContradiction } from "./polarity/polarityContradiction.ts";
import { sameLoomMap } from "./recheck/sameSlices.ts";
import { neverCharges } from "./supply/neverCharges.ts";
import { countsOf, verdictOf, withAcceptances } from "./verdictOf.ts";
import { wireRowsOf } from "./wireRowsOf.ts";
import { jointCrowded } from "./workmanship/jointCrowded.ts";

/** A job checked, with everything the check was made of: papers draw from it. */
export interface CheckedJob {
  readonly design: Design;
  readonly result: CheckResult;
  /** What each judge said, before acceptances. */
  readonly said: ReadonlyMap<Judge, readonly Finding[]>;
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
  return judged(job, buildDesign(planJob(job)), null);
}

/**
 * The same answer as `checkedJob`, sooner: what an edit left as it was is taken from the check before it, and states are solved from
 * where they ended before. Verdict, findings and every sentence are the same, numbers to 1e-9. All that is kept for this is in
 * `before`, which stays as it is.
 */
export function recheckedJob(before: CheckedJob, job: Job): CheckedJob {
  const { design } = before;
  return judged(job, buildDesign(planJob(job, design), design), before);
}

function judged(job: Job, design: Design, before: CheckedJob | null): CheckedJob {
  const contradictions = polarityContradiction(design);
  const isContradicted = contradictions.length > 0;
  const said: CheckedJob["said"] = isContradicted ? new Map() : sayings(design, before);
  const found = isContradicted ? contradictions : [...said.values()].flat();
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
  return { design, result, said };
}

/** Judges that read the network, its solutions and what the job says of its states, and nothing else of the design. */
const OF_THE_NETWORK: ReadonlySet<Judge> = new Set([sharedReturns, neverCharges]);

/** Judges that read where joints and bundles lie, and nothing else. */
const OF_THE_LOOM: ReadonlySet<Judge> = new Set([jointCrowded]);

function sayings(design: Design, before: CheckedJob | null): CheckedJob["said"] {
  const isSolvedAlike = before !== null && onOneNetwork(before.design, design);
  const isLaidAlike = before !== null && liesAlike(before.design, design);
  const known = (judge: Judge) =>
    (isSolvedAlike && OF_THE_NETWORK.has(judge)) || (isLaidAlike && OF_THE_LOOM.has(judge))
      ? before?.said.get(judge)
      : undefined;
  return new Map(judges.map((judge) => [judge, known(judge) ?? judge(design)]));
}

const liesAlike = (before: Design, { job, routed }: Design): boolean =>
  routed.stretches === before.routed.stretches &&
  job.joints === before.job.joints &&
  job.connectors === before.job.connectors &&
  sameLoomMap(before.job, job);

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
