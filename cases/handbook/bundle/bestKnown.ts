import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { parse } from "csv-parse/sync";

/** Radius of the best known rim over the radius of the circles, by count. For tests and bench only: no engine reads it. */
export const bestKnownRimRatio: ReadonlyMap<number, number> = new Map(
  readBestKnown().map((row) => [Number(row.count), Number(row.rimRatio)]),
);

function readBestKnown(): readonly Readonly<Record<string, string>>[] {
  const path = fileURLToPath(new URL("./best-known.csv", import.meta.url));
  return parse(readFileSync(path, "utf8"), { columns: true });
}
