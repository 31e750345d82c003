import { type Remedy, remedyMessageOf } from "../messages/index.ts";
import { compileJob, conditionsOf } from "../operate/index.ts";
import type { ProofInput } from "./proofInput.ts";
import type { ProvedFinding, ProveResult } from "./proveResult.ts";
import { findingKey, type Prove, reproved } from "./reproved.ts";
import { structuralChanges, type TriedChange } from "./structuralChanges.ts";

/** Findings about a wire for which the job itself is changed on trial. */
const TRIED = new Set(["proof-wire-unfused", "proof-wire-not-saved"]);
/** Whole proofs made on trial, counted: each takes as long as the first. */
const MOST_PROOFS = 4;

/**
 * Where neither another fuse nor thicker copper mends a wire, the job is changed on trial and proven again as a whole: first where the
 * most current comes in, the smallest change first. What cures a finding and brings nothing grave instead is told with its
 * operations, at every finding it cures.
 */
export function withTriedChanges(
  input: ProofInput,
  result: ProveResult,
  prove: Prove,
): ProveResult {
  const wireOf = new Map(result.wires.map((row) => [row.wire, row]));
  const worstA = ({ subject }: ProvedFinding): number =>
    wireOf.get(subject.id)?.worst?.currentA ?? 0;
  const open = result.findings.filter(isOpen).sort((a, b) => worstA(b) - worstA(a));
  if (open.length === 0) return result;
  const { job, conductors } = input;
  const compiled = compileJob(job, conductors, { conditions: conditionsOf(job, {}) });
  const cured = new Map<string, Remedy>();
  let proofCount = 0;
  for (const finding of open) {
    const wire = wireOf.get(finding.subject.id);
    if (wire === undefined || cured.has(findingKey(finding))) continue;
    for (const change of structuralChanges(compiled, wire, result.fuses)) {
      if (proofCount >= MOST_PROOFS) break;
      proofCount++;
      const key = findingKey(finding);
      const tried = reproved(input, result, { key, operations: change.operations }, prove);
      if (tried === null || !tried.cures) continue;
      for (const one of open) {
        if (tried.left.has(findingKey(one)) || cured.has(findingKey(one))) continue;
        cured.set(findingKey(one), remedyOf(change, wire.wire, one, tried.result));
      }
      break;
    }
  }
  return { ...result, findings: result.findings.map((one) => told(one, cured)) };
}

function remedyOf(
  { kind, operations, numbers }: TriedChange,
  moved: string,
  { subject }: ProvedFinding,
  { wires, verdict }: ProveResult,
): Remedy {
  const newPeakC = wires.find(({ wire }) => wire === subject.id)?.bound?.peakC ?? null;
  const newNumbers = { ...numbers, moved, newPeakC, newVerdict: verdict };
  return { kind, change: operations, cures: true, newNumbers };
}

const isOpen = ({ code, severity, remedies }: ProvedFinding): boolean =>
  TRIED.has(code) && severity !== "advise" && !remedies.some(({ cures }) => cures === true);

function told(finding: ProvedFinding, cured: ReadonlyMap<string, Remedy>): ProvedFinding {
  const remedy = cured.get(findingKey(finding));
  if (remedy === undefined) return finding;
  const message = remedyMessageOf(finding, remedy);
  const spoken = message === null ? remedy : { ...remedy, message };
  return { ...finding, remedies: [...finding.remedies, spoken] };
}
