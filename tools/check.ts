import { spawnSync } from "node:child_process";
import { readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { ROOT } from "./sourceFiles.ts";

interface Step {
  readonly name: string;
  readonly words: readonly string[];
}

const report = join(tmpdir(), `copperwright-tests-${process.pid}.json`);
function vitest(...words: readonly string[]): readonly string[] {
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${report}`];
  return ["npx", "vitest", "run", ...words, ...reporters];
}

const STEPS: readonly Step[] = [
  { name: "types", words: ["npx", "tsc", "--noEmit"] },
  { name: "lint and format", words: ["npx", "biome", "check", "."] },
  { name: "generated files", words: ["npx", "tsx", "tools/generate.ts", "--compare"] },
  { name: "tests", words: vitest("--exclude=apps/web/tests/**") },
  // One file after the other: each has a server and a browser, and hands that wait.
  {
    name: "tests in a browser",
    words: vitest("apps/web/tests", "--no-file-parallelism", "--testTimeout=180000"),
  },
];

/** Runs every check; returns how many passed and failed, tests counted one by one. */
export function runChecks(): { passed: number; failed: number } {
  let passed = 0;
  let failed = 0;
  for (const { name, words } of STEPS) {
    console.error(`== ${name}`);
    const [command, ...rest] = words;
    const { status } = spawnSync(command!, rest, {
      cwd: ROOT,
      stdio: ["ignore", "inherit", "inherit"],
    });
    if (!words.includes("vitest")) {
      if (status === 0) passed += 1;
      else failed += 1;
      continue;
    }
    const counts = readCounts();
    passed += counts.passed;
    failed += counts.failed + (status !== 0 && counts.failed === 0 ? 1 : 0);
  }
  return { passed, failed };
}

function readCounts(): { passed: number; failed: number } {
  try {
    const { numPassedTests, numFailedTests, numPendingTests, numTodoTests } = JSON.parse(
      readFileSync(report, "utf8"),
    );
    rmSync(report, { force: true });
    // A test that was skipped was not passed: it counts as failed, so nothing is skipped in silence.
    return { passed: numPassedTests, failed: numFailedTests + numPendingTests + numTodoTests };
  } catch {
    return { passed: 0, failed: 0 };
  }
}

/** Prints the closing line and ends the process. */
export function close({ passed, failed }: { passed: number; failed: number }): never {
  console.log(`${passed} passed, ${failed} failed`);
  process.exit(failed === 0 && passed > 0 ? 0 : 1);
}

if (process.argv[1]?.endsWith("check.ts")) close(runChecks());
