import type { Job, Part } from "../job/index.ts";
import type { Conductor, Conductors } from "../route/index.ts";

const ohm = (value: number) => ({ value, basis: "stated" as const });

/** A wire on the bench: 1 m of something with 0.02 ohm. */
export function benchConductors(job: Job, lengthMm: number | null = 1000): Conductors {
  const one = (id: string, kind: Conductor["kind"], from: string, to: string): Conductor => ({
    id,
    kind,
    from,
    to,
    circuit: null,
    lengthMm,
    makeId: "bench",
    sizedBy: "person",
    areaMm2: 1,
    strandCount: 32,
    strandDiameterMm: 0.2,
    conductorDiameterMm: 1.3,
    odMm: 2,
    wall: "thin",
    insulation: "pvc",
    classC: 105,
    ohmPerM20Max: 0.02,
    ohmPerM20Min: 0.018,
    rated: null,
    ambientC: 25,
  });
  const tails = job.parts.flatMap((part) =>
    part.pins.flatMap(({ id, flyLead }) =>
      flyLead ? [one(`${part.id}.${id}`, "flyLead", `${part.id}.${id}`, `${part.id}.${id}~`)] : [],
    ),
  );
  const wires = job.wires.map(({ id, from, to }) => one(id, "wire", from, to));
  return new Map([...wires, ...tails].map((conductor) => [conductor.id, conductor]));
}

/** The least machine that has one of everything: battery, fuse, switch, relay with diode, two lamps sharing an earth, LED. */
export function benchJob(filled: Partial<Job> = {}): Job {
  return {
    copperwrightJob: 1,
    id: "B",
    name: "bench",
    revision: 1,
    date: "2026-01-01",
    machine: { maker: "none", model: "none", kind: "motorcycle" },
    supply: { nominalV: 12, earthPolarity: "negative", ignition: "none" },
    colours: { scheme: "own", letters: "iec" },
    stations: [],
    runs: [],
    bodies: [
      {
        id: "FR",
        name: "frame",
        kind: "frame",
        points: [{ id: "1", ohm: ohm(0.001) }, { id: "2" }],
      },
    ],
    bonds: [],
    parts: benchParts(),
    joints: [{ id: "J", kind: "crimped-splice", ways: ["1", "2", "3"], ohm: ohm(0.002) }],
    connectors: [],
    circuits: [{ id: "C", name: "any", dropClass: "accessory" }],
    looms: [],
    wires: benchWires().map(([id, from, to]) => ({ id, from, to, circuit: "C", status: "new" })),
    intents: [
      { id: "stop", load: "REAR:STOP-E", when: [{ positions: { SW: ["ON"] } }] },
      { id: "tail", load: "REAR:TAIL-E", when: [{ positions: { TSW: ["ON"] } }] },
    ],
    states: [],
    exclusions: [],
    decisions: {},
    build: [],
    tests: [],
    attachments: [],
    layout: {},
    ...filled,
  };
}

function benchWires(): readonly (readonly [string, string, string])[] {
  return [
    ["W1", "BAT.+", "F.1"],
    ["W2", "F.2", "J.1"],
    ["W3", "J.2", "SW.A"],
    ["W4", "SW.B", "REAR.STOP"],
    ["W5", "SW.B", "REL.85"],
    ["W6", "J.3", "REL.30"],
    ["W7", "REL.87", "LED.A"],
    ["W8", "J.3", "TSW.A"],
    ["W9", "TSW.B", "REAR.TAIL"],
    ["E1", "REAR.E", "FR.1"],
    ["E2", "REL.86", "FR.2"],
    ["E3", "LED.E", "FR.2"],
    ["E4", "BAT.-", "FR.1"],
  ];
}

const pins = (...ids: string[]) => ids.map((id) => ({ id }));

function benchParts(): readonly Part[] {
  const onOff = (
    a: string,
    b: string,
  ): readonly [{ id: string; joins: [] }, { id: string; joins: [[string, string]] }] => [
    { id: "OFF", joins: [] },
    { id: "ON", joins: [[a, b]] },
  ];
  return [
    {
      id: "BAT",
      name: "battery",
      kind: "battery",
      pins: pins("+", "-"),
      positivePin: "+",
      negativePin: "-",
      chemistry: "flooded",
      nominalV: 12,
      capacityAh: ohm(10),
      restV: ohm(12.6),
      internalOhm: ohm(0.02),
    },
    {
      id: "F",
      name: "fuse",
      kind: "fuse",
      pins: pins("1", "2"),
      ratingA: 10,
      marking: "continuous",
      type: "blade",
    },
    {
      id: "SW",
      name: "switch",
      kind: "switch",
      driven: "hand",
      pins: pins("A", "B"),
      positions: onOff("A", "B"),
      rest: "OFF",
    },
    {
      id: "TSW",
      name: "tail switch",
      kind: "switch",
      driven: "hand",
      pins: pins("A", "B"),
      positions: onOff("A", "B"),
      rest: "OFF",
    },
    ...benchLoads(),
  ];
}

function benchLoads(): readonly Part[] {
  return [
    {
      id: "REL",
      name: "relay",
      kind: "relay",
      pins: pins("30", "87", "85", "86"),
      coil: { pins: ["85", "86"], ohm: ohm(85), diode: true },
      made: [["30", "87"]],
      rest: [],
    },
    {
      id: "REAR",
      name: "stop and tail",
      kind: "lamp",
      source: "filament",
      pins: pins("STOP", "TAIL", "E"),
      filaments: [
        { pins: ["STOP", "E"], ratedV: 12, ratedW: 21 },
        { pins: ["TAIL", "E"], ratedV: 12, ratedW: 5 },
      ],
    },
    {
      id: "LED",
      name: "LED",
      kind: "lamp",
      source: "led",
      pins: pins("A", "E"),
      filaments: [{ pins: ["A", "E"], ratedV: 12, ratedW: 6 }],
    },
  ];
}
