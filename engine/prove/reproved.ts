import { applyOperation, type Job, type Operation } from "../job/index.ts";
import { conductorsOf, routeJob } from "../route/index.ts";
import { preparedProof } from "./preparedProof.ts";
import type { ProofInput } from "./proofInput.ts";
import type { ProveResult } from "./proveResult.ts";

/** Proves a changed job from the ground up. */
export type Prove = (input: ProofInput) => ProveResult;

/** What a change comes to when the whole job is proven again with it. */
export interface Reproved {
  /** The finding is gone and nothing graver than advice has come instead. */
  readonly cures: boolean;
  /** Findings graver than advice that are left. */
  readonly left: ReadonlySet<string>;
  readonly result: ProveResult;
}

export const findingKey = ({
  code,
  subject,
}: Pick<ProveResult["findings"][number], "code" | "subject">): string => `${code} ${subject.id}`;

/** Findings somebody has to act on. */
const graveKeys = ({ findings }: ProveResult): ReadonlySet<string> =>
  new Set(findings.filter(({ severity }) => severity !== "advise").map(findingKey));

/**
 * The whole proof of the job with some operations done, against the proof before. Wires keep the copper they had, so that the change is
 * judged and not another sizing. Null where the operations cannot be done.
 */
export function reproved(
  input: ProofInput,
  before: ProveResult,
  change: { readonly key: string; readonly operations: readonly Operation[] },
  prove: Prove,
): Reproved | null {
  const { operations, key } = change;
  const applied = applyOperation(input.job, { op: "batch", name: "tried", operations });
  if (!applied.ok) return null;
  const job = withCopper(applied.job, input);
  const routed = routeJob(job);
  const result = prove(preparedProof({ job, routed, conductors: conductorsOf(job, routed) }));
  const known = graveKeys(before);
  const left = graveKeys(result);
  const cures = !left.has(key) && [...left].every((one) => known.has(one));
  return { cures, left, result };
}

const withCopper = (job: Job, { conductors }: ProofInput): Job => ({
  ...job,
  wires: job.wires.map((wire) => {
    const make = conductors.get(wire.id)?.makeId;
    return wire.size !== undefined || make === undefined
      ? wire
      : { ...wire, size: { make, basis: "chosen" as const } };
  }),
});
