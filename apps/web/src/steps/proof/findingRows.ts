import type { CheckResult, Finding, ProveResult } from "@copperwright/engine";
import { GRAVEST_FIRST } from "../../frame/verdictWord.ts";
import type { Whereabouts } from "./whereabouts.ts";

export type SpokenFinding = Finding & { readonly message: string };

/** A finding in the list: of the check, or of the full proof. */
export interface FindingRow {
  readonly id: string;
  readonly finding: SpokenFinding;
  readonly from: "check" | "proof";
}

/** Both lists as one, the most dangerous first; what somebody answers for stands last. The same thing told by both is told once. */
export function findingRows(
  check: CheckResult | null,
  proof: ProveResult | null,
): readonly FindingRow[] {
  const rows: FindingRow[] = [];
  const met = new Map<string, number>();
  const add = (finding: SpokenFinding, from: FindingRow["from"]): void => {
    const key = `${finding.code} ${finding.subject.kind}:${finding.subject.id}`;
    if (rows.some((row) => row.finding.message === finding.message)) return;
    const count = met.get(key) ?? 0;
    met.set(key, count + 1);
    rows.push({ id: count === 0 ? key : `${key} ${count + 1}`, finding, from });
  };
  for (const finding of check?.findings ?? []) add(finding, "check");
  for (const finding of proof?.findings ?? []) add(finding, "proof");
  const rank = ({ finding, from }: FindingRow): number =>
    (finding.accepted === null ? 0 : 100) +
    10 * GRAVEST_FIRST.indexOf(finding.severity) +
    (from === "check" ? 0 : 1);
  return rows
    .map((row, k) => ({ row, k }))
    .sort((a, b) => rank(a.row) - rank(b.row) || a.k - b.k)
    .map(({ row }) => row);
}

/** Every name a finding goes by: its subject, what else it names, and the parts its loads and pins belong to. */
export function namesOf({ subject, also }: SpokenFinding): readonly string[] {
  const all = [subject.id, ...also];
  const owners = all.flatMap((id) => [id.split(":")[0]!, id.split(".")[0]!]);
  return [...new Set([...all, ...owners])];
}

/** Findings that touch a thing: they name it, or lie at its station. */
export function touching(
  rows: readonly FindingRow[],
  thing: string,
  where: Whereabouts | null,
): readonly FindingRow[] {
  const isStation = where?.stations[thing]?.[0] === thing;
  return rows.filter(({ finding }) => {
    const names = namesOf(finding);
    if (names.includes(thing)) return true;
    if (where === null) return false;
    if (isStation) return stationsOf(finding, where).includes(thing);
    return names.some((name) => where.runs[name]?.includes(thing));
  });
}

/** Where on the machine a finding is: the stations of its subject, else of what else it names. */
export function stationsOf(finding: SpokenFinding, { stations }: Whereabouts): readonly string[] {
  const [subject = "", ...others] = namesOf(finding);
  const own = stations[subject] ?? stations[subject.split(":")[0]!] ?? [];
  if (own.length > 0) return own;
  return [...new Set(others.flatMap((name) => stations[name] ?? []))].slice(0, 2);
}

/** First sentence, and the rest. A point inside a figure or a name ends nothing. */
export function headlineOf(message: string): readonly [string, string] {
  const end = /[.:] (?=[A-Z0-9])/.exec(message);
  if (end === null) return [message.replace(/\.$/, ""), ""];
  return [message.slice(0, end.index), message.slice(end.index + 2)];
}

/** The fuse a finding is about, if one: named by its figures, its subject, or guarding its wire. */
export function fuseOf(finding: SpokenFinding, where: Whereabouts | null): string | null {
  const { subject, numbers, code } = finding;
  if (subject.kind === "fuse") return subject.id;
  // A fuse may guard such a wire from another side; its plot would say the contrary of the finding.
  if (/\bunfused\b/.test(code)) return null;
  const named = [numbers.cut, numbers.fuses, numbers.fuse].find((one) => typeof one === "string");
  if (typeof named === "string" && /^[A-Za-z0-9_+-]+$/.test(named) && named !== "nothing") {
    return named;
  }
  const [guard] = where?.fuses[subject.id] ?? [];
  return subject.kind === "wire" || subject.kind === "flyLead" ? (guard ?? null) : null;
}
