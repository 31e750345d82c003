import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";
import { parse } from "csv-parse/sync";
import { readTable } from "./readTable.ts";
import { writeTableModule, writeTablesRegistry } from "./writeTableModule.ts";

const root = fileURLToPath(new URL("../../", import.meta.url));
const tablesFolder = "engine/tables";

/**
 * Every generated file of engine/tables, made from engine/tables/data/*.csv and not yet written.
 *
 * @returns path from the root of the repository -> text, so that a check can compare it with what is committed.
 * @throws  Error where a table is blank, repeated, unsourced or not a number somewhere.
 */
export function generateTables(): Map<string, string> {
  const data = join(root, tablesFolder, "data");
  const titles = readSources(readFileSync(join(data, "sources.csv"), "utf8"));
  const names = readdirSync(data)
    .filter((file) => file.endsWith(".csv") && file !== "sources.csv")
    .map((file) => file.slice(0, -".csv".length))
    .sort();
  const files = new Map<string, string>();
  for (const name of names) {
    const text = readFileSync(join(data, `${name}.csv`), "utf8");
    const table = readTable(name, text, new Set(titles.keys()));
    files.set(`${tablesFolder}/${name}.generated.ts`, writeTableModule(table, titles));
  }
  files.set(`${tablesFolder}/allTables.generated.ts`, writeTablesRegistry(names));
  return files;
}

/** sources.csv: id -> what the source is, in words. */
export function readSources(text: string): Map<string, string> {
  const [headings, ...rows]: string[][] = parse(text);
  if (headings?.join() !== "id,title") throw new Error("sources: headings must be id,title");
  const titles = new Map<string, string>();
  for (const [id = "", title = ""] of rows) {
    if (id.trim() === "" || title.trim() === "") throw new Error(`sources: blank in row "${id}"`);
    if (titles.has(id)) throw new Error(`sources: row "${id}" appears twice`);
    titles.set(id, title);
  }
  return titles;
}

const startedFrom = process.argv[1];
if (startedFrom !== undefined && import.meta.url === pathToFileURL(startedFrom).href) {
  for (const [path, text] of generateTables()) writeFileSync(join(root, path), text);
}
