import type { Wire } from "../../job/index.ts";
import type { Finding } from "../../messages/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { colourKey } from "./colourKey.ts";
import { type WireNets, wireNets } from "./wireNets.ts";

interface InCavity {
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
        (same) => new Set(same.map(({ purpose }) => purpose)).size > 1,
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

function cavitiesOf(
  { pins, wiresAt }: Design,
  nets: WireNets,
  connector: string,
): readonly InCavity[] {
  return [...wiresAt].flatMap(([pin, wires]) => {
    const place = pins.get(pin);
    if (place?.ownerKind !== "connector" || place.connector.id !== connector) return [];
    const { cavity, half } = place;
    return wires.map((wire) => ({ cavity, half, wire, purpose: nets.purposeOf(pin) }));
  });
}
