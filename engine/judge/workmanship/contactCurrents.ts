import type { Finding } from "../../messages/index.ts";
import { type EndFitting, endFittings } from "../../size/index.ts";
import { figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { operateCommand } from "../stateArguments.ts";
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
  const hot = endFittings(design.job, design.conductors)
    .filter(({ pin }) => classLimit(design, pin) === null || !isOverClass(design, pin))
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
  const state = design.worst.conductors.get(fitting.wire)?.state ?? null;
  return findingOf({
    code: "terminal-current",
    severity,
    subject: { kind: "wire", id: fitting.wire },
    also: group.map((one) => one.fitting.wire).filter((id) => id !== fitting.wire),
    numbers: {
      terminal: fitting.terminal,
      pin: fitting.pin,
      currentA,
      areaMm2: design.conductors.get(fitting.wire)!.areaMm2,
      intermittentA: rating.intermittentA,
    },
    limit: rating.limit,
    working: rating.working,
    reproduce: state === null ? null : operateCommand(design.job, state),
  });
}

/** Cavities and ways of bullet joints that carry more than their class: above a figure seen in print mend, above a remembered one advice. */
export const cavityCurrent: Judge = (design) => {
  const over = [...design.worst.joints]
    .flatMap(([ref, { currentA, state }]) => {
      const limit = classLimitOf(design, ref);
      if (limit === null || currentA <= limit.value * (1 + ROUNDING_RATIO)) return [];
      return [{ ref, currentA, state, limit }];
    })
    .sort((a, b) => b.currentA / b.limit.value - a.currentA / a.limit.value);
  const byOwner = new Map<string, typeof over>();
  for (const one of over) {
    const owner = one.ref.slice(0, one.ref.indexOf("."));
    byOwner.set(owner, [...(byOwner.get(owner) ?? []), one]);
  }
  return [...byOwner].map(([owner, ways]) => {
    const { ref, currentA, state, limit } = ways[0]!;
    const isConnector = design.job.connectors.some(({ id }) => id === owner);
    return findingOf({
      code: "cavity-current",
      severity: limit.confidence === "memory" ? "advise" : "mend",
      subject: { kind: isConnector ? "connector" : "joint", id: owner },
      also: ways.map((one) => one.ref),
      numbers: { way: ref, currentA, class: limit.row },
      limit,
      reproduce: state === null ? null : operateCommand(design.job, state),
    });
  });
};

/** What one way of a connector or of a multi-way bullet may carry. @param ref  CONNECTOR.CAVITY or JOINT.WAY. */
function classLimitOf({ job }: Design, ref: string) {
  const owner = ref.slice(0, ref.indexOf("."));
  const connector = job.connectors.find(({ id }) => id === owner);
  if (connector !== undefined) return figure("connectorClasses", connector.kind, "maxA");
  const joint = job.joints.find(({ id }) => id === owner);
  return joint?.kind === "multiway-bullet"
    ? figure("connectorClasses", "bullet-joint", "maxA")
    : null;
}

/** CONNECTOR.CAVITY of a pin of one half. */
function wayOf({ pins }: Design, pin: string): string {
  const place = pins.get(pin);
  return place?.ownerKind === "connector" ? `${place.connector.id}.${place.cavity}` : pin;
}

const classLimit = (design: Design, pin: string) => classLimitOf(design, wayOf(design, pin));

function isOverClass(design: Design, pin: string): boolean {
  const currentA = design.worst.joints.get(wayOf(design, pin))?.currentA ?? 0;
  return currentA > classLimit(design, pin)!.value * (1 + ROUNDING_RATIO);
}
