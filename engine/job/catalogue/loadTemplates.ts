import {
  elementOf,
  type PartTemplate,
  pins,
  type TemplateAsk,
  type TemplateGroup,
} from "./partTemplate.ts";

const ohm = (howTo: string): TemplateAsk => ({
  id: "ohm",
  word: "resistance",
  unit: "ohm",
  howTo,
  isNeeded: false,
});

type LoadKind = "horn" | "coil" | "heater" | "resistor" | "module";

const load = (
  at: Pick<PartTemplate, "id" | "name" | "words" | "stem">,
  kind: LoadKind,
  group: TemplateGroup,
  [a, b]: readonly [string, string],
  howTo: string,
): PartTemplate => ({
  ...at,
  group,
  asks: [ohm(howTo)],
  make: ({ answers }) => ({
    kind,
    name: at.name,
    pins: pins(a, b),
    elements: elementOf(a, b, answers.ohm),
  }),
});

const WORKING = "ammeter in its lead while it works: ohms are volts over amps";
const COLD = "ohmmeter, leads off, less the probes joined";

export const loadTemplates: readonly PartTemplate[] = [
  load(
    { id: "horn", name: "horn", words: "hooter", stem: "HORN" },
    "horn",
    "horn and extras",
    ["1", "2"],
    WORKING,
  ),
  load(
    { id: "coil", name: "ignition coil, primary", words: "spark", stem: "COIL" },
    "coil",
    "ignition",
    ["SW", "CB"],
    COLD,
  ),
  load(
    { id: "ballast", name: "ballast resistor", words: "ignition series", stem: "BAL" },
    "resistor",
    "ignition",
    ["1", "2"],
    COLD,
  ),
  load(
    {
      id: "ignition-box",
      name: "ignition box",
      words: "electronic transistor module",
      stem: "IGN",
    },
    "module",
    "ignition",
    ["+", "-"],
    WORKING,
  ),
  {
    id: "condenser",
    name: "condenser",
    words: "capacitor points",
    group: "ignition",
    stem: "CAP",
    asks: [
      {
        id: "capacitanceUf",
        word: "capacitance",
        unit: "uF",
        howTo: "read its can",
        isNeeded: true,
      },
    ],
    make: ({ answers }) => ({
      kind: "capacitor",
      name: "condenser",
      pins: pins("1", "E"),
      positivePin: "1",
      negativePin: "E",
      capacitanceUf: answers.capacitanceUf!,
    }),
  },
  {
    id: "starter",
    name: "starter motor",
    words: "electric start",
    group: "starting",
    stem: "STM",
    asks: [
      {
        id: "runOhm",
        word: "volts over amps while turning",
        unit: "ohm",
        howTo: "clamp meter and voltmeter on its terminal while it cranks",
        isNeeded: true,
      },
    ],
    make: ({ answers }) => ({
      kind: "motor",
      name: "starter motor",
      use: "starter",
      pins: pins("1", "E"),
      between: ["1", "E"],
      runOhm: answers.runOhm!,
    }),
  },
  {
    id: "solenoid",
    name: "starter solenoid",
    words: "relay heavy electric start",
    group: "starting",
    stem: "SOL",
    asks: [{ ...ohm(COLD), id: "coilOhm", word: "coil", isNeeded: true }],
    make: ({ answers }) => ({
      kind: "relay",
      name: "starter solenoid",
      pins: pins("B", "M", "S", "E"),
      coil: { pins: ["S", "E"], ohm: answers.coilOhm! },
      made: [["B", "M"]],
      rest: [],
    }),
  },
  load(
    { id: "grips", name: "heated grips", words: "heater", stem: "HG" },
    "heater",
    "horn and extras",
    ["1", "2"],
    COLD,
  ),
  load(
    { id: "socket", name: "charging socket", words: "USB accessory phone navigation", stem: "USB" },
    "module",
    "horn and extras",
    ["+", "-"],
    WORKING,
  ),
  load(
    { id: "clock", name: "clock or instrument", words: "speedometer", stem: "CLK" },
    "module",
    "horn and extras",
    ["+", "-"],
    WORKING,
  ),
  load(
    { id: "pump", name: "fuel pump", words: "petrol injection", stem: "PUMP" },
    "module",
    "horn and extras",
    ["+", "-"],
    WORKING,
  ),
  load(
    { id: "box", name: "any other load, two terminals", words: "accessory module", stem: "ACC" },
    "module",
    "horn and extras",
    ["1", "2"],
    WORKING,
  ),
];
