import type { CheckResult, Job, SpokenFinding } from "@copperwright/engine";
import { printQuantity } from "@copperwright/engine";
import { printTable } from "../printTable.ts";
import { wrapText } from "../wrapText.ts";

const ORDER = ["stop", "not-proven", "mend", "advise"] as const;
const VERDICTS = {
  fit: "FIT: nothing has to be put right.",
  mend: "MEND: put these right before it is used.",
  stop: "STOP: do not connect the battery.",
  "not-proven": "NOT PROVEN: a safety question rests on a figure nobody has confirmed.",
} as const;

/** The verdict first, then what has to be put right, worst first, then the tables a person asks for next. */
export function printCheck(job: Job, result: CheckResult): string {
  const { counts } = result;
  const head = [
    wrapText(`${job.name}, revision ${job.revision}`, 100),
    `${job.supply.nominalV} V, ${job.supply.earthPolarity} earth, ${counted(result.wires.length, "wire or fly lead", "wires and fly leads")}, ${counted(result.fuses.length, "fuse", "fuses")}`,
    "",
    VERDICTS[result.verdict],
    `${counts.stop} stop, ${counts.notProven} not proven, ${counts.mend} mend, ${counts.advise} advise`,
    result.lengthsComplete
      ? ""
      : "Some lengths are not known: drops and totals that need them are left open.",
    result.settled ? "" : "Sizes and fuses did not settle: the last round is shown.",
  ].filter((line, i) => line !== "" || i === 2);
  const findings = ORDER.flatMap((severity) =>
    result.findings.filter((finding) => finding.severity === severity),
  );
  return `${[head.join("\n"), ...findings.map(printFinding), printFuses(result)].join("\n\n")}\n`;
}

const counted = (count: number, one: string, many: string): string =>
  `${count} ${count === 1 ? one : many}`;

/** Where a limit can be looked up, and how far it may be leaned on. */
const tableOf = ({ table, row, confidence }: NonNullable<SpokenFinding["limit"]>): string =>
  table === "job" ? confidence : `${confidence}, tables/${table} ${row}`;

function printFinding(finding: SpokenFinding): string {
  const accepted = finding.accepted
    ? `Accepted by ${finding.accepted.by}: ${finding.accepted.reason}`
    : null;
  const source = finding.limit
    ? `Limit: ${finding.limit.source}, ${finding.limit.place} (${tableOf(finding.limit)}).`
    : null;
  const also = finding.also.length > 0 ? `Also: ${finding.also.join(", ")}.` : null;
  const again = finding.reproduce ? `See it: copperwright ${finding.reproduce.join(" ")}` : null;
  const title = `${finding.severity}  ${finding.subject.id}  [${finding.code}]`;
  const lines = [finding.message, also, source, accepted, again].filter((line) => line !== null);
  return [title, ...lines.map((line) => wrapText(line, 100, "    "))].join("\n");
}

function printFuses({ fuses }: CheckResult): string {
  if (fuses.length === 0) return "No fuses.";
  const amps = (value: number | null) => (value === null ? "?" : printQuantity(value, "A"));
  const rows = fuses.map((fuse) => [
    fuse.fuse,
    amps(fuse.ratingA),
    amps(fuse.worstLoadA),
    fuse.windowMinA === null || fuse.windowMaxA === null
      ? "none"
      : `${amps(fuse.windowMinA)} to ${amps(fuse.windowMaxA)}`,
    String(fuse.protects.length),
    fuse.weakestWire ?? "",
    fuse.dies.join(" "),
  ]);
  return printTable(
    ["fuse", "rating", "worst load", "window", "wires", "weakest", "stops when it blows"],
    rows,
    { right: [1, 2, 4] },
  );
}
