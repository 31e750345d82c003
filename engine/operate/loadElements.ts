import { loadRef, loadsOfPart, type Part, type PartOf } from "../job/index.ts";
import { figure } from "../tables/index.ts";
import { type ElementDraft, FIXED } from "./jobElement.ts";
import { lampLaw, siliconLaw } from "./lampLaw.ts";
import type { NetworkContext } from "./networkContext.ts";
import type { ElementKind } from "./operateResult.ts";

/** Filaments and light sources, named by their load. */
export function lampElements(
  context: NetworkContext,
  part: PartOf<"lamp">,
): readonly ElementDraft[] {
  return part.filaments.map((filament) => ({
    kind: part.source === "led" ? ("diode" as const) : ("filament" as const),
    of: loadRef(part.id, filament.pins),
    from: context.inside(part, filament.pins[0]),
    to: context.inside(part, filament.pins[1]),
    law: lampLaw(part, filament, context.conditions.lampExponent),
    role: FIXED,
  }));
}

/**
 * Everything that is a resistance: horn, coil, heater, box, motor, a regulator's own draw. A one-way element is the same
 * resistance behind a diode, its first pin the more positive.
 */
export function resistanceElements(context: NetworkContext, part: Part): readonly ElementDraft[] {
  const kind: ElementKind = part.kind === "coil" ? "coil" : "resistor";
  return loadsOfPart(part).flatMap(({ ref, pins, resistanceOhm, oneWay }): ElementDraft[] => {
    if (resistanceOhm === null) return [];
    const [from, to] = pins.map((pin) => context.inside(part, pin.slice(part.id.length + 1)));
    const ends = { of: ref, from: from!, to: to!, role: FIXED };
    return oneWay
      ? [{ ...ends, kind: "diode", law: siliconLaw(resistanceOhm) }]
      : [{ ...ends, kind, law: { kind: "ohm", ohm: resistanceOhm } }];
  });
}

/** An ammeter's shunt or a voltmeter's winding. */
export function meterElements(
  context: NetworkContext,
  part: PartOf<"meter">,
): readonly ElementDraft[] {
  const row = part.measures === "amps" ? "ammeter" : "voltmeter";
  const ohm = part.ohm?.value ?? figure("elementRules", row, "value").value;
  const [a, b] = part.between;
  return [
    {
      kind: "resistor",
      of: loadRef(part.id, part.between),
      from: context.inside(part, a),
      to: context.inside(part, b),
      law: { kind: "ohm", ohm },
      role: FIXED,
    },
  ];
}

/** Each junction of a diode or rectifier, anode to cathode. */
export function diodeElements(
  context: NetworkContext,
  part: PartOf<"diode" | "rectifier">,
): readonly ElementDraft[] {
  return part.junctions.map(({ anode, cathode }) => ({
    kind: "diode" as const,
    of: loadRef(part.id, [anode, cathode]),
    from: context.inside(part, anode),
    to: context.inside(part, cathode),
    law: siliconLaw(),
    role: FIXED,
  }));
}
