import { type Figure, figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { operateCommand, stateOf } from "../stateArguments.ts";

/** Share of a limit that is rounding and not current. */
const ROUNDING_RATIO = 1e-6;

/**
 * Cavities of connectors and ways of bullet joints that carry more than their class: above a figure seen in print mend, above a
 * remembered one advice. One finding a connector.
 */
export const cavityCurrent: Judge = (design) => {
  const { job, worst } = design;
  return holdersOf(design).flatMap(({ id, kind, ways, limit }) => {
    const over = ways
      .map((way) => ({ way, most: worst.joints.get(way) }))
      .filter(({ most }) => (most?.currentA ?? 0) > limit.value * (1 + ROUNDING_RATIO))
      .sort((a, b) => b.most!.currentA - a.most!.currentA || (a.way < b.way ? -1 : 1));
    const [first, ...others] = over;
    if (first?.most === undefined) return [];
    const { currentA, state, batteryV } = first.most;
    return findingOf({
      code: "cavity-current",
      severity: limit.confidence === "memory" ? "advise" : "mend",
      subject: { kind, id },
      also: others.map(({ way }) => way),
      state: state === null ? null : stateOf(job, state),
      numbers: { way: first.way, currentA, class: limit.row },
      limit,
      reproduce: state === null ? null : operateCommand(job, state, batteryV),
    });
  });
};

/** Answers whether the way a pin belongs to already carries too much. */
export function overClass(design: Design): (pin: string) => boolean {
  const limits = new Map<string, number>();
  for (const { ways, limit } of holdersOf(design)) {
    for (const way of ways) if (!limits.has(way)) limits.set(way, limit.value);
  }
  return (pin) => {
    const place = design.pins.get(pin);
    const way = place?.ownerKind === "connector" ? `${place.owner}.${place.cavity}` : pin;
    const limitA = limits.get(way);
    const currentA = design.worst.joints.get(way)?.currentA ?? 0;
    return limitA !== undefined && currentA > limitA * (1 + ROUNDING_RATIO);
  };
}

interface Holder {
  readonly id: string;
  readonly kind: "connector" | "joint";
  /** CONNECTOR.CAVITY or JOINT.WAY. */
  readonly ways: readonly string[];
  readonly limit: Figure;
}

/** Connectors and multi-way bullets with what one way of them may carry, by id. */
function holdersOf({ job }: Design): readonly Holder[] {
  const connectors = job.connectors.map(
    ({ id, kind, cavities }): Holder => ({
      id,
      kind: "connector",
      ways: cavities.map((cavity) => `${id}.${cavity}`),
      limit: figure("connectorClasses", kind, "maxA"),
    }),
  );
  const bullets = job.joints
    .filter(({ kind }) => kind === "multiway-bullet")
    .map(
      ({ id, ways }): Holder => ({
        id,
        kind: "joint",
        ways: ways.map((way) => `${id}.${way}`),
        limit: figure("connectorClasses", "bullet-joint", "maxA"),
      }),
    );
  return [...connectors, ...bullets].sort((a, b) => (a.id < b.id ? -1 : 1));
}
