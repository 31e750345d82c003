import { loadRef, type PartOf } from "../job/index.ts";
import type { Law } from "../network/index.ts";
import { figure } from "../tables/index.ts";
import { batterySource } from "./batterySource.ts";
import { contactOhm } from "./contactOhm.ts";
import { type ElementDraft, FIXED, IDLE_CURVE } from "./jobElement.ts";
import type { NetworkContext } from "./networkContext.ts";
import {
  type Generator,
  type Regulator,
  regulatorsOf,
  type SupplySource,
  setVoltsV,
  windingEnds,
} from "./supplySources.ts";

/** EMF behind its resistance, from the positive post to the negative one: its current is negative while it discharges. */
export function batteryElements(
  context: NetworkContext,
  part: PartOf<"battery">,
): readonly ElementDraft[] {
  const { ambientC, battery } = context.conditions;
  const { emfV, internalOhm } = batterySource(part, battery, ambientC);
  return [
    {
      kind: "emf",
      of: loadRef(part.id, [part.positivePin, part.negativePin]),
      from: context.inside(part, part.positivePin),
      to: context.inside(part, part.negativePin),
      law: { kind: "emf", emfV, internalOhm },
      role: FIXED,
    },
  ];
}

/** What each source gives at its terminals, and what an excited alternator feeds its own field with; idle until it turns. */
export function sourceElements(sources: readonly SupplySource[]): readonly ElementDraft[] {
  return sources.flatMap(({ generator, positive, negative, exciter }): ElementDraft[] => {
    const idle = { kind: "curve", of: generator, law: IDLE_CURVE } as const;
    const output: ElementDraft = {
      ...idle,
      from: positive,
      to: negative,
      role: { role: "supply", generator },
    };
    if (exciter === null) return [output];
    const feed: ElementDraft = {
      ...idle,
      from: exciter.positive,
      to: exciter.negative,
      role: { role: "exciter", generator },
    };
    return [output, feed];
  });
}

/**
 * Windings whose resistance is known, as resistances: a standing coil is a way to earth for direct current. Phases and the
 * armature are left out: diodes or the cut-out stand before them.
 */
export function windingElements(
  context: NetworkContext,
  generator: Generator,
): readonly ElementDraft[] {
  return generator.windings.flatMap((winding, windingIndex): ElementDraft[] => {
    const { use, ohm, pins } = winding;
    const ends = windingEnds(context, generator, winding);
    const isBehind = use === "phase" || use === "armature" || use === "output";
    if (ends === null || isBehind) return [];
    const place = {
      of: loadRef(generator.id, [pins[0]!, pins[1] ?? "case"]),
      from: ends[0],
      to: ends[1],
    };
    const elements: ElementDraft[] = [];
    if (ohm !== undefined) {
      elements.push({ ...place, kind: "coil", law: { kind: "ohm", ohm: ohm.value }, role: FIXED });
    }
    if (use === "lighting") {
      const role = { role: "acSource", generator: generator.id, windingIndex } as const;
      elements.push({ ...place, kind: "curve", law: IDLE_CURVE, role });
    }
    return elements;
  });
}

/** Inside of a regulator: the cut-out of a control box, the way it feeds the field, a shunt zener's knee. */
export function regulatorElements(
  context: NetworkContext,
  part: Regulator,
): readonly ElementDraft[] {
  const [input] = part.inputPins;
  const { fieldPin } = part;
  const generator = context.parts
    .filter((one) => one.kind === "generator")
    .find((one) => regulatorsOf(context, one).includes(part));
  const contact = (pins: readonly [string, string], role: ElementDraft["role"]): ElementDraft => ({
    kind: "contact",
    of: loadRef(part.id, pins),
    from: context.inside(part, pins[0]),
    to: context.inside(part, pins[1]),
    law: { kind: "ohm", ohm: contactOhm("relay", undefined, context.conditions.aged)! },
    role,
  });
  const elements: ElementDraft[] = [];
  const isPositiveEarth = context.job.supply.earthPolarity === "positive";
  const live = isPositiveEarth ? part.negativePin : part.positivePin;
  const earthed = isPositiveEarth ? part.positivePin : part.negativePin;
  if (part.type === "control-box" && input !== undefined && live !== undefined) {
    const cutOut = contact([input, live], { role: "cutOut", regulator: part.id });
    // Charging current runs from its first node to its second, whichever pole is earthed.
    const { from, to } = cutOut;
    elements.push(isPositiveEarth ? { ...cutOut, from: to, to: from } : cutOut);
  }
  if (fieldPin !== undefined && input !== undefined) {
    const field = generator?.windings.find((winding) => winding.use === "field");
    // A field with both ends brought out is switched on its earth side, one earthed in the generator on its feed side.
    const isEarthSide = field?.pins.length === 2 && earthed !== undefined;
    const ends = isEarthSide ? ([fieldPin, earthed] as const) : ([input, fieldPin] as const);
    if (field?.ohm !== undefined) elements.push(contact(ends, FIXED));
  }
  if (part.type === "ac-shunt") elements.push(...clampElements(context, part));
  if (part.type === "zener") elements.push(...zenerElements(context, part));
  return elements;
}

/** An alternating shunt regulator from its input to its return; idle for direct current. */
function clampElements(context: NetworkContext, part: Regulator): readonly ElementDraft[] {
  const [input] = part.inputPins;
  const back = part.negativePin ?? part.positivePin;
  const to = back === undefined ? context.earth : context.inside(part, back);
  if (input === undefined || to === null) return [];
  const role = { role: "acClamp", regulator: part.id } as const;
  return [
    { kind: "curve", of: part.id, from: context.inside(part, input), to, law: IDLE_CURVE, role },
  ];
}

/** Amperes a shunt zener takes where the table calls it fully conducting: what a generator of its day could give. */
const ZENER_FULL_A = 10;
const ZENER_IDLE_S = 1e-6;

/** A shunt zener across the supply: nothing below its set volts, all a generator gives over the table's width above. */
function zenerElements(context: NetworkContext, part: Regulator): readonly ElementDraft[] {
  const end = (pin: string | undefined): string | null =>
    pin === undefined ? context.earth : context.inside(part, pin);
  const [from, to] = [end(part.positivePin), end(part.negativePin)];
  if (from === null || to === null || from === to) return [];
  const table = (row: "zener-start" | "zener-full"): number =>
    figure("regulators", row, "value").value;
  const setV = setVoltsV(context, part);
  const fullV = (setV * table("zener-full")) / table("zener-start");
  const law: Law = {
    kind: "curve",
    points: [
      [0, 0],
      [setV, setV * ZENER_IDLE_S],
      [fullV, ZENER_FULL_A],
    ],
  };
  return [{ kind: "curve", of: part.id, from, to, law, role: FIXED }];
}
