import type { Finding } from "../../messages/index.ts";
import type { EndFitting } from "../../size/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { operateCommand, stateOf } from "../stateArguments.ts";
import { overClass } from "./cavityCurrent.ts";
import { type TerminalRating, terminalRating } from "./terminalRating.ts";

/** Share of a limit that is rounding and not current. */
const ROUNDING_RATIO = 1e-6;

interface Heated {
  readonly fitting: EndFitting;
  readonly rating: TerminalRating;
  readonly currentA: number;
}

/**
 * Terminals that carry more than the wire on them lets them pass away. Above the continuous figure is advice, because the part's
 * own figure replaces the table; above the figure for 45 minutes in the hour, mend.
 */
export const terminalCurrent: Judge = (design) => {
  const isOver = overClass(design);
  const hot = design.fittings
    .filter(({ pin }) => !isOver(pin))
    .flatMap((fitting): readonly Heated[] => {
      const currentA = design.worst.conductors.get(fitting.wire)?.currentA ?? 0;
      const areaMm2 = design.conductors.get(fitting.wire)?.areaMm2 ?? 0;
      const rating = fitting.terminal === null ? null : terminalRating(fitting.terminal, areaMm2);
      if (rating === null || currentA <= rating.limit.value * (1 + ROUNDING_RATIO)) return [];
      return [{ fitting, rating, currentA }];
    })
    .sort((a, b) => b.currentA / b.rating.limit.value - a.currentA / a.rating.limit.value);
  const isMend = ({ rating, currentA }: Heated): boolean =>
    rating.intermittentA !== null && currentA > rating.intermittentA;
  return [hot.filter(isMend), hot.filter((one) => !isMend(one))].flatMap((group) =>
    group.length === 0 ? [] : heatedFinding(design, group, group.some(isMend) ? "mend" : "advise"),
  );
};

function heatedFinding(
  design: Design,
  group: readonly Heated[],
  severity: "mend" | "advise",
): Finding {
  const { fitting, rating, currentA } = group[0]!;
  const worst = design.worst.conductors.get(fitting.wire);
  const state = worst?.state ?? null;
  return findingOf({
    code: "terminal-current",
    severity,
    subject: { kind: "wire", id: fitting.wire },
    also: group.map((one) => one.fitting.wire).filter((id) => id !== fitting.wire),
    state: state === null ? null : stateOf(design.job, state),
    numbers: {
      terminal: fitting.terminal,
      pin: fitting.pin,
      currentA,
      areaMm2: design.conductors.get(fitting.wire)!.areaMm2,
      intermittentA: rating.intermittentA,
    },
    limit: rating.limit,
    working: rating.working,
    reproduce: state === null ? null : operateCommand(design.job, state, worst?.batteryV ?? null),
  });
}
