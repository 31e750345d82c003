/** Lists of a job that record what was done and read on the machine, and change nothing of what it is. */
const RECORDS = new Set(["build", "tests"]);
const DEEPEST = 8;
const MOST = 10_000;

interface Step {
  readonly op?: unknown;
  readonly list?: unknown;
  readonly operations?: unknown;
}

/** Whether operations do nothing but tick and note readings. What cannot be read as an operation does not. */
export function areTicks(operations: unknown): boolean {
  if (!Array.isArray(operations)) return false;
  const waiting = operations.map((step) => ({ step: step as Step | null, depth: 0 }));
  let seen = 0;
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const { step, depth } = next;
    seen++;
    if (typeof step !== "object" || step === null || seen > MOST || depth > DEEPEST) return false;
    if (step.op === "batch") {
      if (!Array.isArray(step.operations)) return false;
      for (const inner of step.operations) waiting.push({ step: inner, depth: depth + 1 });
      continue;
    }
    if (step.op !== "add" && step.op !== "remove" && step.op !== "set") return false;
    if (typeof step.list !== "string" || !RECORDS.has(step.list)) return false;
  }
  return seen > 0;
}
