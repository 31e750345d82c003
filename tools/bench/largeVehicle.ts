import { seededRandom } from "../../engine/geometry/index.ts";
import type { Job, Part, Wire } from "../../engine/job/index.ts";

/** Switches in a zone: each works two lamps and brings six wires, so a zone is some fifty wires. */
const SWITCHES = 8;

interface Drafts {
  readonly parts: Part[];
  readonly joints: Job["joints"][number][];
  readonly wires: Wire[];
  readonly stations: Job["stations"][number][];
  readonly runs: Job["runs"][number][];
}

const pins = (...ids: readonly string[]) => ids.map((id) => ({ id }));
const estimated = (value: number) => ({ value, basis: "estimated" as const });

/**
 * A vehicle of about `wireCount` wires for measuring growth: a spine of zones, each behind its own fuse with groups of at most eight
 * switches, one switch to six wires. Lamp watts and run lengths are drawn from the seed; the same seed gives the same job.
 */
export function largeVehicle(wireCount: number, seed: number): Job {
  const random = seededRandom(seed);
  const zoneCount = Math.max(1, Math.round(wireCount / (6 * SWITCHES + 3)));
  const drafts: Drafts = { parts: [], joints: [], wires: [], stations: [], runs: [] };
  drafts.stations.push({ id: "S0", name: "battery" });
  drafts.parts.push({
    id: "BAT",
    kind: "battery",
    name: "battery 12 V 100 Ah",
    station: "S0",
    pins: pins("P", "N"),
    positivePin: "P",
    negativePin: "N",
    chemistry: "flooded",
    nominalV: 12,
    capacityAh: estimated(100),
    internalOhm: estimated(0.005),
  });
  const points = [{ id: "BAT" }];
  addWire(drafts, "E0", "BAT.N", "FR.BAT", "earth", "battery-25");
  for (let zone = 1; zone <= zoneCount; zone++) {
    addZone(drafts, zone, random);
    points.push({ id: `Z${zone}` });
  }
  return { ...frameOf(points), ...drafts } as unknown as Job;
}

function addWire(
  drafts: Drafts,
  id: string,
  from: string,
  to: string,
  circuit: string,
  make?: string,
): void {
  drafts.wires.push({
    id,
    from,
    to,
    circuit,
    status: "new",
    colour: circuit === "earth" ? { main: "black" } : { main: "red" },
    ...(make === undefined ? {} : { size: { make, basis: "chosen" as const } }),
  });
}

function addZone(drafts: Drafts, zone: number, random: () => number): void {
  const station = `S${zone}`;
  drafts.stations.push({ id: station, name: `zone ${zone}` });
  drafts.runs.push({
    id: `R${zone}`,
    from: zone <= 4 ? "S0" : `S${zone - 4}`,
    to: station,
    lengthMm: estimated(Math.round(300 + 500 * random())),
  });
  drafts.parts.push({
    id: `F${zone}`,
    kind: "fuse",
    name: `zone ${zone} fuse`,
    station: "S0",
    pins: pins("IN", "OUT"),
    ratingA: 10,
    marking: "continuous",
    type: "blade",
  });
  const ways = Array.from({ length: SWITCHES + 1 }, (_, i) => String(i));
  drafts.joints.push({ id: `B${zone}`, kind: "bus", station, ways });
  drafts.joints.push({
    id: `G${zone}`,
    kind: "bus",
    station,
    ways: Array.from({ length: 2 * SWITCHES + 1 }, (_, i) => String(i)),
  });
  addWire(drafts, `Z${zone}a`, "BAT.P", `F${zone}.IN`, "feed", "thin-2.0");
  addWire(drafts, `Z${zone}b`, `F${zone}.OUT`, `B${zone}.0`, "feed");
  addWire(drafts, `Z${zone}c`, `G${zone}.0`, `FR.Z${zone}`, "earth", "thin-2.5");
  for (let k = 1; k <= SWITCHES; k++) addSwitch(drafts, zone, k, random);
}

function addSwitch(drafts: Drafts, zone: number, k: number, random: () => number): void {
  const id = `${zone}_${k}`;
  const station = `S${zone}`;
  drafts.parts.push({
    id: `SW${id}`,
    kind: "switch",
    name: `zone ${zone} switch ${k}`,
    station,
    pins: pins("1", "2"),
    driven: "hand",
    positions: [
      { id: "OFF", joins: [] },
      { id: "ON", joins: [["1", "2"]] },
    ],
    rest: "OFF",
  });
  drafts.joints.push({ id: `J${id}`, kind: "crimped-splice", station, ways: ["1", "2", "3"] });
  addWire(drafts, `W${id}a`, `B${zone}.${k}`, `SW${id}.1`, "lights");
  addWire(drafts, `W${id}b`, `SW${id}.2`, `J${id}.1`, "lights");
  for (const [lamp, way] of [
    ["a", "2"],
    ["b", "3"],
  ] as const) {
    drafts.parts.push({
      id: `L${id}${lamp}`,
      kind: "lamp",
      name: `zone ${zone} lamp ${k}${lamp}`,
      station,
      pins: pins("L", "E"),
      source: "filament",
      filaments: [{ pins: ["L", "E"], ratedV: 12, ratedW: [2, 4, 5][Math.floor(3 * random())]! }],
    });
    addWire(drafts, `W${id}${lamp}1`, `J${id}.${way}`, `L${id}${lamp}.L`, "lights");
    addWire(
      drafts,
      `W${id}${lamp}2`,
      `L${id}${lamp}.E`,
      `G${zone}.${lamp === "a" ? k : k + SWITCHES}`,
      "earth",
    );
  }
}

/** Everything about the vehicle that does not grow. */
function frameOf(points: readonly { readonly id: string }[]): Omit<Job, keyof Drafts> {
  return {
    copperwrightJob: 1,
    id: "large-vehicle",
    name: "Generated vehicle for measuring growth",
    revision: 1,
    date: "2026-01-01",
    machine: { maker: "none", model: "generated", kind: "other" },
    supply: { nominalV: 12, earthPolarity: "negative", ignition: "none" },
    colours: { scheme: "none", letters: "iec" },
    bodies: [{ id: "FR", name: "frame", kind: "frame", points }],
    bonds: [],
    connectors: [],
    circuits: [
      { id: "feed", name: "zone feeds", dropClass: "main-feed" },
      { id: "lights", name: "lights", dropClass: "tail-signal" },
      { id: "earth", name: "earths", dropClass: "earth" },
    ],
    looms: [],
    intents: [],
    states: [],
    exclusions: [],
    decisions: {},
    build: [],
    tests: [],
    attachments: [],
    layout: {},
  } as unknown as Omit<Job, keyof Drafts>;
}
