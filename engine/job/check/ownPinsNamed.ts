import type { Part } from "../job.ts";
import type { JsonPath } from "../read/jsonPointer.ts";

/** A place in a part that names one of the part's own pins, or two that something lies between. */
export interface OwnPins {
  readonly path: JsonPath;
  /** Each id with where it stands below `path`. */
  readonly pins: readonly { readonly step: JsonPath; readonly id: string }[];
  /** Two pins that must differ. */
  readonly isPair: boolean;
}

type Pair = readonly [string, string];

const pair = (path: JsonPath, [a, b]: Pair): OwnPins => ({
  path,
  pins: [
    { step: [0], id: a },
    { step: [1], id: b },
  ],
  isPair: true,
});

const pairs = (path: JsonPath, list: readonly Pair[]): readonly OwnPins[] =>
  list.map((item, k) => pair([...path, k], item));

const withPins = (field: string, items: readonly { readonly pins: Pair }[]): readonly OwnPins[] =>
  items.map((item, k) => pair([field, k, "pins"], item.pins));

/** Fields of a part each holding a pin id; `isPair` when the first two must differ. */
function fields<T extends Part>(part: T, names: readonly (keyof T & string)[], isPair: boolean) {
  const pins = names.flatMap((name) => {
    const id: unknown = part[name];
    return typeof id === "string" ? [{ step: [name], id }] : [];
  });
  return { path: [], pins, isPair };
}

const ids = (path: JsonPath, list: readonly string[], isPair: boolean): OwnPins => ({
  path,
  pins: list.map((id, k) => ({ step: [k], id })),
  isPair,
});

/** Every place where a part names its own pins, paths counted from the part. */
export function ownPinsNamed(part: Part): readonly OwnPins[] {
  switch (part.kind) {
    case "battery":
    case "capacitor":
      return [fields(part, ["positivePin", "negativePin"], true)];
    case "switch":
      return part.positions.flatMap(({ joins }, k) => pairs(["positions", k, "joins"], joins));
    case "relay":
      return [
        pair(["coil", "pins"], part.coil.pins),
        ...pairs(["made"], part.made),
        ...pairs(["rest"], part.rest),
      ];
    case "flasher":
      return [fields(part, ["feed", "out"], true), fields(part, ["earth"], false)];
    case "lamp":
      return withPins("filaments", part.filaments);
    case "motor":
    case "meter":
      return [pair(["between"], part.between)];
    case "generator":
      return part.windings.map(({ pins }, k) => ids(["windings", k, "pins"], pins, true));
    case "regulator":
      return [
        ids(["inputPins"], part.inputPins, false),
        fields(part, ["positivePin", "negativePin"], true),
        fields(part, ["sensePin", "fieldPin"], false),
        ...withPins("elements", part.elements ?? []),
      ];
    case "diode":
    case "rectifier":
      return part.junctions.map(({ anode, cathode }, k) => ({
        path: ["junctions", k],
        pins: [
          { step: ["anode"], id: anode },
          { step: ["cathode"], id: cathode },
        ],
        isPair: true,
      }));
    case "fuse":
      return [];
    case "module": {
      const { driver } = part;
      const driven =
        driver === undefined
          ? []
          : [pair(["driver", "fed"], driver.fed), ...pairs(["driver", "outputs"], driver.outputs)];
      return [...withPins("elements", part.elements), ...driven];
    }
    default:
      return withPins("elements", part.elements);
  }
}
