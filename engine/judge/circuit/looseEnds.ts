import { loadsOf, type Part, pinRef, presentParts } from "../../job/index.ts";
import type { Finding } from "../../messages/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";

/** Pins that lead nowhere, and parts both of whose pins are the same place. */
export const looseEnds: Judge = (design) => [...emptyPins(design), ...bridgedParts(design)];

/** Pins something inside the part needs, with no wire and no bond on them; all of the machine in one finding. */
function emptyPins({ job, wiresAt }: Design): readonly Finding[] {
  const bonded = new Set(job.bonds.flatMap(({ from, to }) => [from, to]));
  const empty = presentParts(job).flatMap((part) =>
    neededPins(part)
      .map((pin) => pinRef(part.id, pin))
      .filter((ref) => !wiresAt.has(ref) && !bonded.has(ref)),
  );
  const first = empty[0];
  if (first === undefined) return [];
  return [
    findingOf({
      code: "pins-with-nothing",
      severity: "advise",
      subject: { kind: "pin", id: first },
      also: empty.slice(1),
      numbers: { pinCount: empty.length },
    }),
  ];
}

/** Pins a part cannot do without: the ends of its loads, coils, fuse elements and posts. */
function neededPins(part: Part): readonly string[] {
  const isInside = (pin: string): boolean =>
    part.pins.find(({ id }) => id === pin)?.role === "internal";
  const ends = loadsOf({ parts: [part] } as never).flatMap(({ pins }) =>
    pins.map((ref) => ref.slice(part.id.length + 1)),
  );
  const own =
    part.kind === "relay"
      ? part.coil.pins
      : part.kind === "fuse"
        ? part.pins.map(({ id }) => id)
        : part.kind === "battery"
          ? [part.positivePin, part.negativePin]
          : part.kind === "flasher"
            ? [part.feed, part.out]
            : [];
  return [...new Set([...own, ...ends])].filter((pin) => !isInside(pin));
}

/** Loads and fuses that wire alone joins round: a current need not go through them. */
function bridgedParts({ job, compiled }: Design): readonly Finding[] {
  const isOneNet = netsOfWire(compiled);
  const fuses = presentParts(job).flatMap((part) => {
    const [a, b] = part.pins;
    if (part.kind !== "fuse" || a === undefined || b === undefined) return [];
    const pins = [pinRef(part.id, a.id), pinRef(part.id, b.id)] as const;
    return [{ kind: "fuse" as const, id: part.id, pins }];
  });
  const loads = loadsOf(job).map(({ ref, pins }) => ({ kind: "load" as const, id: ref, pins }));
  return [...fuses, ...loads]
    .filter(({ pins }) => isOneNet(pins[0], pins[1]))
    .map(({ kind, id }) =>
      findingOf({
        code: kind === "fuse" ? "fuse-bridged" : "load-bridged",
        severity: kind === "fuse" ? "stop" : "mend",
        subject: { kind, id },
      }),
    );
}

/** Whether wire, joints and bonds alone join two pins. */
function netsOfWire({ jobNetwork }: Design["compiled"]): (a: string, b: string) => boolean {
  const { elements, nodes } = jobNetwork;
  const netOf = Int32Array.from(nodes.names, (_, node) => node);
  const find = (node: number): number => {
    let top = node;
    while (netOf[top] !== top) top = netOf[top]!;
    netOf[node] = top;
    return top;
  };
  for (const { kind, nodes: ends, law } of elements) {
    const isJoin = kind === "wire" || kind === "joint" || kind === "bond";
    const conducts = law.kind === "ohm" && law.ohm < INSULATING_OHM;
    if (isJoin && conducts) netOf[find(ends[0])] = find(ends[1]);
  }
  const node = (pin: string): number => nodes.indexOf.get(pin)!;
  return (a, b) => find(node(a)) === find(node(b));
}

/** A painted or rubber bond stands in the network as a resistance above this, Ω. */
const INSULATING_OHM = 1e6;
