import type { Basis, Part, Valued } from "../job.ts";
import type { JsonPath } from "../read/jsonPointer.ts";

/** One number of a part that a person can measure or read off it. */
export interface PartFigure {
  /** From the part; of a value with a basis the whole value. */
  readonly path: JsonPath;
  readonly word: string;
  /** As printed: "ohm", "A", "V", "W", "Ah", "lm", "rpm", "uF", "mV/C", or empty. */
  readonly unit: string;
  /** Null: not entered. */
  readonly value: number | null;
  /** Null: the field keeps a bare number. */
  readonly basis: Basis | null;
  readonly isPlain: boolean;
}

/** Every figure a part of its kind may have, entered or not, in the order one would ask for them. */
export function partFigures(part: Part): readonly PartFigure[] {
  switch (part.kind) {
    case "lamp":
      return part.filaments.flatMap((filament, i) => {
        const of = part.filaments.length > 1 ? ` ${filament.pins.join(" to ")}` : "";
        return [
          plain(["filaments", i, "ratedW"], `power${of}`, "W", filament.ratedW),
          plain(["filaments", i, "ratedV"], `made for${of}`, "V", filament.ratedV),
        ];
      });
    case "generator":
      return part.windings.flatMap((winding, i) => {
        const of = ` ${winding.pins.join(" to ")}`;
        return [valued(["windings", i, "ohm"], `winding${of}`, "ohm", winding.ohm)];
      });
    case "regulator":
      return [
        ...rows(part, [
          ["setV", "holds", "V"],
          ["temperatureMvPerC", "changes with temperature", "mV/C"],
        ]),
        ...elementFigures(part.elements ?? []),
      ];
    case "relay":
      return [
        valued(["coil", "ohm"], "coil", "ohm", part.coil.ohm),
        valued(["coil", "pullInV"], "pulls in at", "V", part.coil.pullInV),
        valued(["coil", "dropOutV"], "lets go at", "V", part.coil.dropOutV),
        ...rows(part, CONTACT),
      ];
    case "horn":
    case "coil":
    case "heater":
    case "resistor":
    case "module":
      return elementFigures(part.elements);
    default:
      return rows(part, ROWS[part.kind]);
  }
}

type Row = readonly [field: string, word: string, unit: string, isPlain?: "plain"];

const CONTACT: readonly Row[] = [
  ["contactOhm", "each closed contact", "ohm"],
  ["contactRatingA", "contacts made for", "A"],
];

const ROWS: Readonly<Record<string, readonly Row[]>> = {
  battery: [
    ["capacityAh", "capacity", "Ah"],
    ["restV", "at rest, full", "V"],
    ["internalOhm", "inside resistance", "ohm"],
    ["coldCrankingA", "cold cranking", "A"],
  ],
  fuse: [
    ["ratingA", "marked", "A", "plain"],
    ["holderRatingA", "holder made for", "A"],
    ["coldOhm", "cold", "ohm"],
  ],
  switch: CONTACT,
  flasher: [
    ["loadMinW", "least load", "W", "plain"],
    ["loadMaxW", "most load", "W", "plain"],
    ...CONTACT,
  ],
  motor: [
    ["runOhm", "volts over amps while turning", "ohm"],
    ["freeA", "turning free", "A"],
    ["freeV", "at", "V"],
    ["stallA", "held still", "A"],
    ["stallV", "at", "V"],
  ],
  meter: [
    ["ohm", "resistance", "ohm"],
    ["scaleMax", "end of the scale", "", "plain"],
  ],
  diode: [["ratingA", "made for", "A"]],
  rectifier: [["ratingA", "made for", "A"]],
  capacitor: [["capacitanceUf", "capacitance", "uF"]],
};

function rows(part: Part, list: readonly Row[] | undefined): readonly PartFigure[] {
  return (list ?? []).map(([field, word, unit, isPlain]) => {
    const now: unknown = Reflect.get(part, field);
    return isPlain === "plain"
      ? plain([field], word, unit, typeof now === "number" ? now : undefined)
      : valued([field], word, unit, now as Valued | undefined);
  });
}

const elementFigures = (
  elements: readonly {
    readonly pins: readonly [string, string];
    readonly ohm: Valued;
    readonly dutyRatio?: Valued | undefined;
  }[],
): readonly PartFigure[] =>
  elements.flatMap(({ pins, ohm, dutyRatio }, i) => [
    valued(["elements", i, "ohm"], `${pins.join(" to ")}`, "ohm", ohm),
    valued(
      ["elements", i, "dutyRatio"],
      `share of the time ${pins.join(" to ")} draws`,
      "",
      dutyRatio,
    ),
  ]);

const plain = (
  path: JsonPath,
  word: string,
  unit: string,
  value: number | undefined,
): PartFigure => ({ path, word, unit, value: value ?? null, basis: null, isPlain: true });

const valued = (
  path: JsonPath,
  word: string,
  unit: string,
  now: Valued | undefined,
): PartFigure => ({
  path,
  word,
  unit,
  value: now?.value ?? null,
  basis: now?.basis ?? null,
  isPlain: false,
});
