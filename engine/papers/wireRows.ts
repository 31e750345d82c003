import type { Wire } from "../job/index.ts";
import type { CheckWireRow } from "../judge/index.ts";
import { printNumber, printStranding } from "../units/index.ts";
import type { PaperInput } from "./paperInput.ts";

/** A wire of the loom with everything the check found of it. */
export interface WireRowPair {
  readonly wire: Wire;
  readonly row: CheckWireRow;
}

/** Wires that will be on the machine, in the order of their numbers (figures inside an id count as figures: W9 before W10). */
export function wiresInOrder({ job, check }: PaperInput): readonly WireRowPair[] {
  const rows = new Map(check.wires.map((row) => [row.wire, row]));
  return job.wires
    .flatMap((wire) => {
      const row = rows.get(wire.id);
      return row === undefined ? [] : [{ wire, row }];
    })
    .sort((left, right) => compareNumbers(numberOf(left.wire), numberOf(right.wire)));
}

/** What is printed on the wire. */
export const numberOf = (wire: Wire): string => wire.number ?? wire.id;

/** Letters by letters, figures by value: the order a person looks a number up in. */
export function compareNumbers(left: string, right: string): number {
  const [a, b] = [left, right].map((text) => text.match(/\d+|\D+/g) ?? []);
  for (let i = 0; i < Math.max(a!.length, b!.length); i++) {
    const [x, y] = [a![i] ?? "", b![i] ?? ""];
    if (x === y) continue;
    const both = /^\d/.test(x) && /^\d/.test(y);
    return (both ? Number(x) - Number(y) : 0) || (x < y ? -1 : 1);
  }
  return 0;
}

/** "1.0 mm²" with the stranding under it. */
export const sizeText = (
  row: CheckWireRow,
): { readonly area: string; readonly stranding: string } => ({
  area: `${printNumber(row.areaMm2, row.areaMm2 < 10 ? 1 : 0)} mm²`,
  stranding: `${printStranding({ strandCount: row.strandCount, strandDiameterMm: row.strandDiameterMm })} ${row.wall}`,
});

/** A length for the bench; what is not known says so instead of reading as nothing. */
export const lengthText = (mm: number | null): string =>
  mm === null ? "measure" : printNumber(mm, 0);
