import { type Conversion, type Job, type PricedShopping, printNumber } from "@copperwright/engine";
import { printTable } from "../printTable.ts";
import { wrapText } from "../wrapText.ts";
import { printStock } from "./printStock.ts";

const amps = (currentA: number | null): string =>
  currentA === null ? "" : `${printNumber(currentA, 2)} A`;
const rpm = (speedRpm: number | null): string =>
  speedRpm === null ? "none" : `${printNumber(Math.ceil(speedRpm / 10) * 10, 0)} rpm`;

/** What `convert` shows: the plan, its price where a list was given, and where the new job was written. */
export interface ShownConversion {
  readonly conversion: Conversion;
  readonly cost: PricedShopping | null;
  readonly out: string | null;
}

/** A conversion in words: every part with its reason, fuses, wires, balance, and what the check says of the result. */
export function printConvert(
  before: Job,
  { conversion: plan, cost, out }: ShownConversion,
): string {
  const { supply } = plan.job;
  const parts = [
    wrapText(
      `${before.name}: from ${before.supply.nominalV} V, ${before.supply.earthPolarity} earth to ${supply.nominalV} V, ${supply.earthPolarity} earth`,
      100,
    ),
    partsOf(plan),
    fusesOf(plan),
    wiresOf(plan),
    balancesOf(plan),
    cost === null ? "" : printStock(cost),
    verdictOf(plan),
    out === null ? "No file was asked for: give --out FILE to keep the new job." : `Wrote ${out}`,
  ];
  return `${parts.filter((part) => part !== "").join("\n\n")}\n`;
}

function partsOf({ parts }: Conversion): string {
  const order = ["replace", "rewind", "adjust", "keep"];
  const sorted = parts.toSorted(
    (a, b) => order.indexOf(a.action) - order.indexOf(b.action) || (a.part < b.part ? -1 : 1),
  );
  return sorted
    .map((row) => {
      const now =
        row.beforeA === null ? "" : ` (${amps(row.beforeA)} before, ${amps(row.afterA)} after)`;
      return wrapText(
        `${row.action.padEnd(8)} ${row.part}, ${row.name}${now}: ${row.reason}.`,
        100,
        "         ",
      ).trimStart();
    })
    .join("\n");
}

function fusesOf({ fuses }: Conversion): string {
  const rows = fuses.map((row) => [
    row.fuse,
    amps(row.loadBeforeA),
    amps(row.loadAfterA),
    amps(row.beforeA),
    amps(row.afterA),
  ]);
  if (rows.length === 0) return "";
  return printTable(["fuse", "carried", "carries", "was", "becomes"], rows, {
    right: [1, 2, 3, 4],
  });
}

function wiresOf({ wires }: Conversion): string {
  const changed = wires.filter(
    (row) => row.newFindings.length > 0 || row.makeId !== row.makeAfterId,
  );
  const most = wires.reduce((sum, row) => Math.max(sum, row.afterA ?? 0), 0);
  const kept = `${wires.length - changed.length} wires stay; the most any carries is then ${amps(most)}.`;
  const rows = changed.map((row) => [
    row.wire,
    amps(row.beforeA),
    amps(row.afterA),
    row.makeId === row.makeAfterId ? "stays" : `${row.makeId} -> ${row.makeAfterId}`,
    row.newFindings.join(" "),
  ]);
  if (rows.length === 0) return kept;
  return `${kept}\n${printTable(["wire", "carried", "carries", "make", "finding"], rows, { right: [1, 2] })}`;
}

function balancesOf({ balances }: Conversion): string {
  const rows = balances.map((row) => [
    row.name,
    amps(row.demandBeforeA),
    amps(row.demandAfterA),
    rpm(row.beforeRpm),
    rpm(row.afterRpm),
  ]);
  if (rows.length === 0) return "";
  return printTable(["charging balance", "drew", "draws", "was at", "is at"], rows, {
    right: [1, 2, 3, 4],
  });
}

function verdictOf({ before, after }: Conversion): string {
  const worst = after.findings.filter(({ severity }) => severity !== "advise");
  const lines = worst.map((finding) => wrapText(`${finding.severity}: ${finding.message}`, 100));
  return [
    `Checked before: ${before.verdict}. Checked after: ${after.verdict}, ${after.counts.advise} to know.`,
    ...lines,
  ].join("\n");
}
