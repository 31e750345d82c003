import type { PartOf } from "../job/index.ts";
import { figure } from "../tables/index.ts";
import { fitGeneratorLine, type GeneratorLine, type OutputPoint } from "./generatorLine.ts";
import type { ElementDraft } from "./jobElement.ts";
import { carries, neighbourhood, reachFrom } from "./loomReach.ts";
import type { NetworkContext } from "./networkContext.ts";

export type Generator = PartOf<"generator">;
export type Regulator = PartOf<"regulator">;
export type Winding = Generator["windings"][number];

/** A source of direct current: generator, what rectifies and what regulates it, as two terminals of the network. */
export interface SupplySource {
  readonly generator: string;
  readonly regulator: string | null;
  /** Names of nodes. */
  readonly positive: string;
  readonly negative: string;
  readonly line: GeneratorLine | null;
  /** Why there is no line. */
  readonly why: string | null;
  /** At the sensed place, corrected for temperature; null: unregulated. */
  readonly setV: number | null;
  /** Node whose volts the regulator holds, where that is not its own output. */
  readonly sense: string | null;
  /** The sensed node is fed by the exciter, not by the output. */
  readonly sensesExciter: boolean;
  /** Alternating current of each lead, A rms, per ampere of output; null where no lead carries any. */
  readonly phaseRatio: number | null;
  /** A shunt unit shorts the winding, so its leads carry the ceiling whatever the load. */
  readonly isShunt: boolean;
  /** Inside ends of the windings' leads. */
  readonly leads: readonly string[];
  /** Volts under which the cut-out of a dynamo stays open; null: no cut-out. */
  readonly cutInV: number | null;
  /** Terminals an excited alternator feeds its own field and charge lamp at; null: it has none. */
  readonly exciter: { readonly positive: string; readonly negative: string } | null;
}

/** Output currents are rectified sine waves: rms of a lead over the mean of the output (three phases, one, one half-wave). */
const THREE_PHASE_RATIO = Math.PI / (3 * Math.SQRT2);
const SINGLE_PHASE_RATIO = Math.PI / (2 * Math.SQRT2);
const HALF_WAVE_RATIO = Math.PI / 2;
/** Regulators are set at this temperature, °C. */
const SET_POINT_C = 25;

/** Every direct-current source of the machine, by generator id. */
export function supplySources(
  context: NetworkContext,
  loom: readonly ElementDraft[],
): readonly SupplySource[] {
  return context.parts.flatMap((part) => {
    if (part.kind !== "generator") return [];
    if (part.type === "dynamo") return dynamoSource(context, part);
    if (part.type === "alternator-excited") return excitedSource(context, part);
    if (part.type === "magneto") return [];
    return rectifiedSource(context, part, loom);
  });
}

/** The regulators that serve a generator: those that name it, or all that name none where it is the only one. */
export function regulatorsOf(context: NetworkContext, generator: Generator): readonly Regulator[] {
  const isOnly = context.parts.filter((part) => part.kind === "generator").length === 1;
  return context.parts
    .filter((part) => part.kind === "regulator")
    .filter((part) => part.generator === generator.id || (part.generator === undefined && isOnly));
}

/** Node the return of a one-pin winding is fastened to: what the part says of its case, else the main body. */
export function caseOf(context: NetworkContext, generator: Generator): string | null {
  return generator.case ?? context.earth;
}

/** The two ends of a winding, inside the part. */
export function windingEnds(
  context: NetworkContext,
  generator: Generator,
  { pins: [live, other] }: Winding,
): readonly [string, string] | null {
  const back = other === undefined ? caseOf(context, generator) : context.inside(generator, other);
  return back === null || live === undefined ? null : [context.inside(generator, live), back];
}

function lineOf(windings: readonly Winding[], diodeV: number): Pick<SupplySource, "line" | "why"> {
  const points: readonly OutputPoint[] =
    windings.find((winding) => winding.points !== undefined)?.points ?? [];
  if (points.length < 2) return { line: null, why: "its output is not known at two speeds" };
  const windingOhm = windings.find((winding) => winding.ohm !== undefined)?.ohm?.value ?? 0;
  const line =
    fitGeneratorLine(points, { windingOhm, diodeV }) ??
    fitGeneratorLine(points, { windingOhm: 0, diodeV });
  return { line, why: line === null ? "no generator gives what its output points say" : null };
}

/** Set volts at the air's temperature, V; the table's coefficient is for 12 V. */
export function setVoltsV({ job, conditions }: NetworkContext, regulator: Regulator): number {
  const stated = regulator.temperatureMvPerC?.value;
  const tableMv = (figure("regulators", "temperature", "value").value * job.supply.nominalV) / 12;
  return regulator.setV.value + ((stated ?? tableMv) / 1000) * (conditions.ambientC - SET_POINT_C);
}

/** Positive and negative node of something with one live terminal and the frame, by the machine's earth. */
function byPolarity(
  { job }: NetworkContext,
  live: string,
  earthed: string,
): Pick<SupplySource, "positive" | "negative"> {
  return job.supply.earthPolarity === "positive"
    ? { positive: earthed, negative: live }
    : { positive: live, negative: earthed };
}

