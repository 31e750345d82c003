import { type PartBody, type PartTemplate, pins, type TemplateAsk } from "./partTemplate.ts";

const watts = (id: string, word: string): TemplateAsk => ({
  id,
  word,
  unit: "W",
  howTo: "read the cap of the bulb",
  isNeeded: true,
});

function lamp(
  source: "filament" | "led",
  ids: readonly string[],
  filaments: readonly { readonly pins: readonly [string, string]; readonly ratedW: number }[],
  ratedV: number,
  name: string,
): PartBody {
  return {
    kind: "lamp",
    name,
    source,
    pins: pins(...ids),
    filaments: filaments.map((one) => ({ ...one, ratedV })),
  };
}

/** A lamp of one light: L the live side, E the return. */
const single = (
  at: Pick<PartTemplate, "id" | "name" | "words" | "stem">,
  source: "filament" | "led" = "filament",
): PartTemplate => ({
  ...at,
  group: "lamps",
  asks: [watts("powerW", "power")],
  make: ({ supply, answers }) =>
    lamp(
      source,
      ["L", "E"],
      [{ pins: onePair(source, supply.earthPolarity), ratedW: answers.powerW!.value }],
      supply.nominalV,
      at.name,
    ),
});

/** A light that conducts one way has its more positive pin first, whichever pole is earthed. */
const onePair = (source: "filament" | "led", earth: "positive" | "negative") =>
  source === "led" && earth === "positive" ? (["E", "L"] as const) : (["L", "E"] as const);

const double = (
  at: Pick<PartTemplate, "id" | "name" | "words" | "stem">,
  [first, second]: readonly [string, string],
  [firstWord, secondWord]: readonly [string, string],
): PartTemplate => ({
  ...at,
  group: "lamps",
  asks: [watts("firstW", firstWord), watts("secondW", secondWord)],
  make: ({ supply, answers }) =>
    lamp(
      "filament",
      [first, second, "E"],
      [
        { pins: [first, "E"], ratedW: answers.firstW!.value },
        { pins: [second, "E"], ratedW: answers.secondW!.value },
      ],
      supply.nominalV,
      at.name,
    ),
});

export const lampTemplates: readonly PartTemplate[] = [
  double(
    { id: "headlamp", name: "headlamp, main and dip", words: "headlight beam bulb", stem: "HEAD" },
    ["HI", "LO"],
    ["main beam", "dip beam"],
  ),
  double(
    { id: "tail-brake", name: "tail and brake lamp", words: "rear light stop bulb", stem: "TAIL" },
    ["T", "B"],
    ["tail", "brake"],
  ),
  single({ id: "headlamp-one", name: "headlamp, one beam", words: "headlight", stem: "HEAD" }),
  single({ id: "pilot", name: "pilot lamp", words: "parking position side light", stem: "PIL" }),
  single({ id: "tail", name: "tail lamp", words: "rear light number plate", stem: "TAIL" }),
  single({ id: "brake", name: "brake lamp", words: "rear stop light", stem: "BRK" }),
  single({
    id: "indicator",
    name: "indicator lamp",
    words: "turn signal flasher winker",
    stem: "IND",
  }),
  single(
    { id: "indicator-led", name: "indicator lamp, LED", words: "turn signal diode", stem: "IND" },
    "led",
  ),
  single(
    { id: "tail-led", name: "tail lamp, LED", words: "rear light diode", stem: "TAIL" },
    "led",
  ),
  single({
    id: "warning",
    name: "warning lamp",
    words: "oil neutral charge main beam telltale",
    stem: "WL",
  }),
  single(
    { id: "warning-led", name: "warning lamp, LED", words: "telltale diode", stem: "WL" },
    "led",
  ),
  single({
    id: "instrument",
    name: "instrument lamp",
    words: "speedometer clock meter light",
    stem: "MET",
  }),
  single({ id: "spot", name: "spot or fog lamp", words: "driving auxiliary", stem: "SPOT" }),
];
