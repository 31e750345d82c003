import { presentParts } from "../asFound.ts";
import { batteriesOf } from "../batteryOf.ts";
import type { Operation } from "../edit/operation.ts";
import type { Job, Part } from "../job.ts";
import { loadsOf } from "../loadsOf.ts";
import { metalNets } from "../metalNets.ts";
import { pinRef } from "../pinsOf.ts";
import { ALWAYS, allOf, type Terms } from "./terms.ts";

/**
 * What says when the loads on a pin are to work: in each of the circuit's own ways while its live is there. A load of which something is said already gets these
 * ways beside the old ones.
 */
export function intentsFor(
  job: Job,
  pin: string,
  own: Terms,
  live: Terms,
  nextId: (prefix: string) => string,
): readonly Operation[] {
  // A live that is never there would leave nothing to be checked: then the circuit's own switches say it, and the check finds the load dead.
  const when = allOf(live.length === 0 ? ALWAYS : live, own);
  return loadsOf(job)
    .filter(({ pins }) => pins.includes(pin))
    .map(({ ref }): Operation => {
      const known = job.intents.find(({ load }) => load === ref);
      if (known === undefined) {
        return { op: "add", list: "intents", item: { id: nextId("INT"), load: ref, when } };
      }
      return setWhen(known.id, [...known.when, ...when]);
    });
}

/**
 * Loads that a switch now stands before, over whatever contacts, fuses and relays lie between: all that is said of when they work holds only with that switch
 * so. Where some other contact may join them to a live post, or to earth, nothing is changed: they do not hang on this switch alone.
 *
 * @param pin  what the switch feeds
 */
export function intentsOnlyWhile(
  job: Job,
  knob: string,
  pin: string,
  allowed: readonly string[],
): readonly Operation[] {
  const others = presentParts(job).filter(({ id }) => id !== knob);
  const { netOf, isEarth } = metalNets(job, others.flatMap(passable));
  const isLive = batteriesOf(job).some(({ livePost }) => netOf(livePost) === netOf(pin));
  if (isLive || isEarth(pin)) return [];
  const fed = new Set(
    loadsOf(job)
      .filter(({ pins }) => pins.some((one) => netOf(one) === netOf(pin)))
      .map(({ ref }) => ref),
  );
  return job.intents
    .filter(({ load }) => fed.has(load))
    .map(({ id, when }) =>
      setWhen(
        id,
        when.map((term) => ({ ...term, positions: { ...term.positions, [knob]: allowed } })),
      ),
    );
}

/** Pairs of pins a part may let current pass between without doing work, in some position. */
function passable(part: Part): readonly (readonly [string, string])[] {
  const pair = ([a, b]: readonly [string, string]) =>
    [pinRef(part.id, a), pinRef(part.id, b)] as const;
  switch (part.kind) {
    case "fuse":
      return [pair([part.pins[0]!.id, part.pins[1]!.id])];
    case "switch":
      return part.positions.flatMap(({ joins }) => joins.map(pair));
    case "relay":
      return [...part.made, ...part.rest].map(pair);
    case "flasher":
      return [pair([part.feed, part.out])];
    case "meter":
      return part.measures === "amps" ? [pair(part.between)] : [];
    case "diode":
    case "rectifier":
      return part.junctions.map(({ anode, cathode }) => pair([anode, cathode]));
    default:
      return [];
  }
}

const setWhen = (id: string, value: readonly unknown[]): Operation => ({
  op: "set",
  list: "intents",
  id,
  path: ["when"],
  value,
});
