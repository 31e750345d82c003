import { presentParts } from "../asFound.ts";
import { batteriesOf } from "../batteryOf.ts";
import type { Job, Part } from "../job.ts";
import { metalNets } from "../metalNets.ts";
import { pinRef } from "../pinsOf.ts";
import { ALWAYS, allOf, noneOf, shortened, type Terms } from "./terms.ts";

/** Counted steps after which it is not told. */
const MOST_STEP_COUNT = 50_000;

/** What may or may not let current from net `a` to net `b`. */
interface Gate {
  readonly a: string;
  readonly b: string;
  /** Null: not told. */
  readonly when: (busy: ReadonlySet<string>) => Terms | null;
  /** Current passes from `a` to `b` only. */
  readonly isOneWay?: boolean;
}

/**
 * In which positions of the switches a battery's live post reaches a pin: over copper, fuses, ammeters, contacts, relays as their coils are fed or not, diodes
 * the way they pass, and a flasher while its contact is closed. No load is passed.
 *
 * @returns none where it never does; null where it cannot be told: over a relay that the flasher works, or where there are too many ways
 */
export function liveWhen(job: Job, pin: string): Terms | null {
  const parts = presentParts(job);
  const nets = metalNets(job, parts.flatMap(through));
  const live = new Set(batteriesOf(job).map(({ livePost }) => nets.netOf(livePost)));
  const positions = new Map(
    parts.flatMap((part) =>
      part.kind === "switch" ? [[part.id, part.positions.map(({ id }) => id)] as const] : [],
    ),
  );
  const gates: Gate[] = [];
  let stepCount = 0;
  const search = (
    start: string,
    goal: (net: string) => boolean,
    isTowardsLive: boolean,
    busy: ReadonlySet<string>,
  ): Terms | null => {
    const found: Terms[number][] = [];
    const visit = (net: string, seen: ReadonlySet<string>, sofar: Terms): boolean => {
      if (++stepCount > MOST_STEP_COUNT) return false;
      if (goal(net)) {
        found.push(...sofar);
        return true;
      }
      if (live.has(net) || nets.isEarth(net)) return true;
      for (const { a, b, when, isOneWay } of gates) {
        const next = a === net ? b : b === net ? a : null;
        if (next === null || seen.has(next)) continue;
        // Looked for from the far end: a diode is passed against its direction on the way to the source.
        if (isOneWay && (isTowardsLive ? b !== net : a !== net)) continue;
        const terms = when(busy);
        if (terms === null) return false;
        const both = allOf(sofar, terms);
        if (both.length > 0 && !visit(next, new Set([...seen, next]), both)) return false;
      }
      return true;
    };
    const first = nets.netOf(start);
    return visit(first, new Set([first]), ALWAYS) ? found : null;
  };
  for (const part of parts) gates.push(...gatesOf(job, part, nets.netOf, { coilTerms, positions }));
  function coilTerms(relay: string, pins: readonly string[], busy: ReadonlySet<string>) {
    if (busy.has(relay)) return [];
    const within = new Set([...busy, relay]);
    const one = (from: string, to: string): Terms | null => {
      const fed = search(from, (net) => live.has(net), true, within);
      const back = search(to, nets.isEarth, false, within);
      return fed === null || back === null ? null : allOf(fed, back);
    };
    const [a, b] = [pins[0]!, pins[1]!];
    const [there, other] = [one(a, b), one(b, a)];
    return there === null || other === null ? null : [...there, ...other];
  }
  const terms = search(pin, (net) => live.has(net), true, new Set());
  return terms === null ? null : shortened(terms, positions);
}

/** Pairs of pins that are one for a current: the ends of a fuse, of an ammeter. */
function through(part: Part): readonly (readonly [string, string])[] {
  const pair = (a: string, b: string) => [pinRef(part.id, a), pinRef(part.id, b)] as const;
  if (part.kind === "fuse") return [pair(part.pins[0]!.id, part.pins[1]!.id)];
  if (part.kind === "meter" && part.measures === "amps") return [pair(...part.between)];
  return [];
}

interface Relays {
  /** When the coil is fed. */
  readonly coilTerms: (
    relay: string,
    pins: readonly string[],
    busy: ReadonlySet<string>,
  ) => Terms | null;
  /** Every position of each switch. */
  readonly positions: ReadonlyMap<string, readonly string[]>;
}

function gatesOf(
  job: Job,
  part: Part,
  netOf: (pin: string) => string,
  relays: Relays,
): readonly Gate[] {
  const net = (pin: string): string => netOf(pinRef(part.id, pin));
  switch (part.kind) {
    case "switch":
      return part.positions.flatMap(({ id, joins }) =>
        joins.map(([a, b]) => ({
          a: net(a),
          b: net(b),
          when: () => [{ positions: { [part.id]: [id] } }],
        })),
      );
    case "relay": {
      const coil = part.coil.pins.map((pin) => pinRef(part.id, pin));
      const pulled = (busy: ReadonlySet<string>) => relays.coilTerms(part.id, coil, busy);
      // A coil fed over its own resting contact alone would chatter: that way does not count.
      const rests = (busy: ReadonlySet<string>): Terms | null => {
        const terms = busy.has(part.id) ? null : pulled(busy);
        return terms === null ? (busy.has(part.id) ? [] : null) : noneOf(terms, relays.positions);
      };
      return [
        ...part.made.map(([a, b]) => ({ a: net(a), b: net(b), when: pulled })),
        ...part.rest.map(([a, b]) => ({ a: net(a), b: net(b), when: rests })),
      ];
    }
    case "flasher":
      return [
        {
          a: net(part.feed),
          b: net(part.out),
          when: () => [{ positions: {}, flash: "on" as const }],
        },
      ];
    case "diode":
    case "rectifier": {
      const isPositiveEarth = job.supply.earthPolarity === "positive";
      return part.junctions.map(({ anode, cathode }) => ({
        // The live pole's side of a diode is its cathode where the positive post is earthed.
        a: net(isPositiveEarth ? cathode : anode),
        b: net(isPositiveEarth ? anode : cathode),
        when: () => ALWAYS,
        isOneWay: true,
      }));
    }
    default:
      return [];
  }
}
