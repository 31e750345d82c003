import type { Figure, Finding, Severity, Subject } from "../messages/index.ts";
import { type QuickState, restPositions } from "../operate/index.ts";
import { operateArguments } from "./operateArguments.ts";
import type { ProofPlan } from "./proofPlan.ts";

export interface ProofFindingFields {
  readonly code: string;
  readonly severity: Severity;
  readonly subject: Subject;
  readonly also?: readonly string[];
  readonly numbers?: Finding["numbers"];
  readonly limit?: Figure | null;
  readonly leansOnMemory?: boolean;
  readonly state?: QuickState | null;
  readonly reproduce?: readonly string[] | null;
  readonly remedies?: Finding["remedies"];
}

/** A finding of the proof with what it leaves out filled in; the state both as arguments and in words. */
export function proofFinding({ input: { job } }: ProofPlan, fields: ProofFindingFields): Finding {
  const { state = null } = fields;
  return {
    code: fields.code,
    severity: fields.severity,
    subject: fields.subject,
    also: [...new Set(fields.also ?? [])].sort(),
    state: state === null ? null : stateOf(job, state),
    numbers: {
      ...(state === null ? {} : { stateWords: stateWords(job, state) }),
      ...fields.numbers,
    },
    limit: fields.limit ?? null,
    leansOnMemory: fields.leansOnMemory ?? false,
    acceptable: fields.severity !== "stop",
    accepted: null,
    working: [],
    remedies: fields.remedies ?? [],
    reproduce: fields.reproduce ?? (state === null ? null : operateArguments(job, state)),
  };
}

/** What of a state is not at rest. */
export function stateOf(
  job: ProofPlan["input"]["job"],
  state: QuickState,
): Readonly<Record<string, string>> {
  const mode = state.engine?.mode ?? "stopped";
  const rest = restPositions(job, mode);
  const moved = Object.entries(state.positions ?? {})
    .filter(([part, position]) => rest[part] !== position)
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return {
    ...Object.fromEntries(moved),
    ...(mode === "stopped" ? {} : { engine: mode }),
    ...(state.flash === "on" ? { flash: "on" } : {}),
  };
}

function stateWords(job: ProofPlan["input"]["job"], state: QuickState): string {
  const entries = Object.entries(stateOf(job, state));
  if (entries.length === 0) return "everything at rest";
  return entries.map(([part, position]) => `${part}=${position}`).join(", ");
}
