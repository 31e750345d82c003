import type { Finding } from "../../messages/index.ts";
import { starterTurns } from "../declaredResults.ts";
import { findingOf } from "../findingOf.ts";
import type { Judge } from "../judge.ts";
import { operateCommand, stateInWords, stateOf } from "../stateArguments.ts";

/** Loads that work in a state the job says they should be dead in. */
export const strayLoads: Judge = ({ job, declared }) => {
  const found = new Map<string, Finding>();
  const counts = new Map<string, number>();
  for (const result of declared) {
    if (!result.converged || starterTurns(job, result)) continue;
    for (const { load, works, expected, shareRatio } of result.loads) {
      if (!works || expected !== false) continue;
      counts.set(load, (counts.get(load) ?? 0) + 1);
      if (found.has(load)) continue;
      const finding = findingOf({
        code: "load-lit-when-off",
        severity: "mend",
        subject: { kind: "load", id: load },
        state: stateOf(job, result.state),
        numbers: {
          stateName: result.name,
          positions: stateInWords(job, result.state),
          sharePercent: 100 * shareRatio,
        },
        reproduce: operateCommand(job, result.state),
      });
      found.set(load, finding);
    }
  }
  return [...found.values()].map((finding) => {
    const count = counts.get(finding.subject.id)!;
    return { ...finding, numbers: { ...finding.numbers, moreCount: count > 1 ? count - 1 : null } };
  });
};
