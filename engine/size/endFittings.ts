import { type Job, type PinPlace, pinsOf, type Wire } from "../job/index.ts";
import { allowancesOf, type Conductors } from "../route/index.ts";
import { wires as makes } from "../tables/index.ts";
import { crimpPullOf } from "./crimpPull.ts";
import type { EndFitting, FittingBasis } from "./endFitting.ts";
import { namedTerminalFit, ringFit, type TerminalFit, terminalFitByArea } from "./terminalFit.ts";

const BLADES = ["blade-6.3", "blade-6.3-large"];
const SPLICE: TerminalFit = {
  kind: "splice",
  terminal: null,
  size: "splice barrel for the copper that goes in",
  tool: "splice tool and die of the barrel",
  wireFromMm2: null,
  wireToMm2: null,
  problem: null,
};
const SOLDERED: TerminalFit = { ...SPLICE, kind: "soldered", size: "no terminal", tool: "iron" };

/** What somebody has to know of an end before a terminal can be named. */
interface EndQuestion {
  readonly wire: Wire;
  readonly end: "from" | "to";
  readonly place: PinPlace | undefined;
  readonly sharedWith: readonly string[];
  readonly areaMm2: number;
  readonly odMm: number | null;
}

type Chosen = { readonly fit: TerminalFit; readonly basis: FittingBasis };

/**
 * Both ends of every wire that will be on the machine, by wire id and then `from`, `to`.
 *
 * What a person fixed stands. Otherwise what the pin offers decides (its stud, the terminal on the part's fly lead, the connector's class, the kind of
 * joint); where nothing is stated it is the 6.3 mm blade of the wire's size, marked `area`: somebody has to look at the part.
 */
export function endFittings(job: Job, conductors: Conductors): readonly EndFitting[] {
  const pins = pinsOf(job);
  const present = job.wires.filter((wire) => conductors.has(wire.id));
  const wiresAt = new Map<string, string[]>();
  for (const wire of present) {
    for (const pin of [wire.from, wire.to]) {
      const wires = wiresAt.get(pin) ?? [];
      wires.push(wire.id);
      wiresAt.set(pin, wires);
    }
  }
  for (const wires of wiresAt.values()) wires.sort();
  const bullet = usualBullet(job);
  const { stripMm } = allowancesOf(job);
  const pullOf = keptByArea(crimpPullOf);
  const ends = [...present]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .flatMap((wire) => (["from", "to"] as const).map((end) => ({ wire, end })));
  return ends.map(({ wire, end }) => {
    const place = pins.get(wire[end]);
    const others = (wiresAt.get(wire[end]) ?? []).filter((id) => id !== wire.id);
    const sharedWith = sharesBarrel(place) ? others : [];
    const question: EndQuestion = {
      wire,
      end,
      place,
      sharedWith,
      areaMm2: [wire.id, ...sharedWith].reduce((sum, id) => sum + nominalMm2(id, conductors), 0),
      odMm: conductors.get(wire.id)?.odMm ?? null,
    };
    return fitted(question, chosenFor(question, bullet), { stripMm, conductors, pullOf });
  });
}

/** A question of one area, its answers kept: a loom has few sizes and many ends. */
function keptByArea<T>(ask: (areaMm2: number) => T): (areaMm2: number) => T {
  const known = new Map<number, T>();
  return (areaMm2) => {
    const before = known.get(areaMm2);
    if (before !== undefined) return before;
    const answer = ask(areaMm2);
    known.set(areaMm2, answer);
    return answer;
  };
}

/** Wires on one pin go into one barrel, except where each brings its own ring or way. */
const sharesBarrel = (place: PinPlace | undefined): boolean =>
  place !== undefined && place.ownerKind !== "body" && studAt(place) === null;

/** Size as a barrel is sold for it: the make's nominal one, else the copper counted. */
function nominalMm2(id: string, conductors: Conductors): number {
  const conductor = conductors.get(id)!;
  return makes.find((row) => row.id === conductor.makeId)?.nominalMm2 ?? conductor.areaMm2;
}

function chosenFor(question: EndQuestion, bullet: string): Chosen {
  const { wire, end, areaMm2, odMm } = question;
  const stated = wire[`${end}End`]?.terminal;
  if (stated !== undefined) {
    return { fit: namedTerminalFit(stated, areaMm2, odMm), basis: "person" };
  }
  return offered(question, bullet) ?? { fit: bladeOrRing(areaMm2, odMm), basis: "area" };
}

