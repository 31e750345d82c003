import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { build } from "esbuild";
import { ROOT } from "../sourceFiles.ts";

const LARGEST = "brenzach-twin";
/** Runs before anything is measured: the code is then compiled. */
const WARM_COUNT = 12;
/** Edits of one kind that are measured, at most; evenly over all things of the kind. */
const EDIT_COUNT_MAX = 20;
/** One in so many is also checked afresh. */
const FRESH_EVERY = 5;
/** What an edit may take to lead to its verdict, ms. */
const TARGET_MS = 50;
const QUIET_TARGET_MS = 20;
const QUIET: ReadonlySet<string> = new Set([
  "note of a wire",
  "colour of a wire",
  "place on the drawing",
  "name of the job",
  "name of a part",
]);

type Engine = typeof import("../../engine/index.ts");
type Edits = typeof import("../../engine/judge/recheck/edits.fixture.ts");

/** The engine as a browser gets it: one file, no loader's marks in it. */
async function bundledEngine(folder: string): Promise<Engine & Pick<Edits, "EDITS">> {
  const entry = join(folder, "entry.ts");
  const from = (path: string): string => JSON.stringify(join(ROOT, path));
  writeFileSync(
    entry,
    `export * from ${from("engine/index.ts")};
     export { EDITS } from ${from("engine/judge/recheck/edits.fixture.ts")};`,
  );
  const outfile = join(folder, "engine.mjs");
  await build({
    entryPoints: [entry],
    bundle: true,
    format: "esm",
    platform: "node",
    mainFields: ["module", "main"],
    outfile,
    logLevel: "error",
    absWorkingDir: ROOT,
  });
  return import(pathToFileURL(outfile).href);
}

/** Time this thread was at work, ms: on a machine that others use a clock tells how busy they are. Without it, the clock. */
function workedMs(): number {
  try {
    return Number(readFileSync("/proc/thread-self/schedstat", "utf8").split(" ")[0]) / 1e6;
  } catch {
    return performance.now();
  }
}

function took<T>(times: number[], make: () => T): T {
  const from = workedMs();
  const made = make();
  times.push(workedMs() - from);
  return made;
}

function percentile(values: readonly number[], ratio: number): number {
  const rising = [...values].sort((left, right) => left - right);
  return rising[Math.min(rising.length - 1, Math.floor(rising.length * ratio))] ?? Number.NaN;
}

/** Warm checks after an edit of each kind, at work on one thread: half of them within p50, nineteen in twenty within p95. */
export async function run() {
  const folder = mkdtempSync(join(tmpdir(), "copperwright-edit-"));
  const engine = await bundledEngine(folder);
  const read = engine.readJob(readFileSync(join(ROOT, "demos", `${LARGEST}.json`), "utf8"));
  if (!read.ok) throw new Error(JSON.stringify(read.refusals[0]));
  const { job } = read;
  let before = engine.checkedJob(job);
  for (let k = 0; k < WARM_COUNT; k++) before = engine.checkedJob(job);
  const figures = Object.entries(engine.EDITS).flatMap(([kind, edit]) => {
    const times = { applied: [] as number[], again: [] as number[], fresh: [] as number[] };
    const step = Math.max(1, Math.floor(job.wires.length / EDIT_COUNT_MAX));
    for (let k = 0; k < job.wires.length; k += step) {
      const operation = edit(job, k);
      if (operation === null) continue;
      const applied = took(times.applied, () => engine.applyOperation(job, operation));
      if (!applied.ok) continue;
      took(times.again, () => engine.recheckedJob(before, applied.job));
      if (times.again.length % FRESH_EVERY !== 1) continue;
      took(times.fresh, () => engine.checkedJob(applied.job));
    }
    const target = QUIET.has(kind) ? QUIET_TARGET_MS : TARGET_MS;
    const againMs = percentile(times.again, 0.5);
    return [
      {
        name: `${kind} (${times.again.length} edits): applied, p50`,
        value: percentile(times.applied, 0.5),
        unit: "ms",
      },
      { name: `${kind}: checked again, p50`, value: againMs, unit: "ms" },
      {
        name: `${kind}: checked again, p95`,
        value: percentile(times.again, 0.95),
        unit: "ms",
        target,
      },
      { name: `${kind}: afresh, p50`, value: percentile(times.fresh, 0.5), unit: "ms" },
      {
        name: `${kind}: afresh / again`,
        value: percentile(times.fresh, 0.5) / againMs,
        unit: "ratio",
      },
    ];
  });
  rmSync(folder, { recursive: true, force: true });
  return figures;
}
