import { figureOrNull } from "../tables/index.ts";

interface Stated {
  readonly value: number;
}

/**
 * Resistance of a contact, Ω: the value stated for it, else the row of tables/contacts, new or aged. An aged contact is never
 * better than the stated one. Null where the table says there is none (paint, rubber).
 */
export function contactOhm(row: string, stated: Stated | undefined, aged: boolean): number | null {
  const milli = figureOrNull("contacts", row, aged ? "agedMohm" : "newMohm");
  const tableOhm = milli === null ? null : milli.value / 1000;
  if (stated === undefined) return tableOhm;
  return aged ? Math.max(stated.value, tableOhm ?? stated.value) : stated.value;
}