/** By what the pin offers; null where it says nothing. */
function offered({ place, areaMm2, odMm }: EndQuestion, bullet: string): Chosen | null {
  if (place === undefined) return null;
  const stud = studAt(place);
  if (stud !== null) return { fit: ringFit(stud, areaMm2), basis: "stud" };
  switch (place.ownerKind) {
    case "connector":
      return { fit: cavityFit(place.connector.kind, bullet, areaMm2, odMm), basis: "connector" };
    case "body":
      return { fit: ringFit(null, areaMm2), basis: "area" };
    case "joint":
      return jointFit(place.joint.kind, bullet, areaMm2, odMm);
    case "part": {
      const terminal = place.part.pins.find(({ id }) => id === place.pinId)?.flyLead?.terminal;
      if (terminal === undefined) {
        const isBattery = place.part.kind === "battery";
        return isBattery ? { fit: ringFit(null, areaMm2), basis: "area" } : null;
      }
      const same = terminal === "blade-6.3" ? BLADES : [terminal];
      const fit = terminal.startsWith("ring-")
        ? ringFit(terminal.slice("ring-".length), areaMm2)
        : terminalFitByArea(same, areaMm2, odMm);
      return { fit, basis: "fly-lead" };
    }
  }
}

function jointFit(kind: string, bullet: string, areaMm2: number, odMm: number | null): Chosen {
  switch (kind) {
    case "multiway-bullet":
      return { fit: namedTerminalFit(bullet, areaMm2, odMm), basis: "joint" };
    case "ring-stack":
      return { fit: ringFit(null, areaMm2), basis: "joint" };
    case "bus":
      return { fit: bladeOrRing(areaMm2, odMm), basis: "area" };
    case "crimped-splice":
      return { fit: SPLICE, basis: "joint" };
    default:
      return { fit: SOLDERED, basis: "soldered-joint" };
  }
}

function cavityFit(
  kind: string,
  bullet: string,
  areaMm2: number,
  odMm: number | null,
): TerminalFit {
  if (kind === "bullet-joint") return namedTerminalFit(bullet, areaMm2, odMm);
  if (kind === "block-2.8") return namedTerminalFit("blade-2.8", areaMm2, odMm);
  if (kind === "block-6.3") return terminalFitByArea(BLADES, areaMm2, odMm);
  return namedTerminalFit(kind, areaMm2, odMm);
}

/** Copper no blade takes sits on a screw; which one has to be seen. */
function bladeOrRing(areaMm2: number, odMm: number | null): TerminalFit {
  const blade = terminalFitByArea(BLADES, areaMm2, odMm);
  return blade.problem === "above-range" ? ringFit(null, areaMm2) : blade;
}

function studAt(place: PinPlace): string | null {
  if (place.ownerKind === "part")
    return place.part.pins.find(({ id }) => id === place.pinId)?.stud ?? null;
  if (place.ownerKind === "body")
    return place.body.points.find(({ id }) => id === place.pinId)?.stud ?? null;
  return null;
}

/** The bullet the machine's own fly leads end in most; without any, the British one under a British scheme, else 3.9 mm. */
function usualBullet(job: Job): string {
  const counts = new Map<string, number>();
  for (const { flyLead } of job.parts.flatMap((part) => part.pins)) {
    const terminal = flyLead?.terminal;
    if (terminal?.startsWith("bullet-")) counts.set(terminal, (counts.get(terminal) ?? 0) + 1);
  }
  const most = [...counts].sort(([a, n], [b, m]) => m - n || (a < b ? -1 : 1))[0];
  return most?.[0] ?? (job.colours.scheme.startsWith("british") ? "bullet-4.7" : "bullet-3.9");
}

function fitted(
  { wire, end, place, sharedWith, areaMm2 }: EndQuestion,
  { fit, basis }: Chosen,
  from: {
    readonly stripMm: number;
    readonly conductors: Conductors;
    readonly pullOf: typeof crimpPullOf;
  },
): EndFitting {
  const { stripMm, conductors, pullOf } = from;
  const stated = wire[`${end}End`];
  const joining = stated?.joining ?? (fit.kind === "soldered" ? "soldered" : "crimped");
  const smallestMm2 = Math.min(...[wire.id, ...sharedWith].map((id) => nominalMm2(id, conductors)));
  const pull = joining === "crimped" ? pullOf(smallestMm2) : null;
  return {
    wire: wire.id,
    end,
    pin: wire[end],
    sharedWith,
    ...fit,
    half: halfOf(place, fit, basis),
    joining,
    sleeveFirst: sleeveOf(fit.kind),
    stripMm,
    barrelAreaMm2: areaMm2,
    pullN: pull?.forceN ?? null,
    pull: pull?.figure ?? null,
    chosenBy: basis === "person" ? "person" : "engine",
    basis,
  };
}

const sleeveOf = (kind: EndFitting["kind"]): EndFitting["sleeveFirst"] =>
  kind === "sealed" ? "seal" : "sleeve";

function halfOf(
  place: PinPlace | undefined,
  { kind }: TerminalFit,
  basis: FittingBasis,
): EndFitting["half"] {
  if (basis === "fly-lead") return kind === "ring" ? null : "mate of the fly lead";
  if (place?.ownerKind === "connector")
    return place.half === "plug" ? "plug contact" : "socket contact";
  return kind === "blade" ? "receptacle" : null;
}