function dynamoSource(context: NetworkContext, generator: Generator): readonly SupplySource[] {
  const armature = generator.windings.find((winding) => winding.use === "armature");
  const ends = armature && windingEnds(context, generator, armature);
  if (!ends) return [];
  const box = regulatorsOf(context, generator).find((one) => one.type === "control-box");
  const scale = context.job.supply.nominalV / 6;
  return [
    {
      generator: generator.id,
      regulator: box?.id ?? null,
      ...byPolarity(context, ends[0], ends[1]),
      ...lineOf([armature], 0),
      setV: box === undefined ? null : setVoltsV(context, box),
      sense: null,
      sensesExciter: false,
      phaseRatio: null,
      isShunt: false,
      leads: [],
      cutInV:
        box === undefined ? null : scale * figure("regulators", "dynamo-cut-out", "value").value,
      exciter: null,
    },
  ];
}

function excitedSource(context: NetworkContext, generator: Generator): readonly SupplySource[] {
  const output = generator.windings.find((winding) => winding.use === "output");
  const ends = output && windingEnds(context, generator, output);
  if (!ends) return [];
  const unit = regulatorsOf(context, generator)[0];
  const field = generator.windings.find((winding) => winding.use === "field");
  const fed = field === undefined ? null : windingEnds(context, generator, field);
  const sensePin = unit && (unit.sensePin ?? unit.inputPins[0]);
  return [
    {
      generator: generator.id,
      regulator: unit?.id ?? null,
      ...byPolarity(context, ends[0], ends[1]),
      ...lineOf([output], figure("elementRules", "rectifier-drop", "value").value),
      setV: unit === undefined ? null : setVoltsV(context, unit),
      sense: unit === undefined || sensePin === undefined ? null : context.inside(unit, sensePin),
      sensesExciter: fed !== null && unit?.sensePin === undefined,
      phaseRatio: null,
      isShunt: false,
      leads: [],
      cutInV: null,
      exciter: fed === null ? null : byPolarity(context, fed[0], ends[1]),
    },
  ];
}

function rectifiedSource(
  context: NetworkContext,
  generator: Generator,
  loom: readonly ElementDraft[],
): readonly SupplySource[] {
  const windings = generator.windings.filter(({ use }) => use === "phase" || use === "charge");
  if (windings.length === 0) return [];
  const leads = windings.flatMap(({ pins }) => pins.map((pin) => context.inside(generator, pin)));
  const unit = regulatorsOf(context, generator).find(
    ({ type, positivePin }) => (type === "shunt" || type === "series") && positivePin !== undefined,
  );
  const ends =
    unit === undefined
      ? rectifierEnds(context, leads, loom)
      : unitEnds(context, generator, unit, leads.length);
  if (ends === null) return [];
  const { isHalfWave, phaseRatio, ...terminals } = ends;
  const dropV = figure("elementRules", "rectifier-drop", "value").value / (isHalfWave ? 2 : 1);
  return [
    {
      generator: generator.id,
      regulator: unit?.id ?? null,
      ...terminals,
      ...lineOf(windings, dropV),
      setV: unit === undefined ? null : setVoltsV(context, unit),
      sense: unit?.sensePin === undefined ? null : context.inside(unit, unit.sensePin),
      sensesExciter: false,
      phaseRatio,
      isShunt: unit?.type === "shunt",
      leads,
      cutInV: null,
      exciter: null,
    },
  ];
}

interface RectifierEnds {
  readonly positive: string;
  readonly negative: string;
  readonly phaseRatio: number;
  readonly isHalfWave: boolean;
}

function unitEnds(
  context: NetworkContext,
  generator: Generator,
  unit: Regulator,
  leadCount: number,
): RectifierEnds | null {
  const frame = caseOf(context, generator);
  const end = (pin: string | undefined): string | null =>
    pin === undefined ? frame : context.inside(unit, pin);
  const [positive, negative] = [end(unit.positivePin), end(unit.negativePin)];
  if (positive === null || negative === null) return null;
  const phaseRatio = leadCount >= 3 ? THREE_PHASE_RATIO : SINGLE_PHASE_RATIO;
  return { positive, negative, phaseRatio, isHalfWave: false };
}

/** A diode or rectifier of its own: its output is what no winding reaches; with no such anode it returns through the frame. */
function rectifierEnds(
  context: NetworkContext,
  leads: readonly string[],
  loom: readonly ElementDraft[],
): RectifierEnds | null {
  const reached = reachFrom(leads, neighbourhood(loom, carries));
  for (const part of context.parts) {
    if (part.kind !== "rectifier" && part.kind !== "diode") continue;
    const pin = (id: string): string => context.inside(part, id);
    const anodes = part.junctions.map(({ anode }) => pin(anode));
    const cathodes = part.junctions.map(({ cathode }) => pin(cathode));
    if (![...anodes, ...cathodes].some((node) => reached.has(node))) continue;
    const positive = cathodes.find((node) => !reached.has(node)) ?? context.earth;
    const negative = anodes.find((node) => !reached.has(node)) ?? context.earth;
    if (positive === null || negative === null || positive === negative) continue;
    const isHalfWave = part.junctions.length === 1;
    const full = part.junctions.length >= 6 ? THREE_PHASE_RATIO : SINGLE_PHASE_RATIO;
    return { positive, negative, isHalfWave, phaseRatio: isHalfWave ? HALF_WAVE_RATIO : full };
  }
  return null;
}
