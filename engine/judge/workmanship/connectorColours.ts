import { pinRef, type Wire } from "../../job/index.ts";
import type { Finding } from "../../messages/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { colourKey } from "./colourKey.ts";
import { type WireNets, wireNets } from "./wireNets.ts";

interface InCavity {
  readonly connector: string;
  readonly cavity: string;
  readonly half: "plug" | "socket";
  readonly wire: Wire;
  readonly purpose: string;
}

/** One colour twice in one half of a connector, for two things: the next person swaps them. Earths and phases may be swapped. */
export const connectorColours: Judge = (design) => {
  const nets = wireNets(design.job);
  return [...design.job.connectors]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .flatMap((connector) => {
      const cavities = cavitiesOf(design, nets, connector.id);
      const byColour = new Map<string, InCavity[]>();
      for (const one of cavities) {
        if (one.wire.colour === undefined) continue;
        const key = `${one.half} ${colourKey(one.wire.colour)}`;
        byColour.set(key, [...(byColour.get(key) ?? []), one]);
      }
      const clashes = [...byColour.values()].filter(
        (same) =>
          new Set(same.map(({ purpose }) => purpose)).size > 1 && !mayBeSwapped(design, same),
      );
      return clashes.length === 0 ? [] : clashing(connector.id, clashes);
    });
};

function clashing(connector: string, clashes: readonly (readonly InCavity[])[]): Finding {
  const words = new Map(
    clashes.map((same) => [
      colourKey(same[0]!.wire.colour!),
      same.map(({ cavity, wire }) => `${wire.id} in ${cavity}`).join(" and "),
    ]),
  );
  const differs = clashes.some((same) => new Set(same.map(({ wire }) => wire.circuit)).size > 1);
  return findingOf({
    code: "connector-same-colour",
    severity: differs ? "mend" : "advise",
    subject: { kind: "connector", id: connector },
    also: clashes.flatMap((same) => same.map(({ wire }) => wire.id)),
    numbers: { same: [...words].map(([colour, wires]) => `${colour}: ${wires}`).join("; ") },
    limit: null,
  });
}

/** Both cavities lead to the two pins of one part that does not care which way round it is joined. */
function mayBeSwapped(design: Design, same: readonly InCavity[]): boolean {
  const [first, second, ...more] = same.map((one) => plainPartsBeyond(design, one));
  if (first === undefined || second === undefined || more.length > 0) return false;
  return [...first].some((part) => second.has(part));
}

const PLAIN: ReadonlySet<string> = new Set(["switch", "horn", "heater", "resistor", "coil"]);

/** Parts of two like pins that a wire of either half leads to. */
function plainPartsBeyond(
  { job, pins, wiresAt }: Design,
  { connector, cavity }: InCavity,
): ReadonlySet<string> {
  const wires = ["p", "s"].flatMap((half) => wiresAt.get(pinRef(connector, cavity + half)) ?? []);
  const parts = wires
    .flatMap(({ from, to }) => [from, to])
    .flatMap((pin) => {
      const place = pins.get(pin);
      return place?.ownerKind === "part" ? [place.part] : [];
    });
  const bonded = new Set(job.bonds.flatMap(({ from, to }) => [from, to]));
  const isPlain = parts.filter(
    ({ id, kind, pins: own, polarity }) =>
      PLAIN.has(kind) &&
      own.length === 2 &&
      polarity !== "one-way" &&
      !own.some((pin) => bonded.has(pinRef(id, pin.id))),
  );
  return new Set(isPlain.map(({ id }) => id));
}

function cavitiesOf(
  { pins, wiresAt }: Design,
  nets: WireNets,
  connector: string,
): readonly InCavity[] {
  return [...wiresAt].flatMap(([pin, wires]) => {
    const place = pins.get(pin);
    if (place?.ownerKind !== "connector" || place.connector.id !== connector) return [];
    const { cavity, half } = place;
    return wires.map((wire) => ({ connector, cavity, half, wire, purpose: nets.purposeOf(pin) }));
  });
}
