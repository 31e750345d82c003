import { type Job, metalNets, pinRef, presentParts } from "../../job/index.ts";

/** Pins that are one piece of metal: wires, joints, mated cavities, bodies and what fastens them. No switch, fuse or load is passed. */
export interface WireNets {
  /** Name of the net of a pin: the first of its pins by name. */
  readonly netOf: (pin: string) => string;
  readonly isEarth: (pin: string) => boolean;
  /** What a net is for, as far as swapping goes: all earth is one, and so are the phases of one generator. */
  readonly purposeOf: (pin: string) => string;
}

/** @param apart  id of a connector taken as unplugged; absent: all are mated. */
export function wireNets(job: Job, apart?: string): WireNets {
  const { netOf, isEarth } = metalNets(job, [], apart);
  const phaseOf = new Map([...phasePins(job)].map(([pin, part]) => [netOf(pin), part]));
  return {
    netOf,
    isEarth,
    purposeOf: (pin) => (isEarth(pin) ? "earth" : (phaseOf.get(netOf(pin)) ?? netOf(pin))),
  };
}

/** Pins of phase windings, with the generator they belong to. */
function phasePins(job: Job): ReadonlyMap<string, string> {
  return new Map(
    presentParts(job).flatMap((part) =>
      part.kind !== "generator"
        ? []
        : part.windings
            .filter(({ use }) => use === "phase")
            .flatMap(({ pins }) =>
              pins.map((pin) => [pinRef(part.id, pin), `phases of ${part.id}`] as const),
            ),
    ),
  );
}
