import type { EndFitting } from "../size/index.ts";
import { figure } from "../tables/index.ts";
import { printNumber } from "../units/index.ts";
import type { PaperInput } from "./paperInput.ts";
import { terminalName } from "./terminalText.ts";
import { compareNumbers } from "./wireRows.ts";

/** One kind of terminal: how many the job takes and how many to buy. */
export interface TerminalTotal {
  readonly name: string;
  readonly count: number;
  /** A tenth more, one at least: crimps are pulled and some go wrong. */
  readonly buyCount: number;
  /** Sizes of the copper that goes in. */
  readonly note: string;
  /** One of its kind. */
  readonly fitting: EndFitting;
}

/** Terminals of the wires that are new, by kind, each barrel once however many wires it holds. */
export function terminalTotals({
  job,
  fittings,
}: Pick<PaperInput, "job" | "fittings">): readonly TerminalTotal[] {
  const sparePercent = figure("cutAllowances", "terminal-spares", "value").value;
  const fresh = new Set(job.wires.filter(({ status }) => status === "new").map(({ id }) => id));
  const groups = new Map<string, EndFitting[]>();
  for (const fitting of fittings) {
    const isFirst = fitting.sharedWith.every((other) => fitting.wire < other || !fresh.has(other));
    if (
      !fresh.has(fitting.wire) ||
      !isFirst ||
      fitting.kind === "soldered" ||
      fitting.kind === "splice"
    )
      continue;
    const name = terminalName(fitting);
    groups.set(name, [...(groups.get(name) ?? []), fitting]);
  }
  return [...groups]
    .sort(([left], [right]) => compareNumbers(left, right))
    .map(([name, list]) => ({
      name,
      count: list.length,
      buyCount: list.length + Math.max(1, Math.ceil((list.length * sparePercent) / 100)),
      note: `for ${[...new Set(list.map(({ barrelAreaMm2 }) => barrelAreaMm2))]
        .sort((a, b) => a - b)
        .map((areaMm2) => printNumber(areaMm2, areaMm2 % 1 === 0 ? 0 : 2))
        .join(", ")} mm²`,
      fitting: list[0]!,
    }));
}
