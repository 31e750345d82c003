import type { Filament, Job, Part } from "../../job/index.ts";
import type { ConvertedPart } from "./convertedPart.ts";

type Earth = Job["supply"]["earthPolarity"];
type Pair = readonly [string, string];

const turned = ([a, b]: Pair): [string, string] => [b, a];

/** One part on the other earth: what is one-way is turned round or replaced, what does not care stays. */
export function partOnEarth(part: Part, earth: Earth): ConvertedPart {
  const made = replacedFor(part, earth);
  if (made !== null) return made;
  switch (part.kind) {
    case "battery":
      return { part, action: "adjust", reason: "its leads change posts" };
    case "lamp":
      return part.source === "led"
        ? {
            part: { ...part, filaments: part.filaments.map(turnedFilament) },
            action: "adjust",
            reason:
              "light-emitting diodes are one-way: turn the lamp's wires, or fit one made for this earth",
          }
        : { part, action: "keep", reason: "a filament does not care" };
    case "regulator":
      return regulatorOnEarth(part);
    case "generator":
      return part.type === "dynamo"
        ? {
            part,
            action: "adjust",
            reason:
              "magnetise it the other way before it is run: touch a lead from the new live post on its F terminal",
          }
        : { part, action: "keep", reason: "alternating current has no pole" };
    case "coil":
      return {
        part,
        action: "adjust",
        reason:
          "its two low-tension leads change places, so that the plug keeps its polarity; it works either way",
      };
    default:
      return oneWayPart(part);
  }
}

function oneWayPart(part: Part): ConvertedPart {
  switch (part.kind) {
    case "diode":
    case "rectifier": {
      const junctions = part.junctions.map(({ anode, cathode }) => ({
        anode: cathode,
        cathode: anode,
      }));
      const reason = "turn it round: its direction follows the live pole";
      return { part: { ...part, junctions }, action: "adjust", reason };
    }
    case "meter": {
      const reason = "its two leads change places, or charge reads as discharge";
      return { part: { ...part, between: turned(part.between) }, action: "adjust", reason };
    }
    case "capacitor": {
      const moved = { ...part, positivePin: part.negativePin, negativePin: part.positivePin };
      const reason = "one-way: its leads change places, and its can may be live then";
      return { part: moved, action: "adjust", reason };
    }
    case "module": {
      if (part.elements.length === 0)
        return { part, action: "keep", reason: "not fed by the battery" };
      const elements = part.elements.map((one) =>
        one.oneWay ? { ...one, pins: turned(one.pins) } : one,
      );
      const reason =
        "electronics are made for one earth; only its maker can say that it stands both";
      return { part: { ...part, elements }, action: "replace", reason };
    }
    case "relay": {
      if (part.coil.diode !== true)
        return { part, action: "keep", reason: "a coil pulls either way" };
      const coil = { ...part.coil, pins: turned(part.coil.pins) };
      const reason = "a diode lies across its coil: turn its two coil wires";
      return { part: { ...part, coil }, action: "adjust", reason };
    }
    default:
      return { part, action: "keep", reason: "it does not care" };
  }
}

/** A part made for the other earth alone. */
function replacedFor(part: Part, earth: Earth): ConvertedPart | null {
  const here = `${earth}-earth` as const;
  if (part.polarity !== "negative-earth" && part.polarity !== "positive-earth") return null;
  if (part.polarity === here) return { part, action: "keep", reason: `made for ${earth} earth` };
  const settled = { ...part, polarity: undefined };
  const moved = partOnEarth(settled, earth).part;
  const isBox = part.kind === "regulator" && part.type === "control-box";
  return {
    part: { ...moved, polarity: here, status: isBox ? part.status : "new" } as Part,
    action: isBox ? "adjust" : "replace",
    reason: isBox
      ? "its coils do not care which way the current runs; its contacts wear the other way"
      : `made for ${earth === "positive" ? "negative" : "positive"} earth`,
  };
}

function regulatorOnEarth(part: Extract<Part, { kind: "regulator" }>): ConvertedPart {
  const { positivePin, negativePin, ...rest } = part;
  const moved: Part = {
    ...rest,
    ...(negativePin !== undefined && { positivePin: negativePin }),
    ...(positivePin !== undefined && { negativePin: positivePin }),
  };
  const isBox = part.type === "control-box" || part.type === "ac-shunt";
  return {
    part: isBox ? (part.type === "ac-shunt" ? part : moved) : moved,
    action: isBox ? "keep" : "replace",
    reason: isBox
      ? "its coils do not care which way the current runs"
      : "its output and its case are of one pole: fit a unit for this earth, or one whose case is free",
  };
}

const turnedFilament = (filament: Filament): Filament => ({
  ...filament,
  pins: turned(filament.pins),
});
