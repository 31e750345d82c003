import type { Job, Part } from "../job/index.ts";

type Pair = readonly [string, string];
const turned = ([a, b]: Pair): [string, string] => [b, a];

/** The machine with every EMF reversed. `polarised`: every part that knows its poles is turned round as well. */
export function mirrored(job: Job, { polarised }: { readonly polarised: boolean }): Job {
  const earthPolarity = job.supply.earthPolarity === "positive" ? "negative" : "positive";
  return {
    ...job,
    supply: { ...job.supply, earthPolarity },
    parts: job.parts.map((part) =>
      part.kind === "battery" || polarised ? turnedPart(part) : part,
    ),
  };
}

function turnedPart(part: Part): Part {
  switch (part.kind) {
    case "battery":
      return { ...part, positivePin: part.negativePin, negativePin: part.positivePin };
    case "diode":
    case "rectifier":
      return {
        ...part,
        junctions: part.junctions.map(({ anode, cathode }) => ({ anode: cathode, cathode: anode })),
      };
    case "lamp":
      if (part.source !== "led") return part;
      return {
        ...part,
        filaments: part.filaments.map((one) => ({ ...one, pins: turned(one.pins) })),
      };
    case "relay":
      return { ...part, coil: { ...part.coil, pins: turned(part.coil.pins) } };
    case "regulator": {
      const { positivePin, negativePin, elements, ...rest } = part;
      return {
        ...rest,
        ...(negativePin !== undefined && { positivePin: negativePin }),
        ...(positivePin !== undefined && { negativePin: positivePin }),
        ...(elements && { elements: elements.map((one) => oneWayTurned(one)) }),
      };
    }
    case "horn":
    case "coil":
    case "heater":
    case "resistor":
    case "module":
      return { ...part, elements: part.elements.map((one) => oneWayTurned(one)) };
    default:
      return part;
  }
}

function oneWayTurned<T extends { readonly pins: Pair; readonly oneWay?: boolean | undefined }>(
  element: T,
): T {
  return element.oneWay ? { ...element, pins: turned(element.pins) } : element;
}
