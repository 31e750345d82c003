import type { Job, Part } from "./job.ts";
import { pinRef } from "./pinsOf.ts";

/** Something that turns current into light, heat, spark or motion between two pins of one part. */
export interface Load {
  /** `PART:A-B`, as intents, states and findings write it. */
  readonly ref: string;
  readonly part: Part;
  readonly kind: "filament" | "element" | "winding";
  /** Place in the part's `filaments` or `elements`; 0 for a motor. */
  readonly index: number;
  /** Pin references; of a one-way load the first is the more positive. */
  readonly pins: readonly [string, string];
  readonly ratedV: number | null;
  readonly ratedW: number | null;
  readonly resistanceOhm: number | null;
  readonly oneWay: boolean;
  readonly ac: boolean;
}

type Pair = readonly [string, string];

/** `PART:A-B`. Ids may hold "-", so a load reference is looked up among the loads, never taken apart. */
export const loadRef = (part: string, [a, b]: Pair): string => `${part}:${a}-${b}`;

function named(part: Part, kind: Load["kind"], index: number, [a, b]: Pair) {
  const pins = [pinRef(part.id, a), pinRef(part.id, b)] as const;
  return { ref: loadRef(part.id, [a, b]), part, kind, index, pins };
}

/** Loads of one part, in document order. Relay coils, meters and generator windings are not loads. */
export function loadsOfPart(part: Part): readonly Load[] {
  const none = { ratedV: null, ratedW: null, resistanceOhm: null, oneWay: false, ac: false };
  switch (part.kind) {
    case "lamp":
      return part.filaments.map((filament, i) => ({
        ...named(part, "filament", i, filament.pins),
        ...none,
        ratedV: filament.ratedV,
        ratedW: filament.ratedW,
        oneWay: part.source === "led",
        ac: filament.supply === "ac",
      }));
    case "motor":
      return [
        { ...named(part, "winding", 0, part.between), ...none, resistanceOhm: part.runOhm.value },
      ];
    case "horn":
    case "coil":
    case "heater":
    case "resistor":
    case "module":
    case "regulator":
      return (part.elements ?? []).map((element, i) => ({
        ...named(part, "element", i, element.pins),
        ...none,
        resistanceOhm: element.ohm.value,
        oneWay: element.oneWay ?? false,
      }));
    default:
      return [];
  }
}

/** Every load of the job, in document order. */
export function loadsOf(job: Job): readonly Load[] {
  return job.parts.flatMap(loadsOfPart);
}
