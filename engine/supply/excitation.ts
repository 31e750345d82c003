import type { Job, Part } from "../job/index.ts";
import { compileJob, conditionsOf } from "../operate/index.ts";
import type { Conductors } from "../route/index.ts";
import { figure } from "../tables/index.ts";
import type { SupplyModel } from "./supplyModel.ts";
import { supplyRule } from "./supplyRule.ts";

/** First field current of an excited alternator, key on and engine stopped, with one kind of charge lamp. */
export interface ExcitationRow {
  readonly lamp:
    | "as fitted"
    | "light-emitting diode"
    | "the same with a resistor across it"
    | "lamp open";
  readonly fieldA: number;
  readonly excites: boolean;
}

export interface Excitation {
  readonly generator: string;
  readonly chargeLamp: string | null;
  readonly state: string;
  readonly leastA: number;
  readonly rows: readonly ExcitationRow[];
  /** Resistor that would bring a light-emitting lamp to the least field current, Ω, and its watts. */
  readonly neededOhm: number;
  readonly neededW: number;
}

/**
 * Whether an excited rotor starts to charge: the current its field gets through the charge lamp before anything turns, in the state that
 * feeds it most. Residual magnetism may start it with less; that is not relied on.
 */
export function excitation(model: SupplyModel): Excitation | null {
  const { job, conductors, states, compiled } = model;
  const place = fieldPlace(model.compiled.jobNetwork.elements, job);
  if (place === null) return null;
  const fieldIn = (positions: Readonly<Record<string, string>>, of = compiled): number => {
    // A part more renumbers the elements.
    const index = fieldPlace(of.jobNetwork.elements, of.job)!.index;
    return Math.abs(of.solve({ positions }).elementA[index]!);
  };
  const fed = states.toSorted((a, b) => fieldIn(b.positions) - fieldIn(a.positions))[0];
  if (fed === undefined) return null;
  const lamp = chargeLampOf(job, place.generator);
  const leastA = figure("elementRules", "field-start", "value").value;
  const row = (name: ExcitationRow["lamp"], fieldA: number): ExcitationRow => ({
    lamp: name,
    fieldA,
    excites: fieldA >= leastA,
  });
  const withLamp = (change: (part: Part) => Part, parallelOhm: number | null): number => {
    const changed = changedLamp(job, lamp, change, parallelOhm);
    return fieldIn(fed.positions, layOut(model, changed, conductors));
  };
  const rows = [row("as fitted", fieldIn(fed.positions))];
  if (lamp !== null) {
    rows.push(row("light-emitting diode", withLamp(asDiode, null)));
    const customary = supplyRule("charge-lamp-parallel");
    rows.push(row("the same with a resistor across it", withLamp(asDiode, customary)));
  }
  const fieldV = job.supply.nominalV - leastA * place.ohm;
  const neededOhm = fieldV / leastA;
  return {
    generator: place.generator,
    chargeLamp: lamp,
    state: fed.name,
    leastA,
    rows,
    neededOhm,
    neededW: fieldV * leastA,
  };
}

const layOut = ({ options }: SupplyModel, job: Job, conductors: Conductors) =>
  compileJob(job, conductors, { conditions: conditionsOf(job, options) });

function fieldPlace(
  elements: SupplyModel["compiled"]["jobNetwork"]["elements"],
  job: Job,
): { readonly index: number; readonly generator: string; readonly ohm: number } | null {
  for (const part of job.parts) {
    if (part.kind !== "generator" || part.type !== "alternator-excited") continue;
    const index = elements.findIndex(
      ({ kind, of }) => kind === "coil" && of.startsWith(`${part.id}:`),
    );
    const ohm = part.windings.find(({ use }) => use === "field")?.ohm?.value;
    if (index >= 0 && ohm !== undefined) return { index, generator: part.id, ohm };
  }
  return null;
}

/** The lamp whose wire leads to the field's feed: the one on a net with a pin of the generator. */
function chargeLampOf(job: Job, generator: string): string | null {
  const part = job.parts.find(({ id }) => id === generator);
  if (part?.kind !== "generator") return null;
  const fieldPins = part.windings
    .filter(({ use }) => use === "field")
    .flatMap(({ pins }) => pins.map((pin) => `${generator}.${pin}`));
  const seen = new Set(fieldPins);
  const queue = [...fieldPins];
  const lamps = new Set(job.parts.filter(({ kind }) => kind === "lamp").map(({ id }) => id));
  const joints = new Map(job.joints.map(({ id, ways }) => [id, ways.map((way) => `${id}.${way}`)]));
  for (const ref of queue) {
    const owner = ref.slice(0, ref.indexOf("."));
    if (lamps.has(owner)) return owner;
    const other = [
      ...job.wires.flatMap(({ from, to }) => (from === ref ? [to] : to === ref ? [from] : [])),
      ...(joints.get(owner) ?? []),
      ...matedPin(job, ref),
    ];
    for (const next of other) {
      if (seen.has(next)) continue;
      seen.add(next);
      queue.push(next);
    }
  }
  return null;
}

function matedPin(job: Job, ref: string): readonly string[] {
  const isCavity = job.connectors.some(({ id }) => ref.startsWith(`${id}.`));
  if (!isCavity) return [];
  return [ref.endsWith("p") ? `${ref.slice(0, -1)}s` : `${ref.slice(0, -1)}p`];
}

/** A light-emitting charge lamp of the table's current, at rated volts. */
function asDiode(part: Part): Part {
  if (part.kind !== "lamp") return part;
  const filaments = part.filaments.map(({ pins, ratedV }) => ({
    pins,
    ratedV,
    ratedW: ratedV * supplyRule("led-charge-lamp"),
  }));
  return { ...part, source: "led", filaments };
}

/** The job with another charge lamp, and perhaps a resistor between its pins (as an element of a box that has the lamp's wires). */
function changedLamp(
  job: Job,
  lamp: string | null,
  change: (part: Part) => Part,
  parallelOhm: number | null,
): Job {
  const parts = job.parts.map((part) => (part.id === lamp ? change(part) : part));
  const found = job.parts.find(({ id }) => id === lamp);
  if (parallelOhm === null || found?.kind !== "lamp") return { ...job, parts };
  const across: Part = {
    id: "ACROSS-LAMP",
    name: "resistor across the charge lamp",
    kind: "resistor",
    pins: [{ id: "1" }, { id: "2" }],
    elements: [{ pins: ["1", "2"], ohm: { value: parallelOhm, basis: "chosen" } }],
  };
  const [a, b] = found.filaments[0]!.pins;
  const bonds = [
    { id: "ACROSS-A", from: `${found.id}.${a}`, to: "ACROSS-LAMP.1", kind: "bolt" as const },
    { id: "ACROSS-B", from: `${found.id}.${b}`, to: "ACROSS-LAMP.2", kind: "bolt" as const },
  ];
  return { ...job, parts: [...parts, across], bonds: [...job.bonds, ...bonds] };
}
