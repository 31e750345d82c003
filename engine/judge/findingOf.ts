import type { Figure, Finding, Severity, Subject } from "../messages/index.ts";

/** What a judge has to say; everything it leaves out takes the usual value. */
export interface FindingFields {
  readonly code: string;
  readonly severity: Severity;
  readonly subject: Subject;
  readonly also?: readonly string[];
  readonly state?: Finding["state"];
  readonly numbers?: Finding["numbers"];
  readonly limit?: Figure | null;
  /** Every figure the judgement rests on beside the limit; a remembered one is told apart. */
  readonly figures?: readonly Figure[];
  /** False where the judgement would be the same without the remembered figures among `figures`. Absent: it would not. */
  readonly restsOnFigures?: boolean;
  readonly working?: Finding["working"];
  readonly remedies?: Finding["remedies"];
  readonly reproduce?: readonly string[] | null;
}

/**
 * A finding with its defaults filled in. A `stop` that rests on a remembered figure alone becomes `not-proven`: memory may
 * ask a question, it may not answer one.
 */
export function findingOf(fields: FindingFields): Finding {
  const limit = fields.limit ?? null;
  const figures = limit === null ? (fields.figures ?? []) : [limit, ...(fields.figures ?? [])];
  const remembered = figures.some((figure) => figure.confidence === "memory");
  const leansOnMemory = remembered && fields.restsOnFigures !== false;
  const severity = leansOnMemory && fields.severity === "stop" ? "not-proven" : fields.severity;
  return {
    code: fields.code,
    severity,
    subject: fields.subject,
    also: [...new Set(fields.also ?? [])].sort(),
    state: fields.state ?? null,
    numbers: fields.numbers ?? {},
    limit,
    leansOnMemory: remembered,
    acceptable: severity !== "stop",
    accepted: null,
    working: fields.working ?? [],
    remedies: fields.remedies ?? [],
    reproduce: fields.reproduce ?? null,
  };
}
