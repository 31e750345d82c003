import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { readJob, writeJob } from "../../engine/job/index.ts";

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Demos and reference machines: every job that is kept in canonical form. */
function jobFiles(): readonly string[] {
  const demos = readdirSync(`${root}/demos`)
    .filter((name) => name.endsWith(".json"))
    .map((name) => `${root}/demos/${name}`);
  const machines = readdirSync(`${root}/cases/reference-machines`, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => `${root}/cases/reference-machines/${entry.name}/job.json`);
  return [...demos, ...machines];
}

/**
 * Writes jobs back in their canonical text, after editing by hand or a change of the schema:
 * `npx tsx tools/demos/rewriteJobs.ts [FILE ...]`, all of them with no FILE. What cannot be read is told and left as it is.
 */
const files = process.argv.length > 2 ? process.argv.slice(2) : jobFiles();
for (const file of files) {
  const text = readFileSync(file, "utf8");
  const read = readJob(text);
  if (!read.ok) {
    process.exitCode = 1;
    for (const { line, message } of read.refusals) console.error(`${file}:${line}: ${message}`);
    continue;
  }
  const canonical = writeJob(read.job);
  if (canonical !== text) writeFileSync(file, canonical);
  console.log(
    `${canonical === text ? "as it was" : "rewritten"}  ${canonical.length} bytes  ${file}`,
  );
}
