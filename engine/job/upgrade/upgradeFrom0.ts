import { fieldProblems } from "../check/fieldProblems.ts";
import { type Job0, jobSchema0 } from "./jobSchema0.ts";
import type { Upgraded } from "./upgradeJob.ts";

/** Version 0 said neither where a number came from nor by whom: what it held is an estimate until somebody measures. */
const estimated = (value: number) => ({ value, basis: "estimated" as const });

const lengthField = (mm: number | undefined) =>
  mm === undefined ? {} : { lengthMm: estimated(mm) };

/**
 * Version 0 to version 1: pole signs become words, bare numbers get the basis `estimated`, runs get ids in their order (R1, R2 …), the
 * one frame becomes a body, a switch gets its two-position contact table, every wire belongs to the one circuit "main" and was found.
 */
export function upgradeFrom0(value: unknown): Upgraded {
  const read = jobSchema0.safeParse(value);
  if (!read.success) {
    return { ok: false, problems: fieldProblems(jobSchema0, value, read.error.issues) };
  }
  return { ok: true, value: upgraded(read.data) };
}

function upgraded(old: Job0) {
  return {
    copperwrightJob: 1,
    id: old.id,
    name: old.name,
    revision: 1,
    date: old.date,
    machine: { maker: old.maker, model: old.model, kind: "motorcycle" },
    supply: {
      nominalV: old.volts,
      earthPolarity: old.earth === "+" ? "positive" : "negative",
      ignition: "none",
    },
    colours: { scheme: "none", letters: "iec" },
    stations: old.places,
    runs: old.runs.map(({ from, to, mm }, i) => ({
      id: `R${i + 1}`,
      from,
      to,
      ...lengthField(mm),
    })),
    bodies: [
      {
        id: old.frame.id,
        name: "Frame",
        kind: "frame",
        points: old.frame.points.map((id) => ({ id })),
      },
    ],
    bonds: [],
    parts: old.parts.map((part) => upgradedPart(part, old.volts)),
    joints: [],
    connectors: [],
    circuits: [{ id: "main", name: "All wires of the older document", dropClass: "main-feed" }],
    looms: [],
    wires: old.wires.map(({ id, from, to, colour, mm }) => ({
      id,
      from,
      to,
      ...(colour === undefined ? {} : { colour: upgradedColour(colour) }),
      circuit: "main",
      status: "found",
      ...lengthField(mm),
    })),
    intents: [],
    states: [],
    exclusions: [],
    decisions: {},
    build: [],
    tests: [],
    attachments: [],
    layout: {},
  };
}

function upgradedPart(part: Job0["parts"][number], nominalV: number) {
  const { id, name, place } = part;
  const base = { id, name, ...(place === undefined ? {} : { station: place }) };
  if (part.kind === "battery") {
    const pins = [{ id: "+" }, { id: "-" }];
    const posts = { positivePin: "+", negativePin: "-", chemistry: "flooded" };
    return {
      ...base,
      pins,
      kind: "battery",
      ...posts,
      nominalV,
      capacityAh: estimated(part.ampHours),
    };
  }
  const pins = part.pins.map((pin) => ({ id: pin }));
  if (part.kind === "fuse") {
    return { ...base, pins, kind: "fuse", ratingA: part.amps, marking: "unknown", type: "unknown" };
  }
  if (part.kind === "switch") {
    const positions = [
      { id: "off", joins: [] },
      { id: "on", joins: [part.pins.slice(0, 2)] },
    ];
    return { ...base, pins, kind: "switch", driven: "hand", positions, rest: "off" };
  }
  const filaments = [{ pins: part.pins.slice(0, 2), ratedV: part.volts, ratedW: part.watts }];
  return { ...base, pins, kind: "lamp", source: "filament", filaments };
}

/** `white/red` was main colour and tracer. */
function upgradedColour(text: string) {
  const [main, tracer, secondTracer] = text.split("/").map((word) => word.trim());
  return {
    main,
    ...(tracer === undefined ? {} : { tracer }),
    ...(secondTracer === undefined ? {} : { secondTracer }),
  };
}
