import {
  answered,
  type PartTemplate,
  pins,
  type TemplateAsk,
  type TemplateGroup,
} from "./partTemplate.ts";

const GROUP: TemplateGroup = "battery and charging";

const ask = (
  id: string,
  word: string,
  unit: string,
  howTo: string,
  isNeeded = false,
): TemplateAsk => ({ id, word, unit, howTo, isNeeded });

const capacity = ask("capacityAh", "capacity", "Ah", "read the label", true);
const setV = ask(
  "setV",
  "holds",
  "V",
  "read the label, or a voltmeter on the battery at speed",
  true,
);
const ratedW = ask("ratedW", "rated", "W", "the machine's handbook or the plate");
const windingOhm = ask(
  "windingOhm",
  "winding",
  "ohm",
  "ohmmeter, leads off, less the probes joined",
);

const battery = (
  id: string,
  name: string,
  chemistry: "flooded" | "agm" | "gel" | "lifepo4",
): PartTemplate => ({
  id,
  name,
  words: "accumulator lead acid lithium",
  group: GROUP,
  stem: "BAT",
  asks: [capacity],
  make: ({ supply, answers }) => ({
    kind: "battery",
    name,
    pins: pins("+", "-"),
    positivePin: "+",
    negativePin: "-",
    chemistry,
    nominalV: supply.nominalV,
    capacityAh: answers.capacityAh!,
  }),
});

/** One winding per phase, none of them earthed. */
const magnet = (
  id: string,
  name: string,
  phases: readonly (readonly string[])[],
): PartTemplate => ({
  id,
  name,
  words: "stator generator",
  group: GROUP,
  stem: "ALT",
  asks: [ratedW, windingOhm],
  make: ({ answers }) => ({
    kind: "generator",
    name,
    pins: phases.flat().map((pin) => ({ id: pin, role: "ac" as const })),
    type: "alternator-pm",
    windings: phases.map((own) => ({
      use: "phase" as const,
      pins: [...own],
      ...answered("ohm", answers.windingOhm),
    })),
    ...(answers.ratedW === undefined ? {} : { ratedW: answers.ratedW.value }),
  }),
});

const regulator = (
  id: string,
  name: string,
  type: "shunt" | "series",
  inputs: readonly string[],
): PartTemplate => ({
  id,
  name,
  words: "rectifier charging",
  group: GROUP,
  stem: "REG",
  asks: [setV],
  make: ({ answers }) => ({
    kind: "regulator",
    name,
    pins: [...inputs.map((pin) => ({ id: pin, role: "ac" as const })), ...pins("P", "N")],
    type,
    inputPins: [...inputs],
    positivePin: "P",
    negativePin: "N",
    setV: answers.setV!,
  }),
});

export const supplyTemplates: readonly PartTemplate[] = [
  battery("battery-flooded", "battery, lead, flooded", "flooded"),
  battery("battery-agm", "battery, lead, AGM", "agm"),
  battery("battery-gel", "battery, lead, gel", "gel"),
  battery("battery-lithium", "battery, lithium iron phosphate", "lifepo4"),
  {
    id: "dynamo",
    name: "dynamo",
    words: "generator direct current",
    group: GROUP,
    stem: "DYN",
    asks: [ratedW],
    make: ({ answers }) => ({
      kind: "generator",
      name: "dynamo",
      pins: pins("D", "F"),
      type: "dynamo",
      windings: [
        { use: "armature", pins: ["D"] },
        { use: "field", pins: ["F"] },
      ],
      ...(answers.ratedW === undefined ? {} : { ratedW: answers.ratedW.value }),
    }),
  },
  magnet("alternator-1", "alternator, magnets, single phase", [["A", "B"]]),
  magnet("alternator-3", "alternator, magnets, three phases", [["Y1"], ["Y2"], ["Y3"]]),
  regulator("regulator-1", "regulator and rectifier, two inputs", "shunt", ["A", "B"]),
  regulator("regulator-3", "regulator and rectifier, three inputs", "shunt", ["Y1", "Y2", "Y3"]),
  {
    id: "zener",
    name: "shunt diode on a heat sink",
    words: "zener regulator",
    group: GROUP,
    stem: "ZEN",
    asks: [setV],
    make: ({ supply, answers }) => ({
      kind: "regulator",
      name: "shunt diode",
      pins: pins("L", "E"),
      type: "zener",
      inputPins: [],
      ...(supply.earthPolarity === "negative"
        ? { positivePin: "L", negativePin: "E" }
        : { positivePin: "E", negativePin: "L" }),
      setV: answers.setV!,
    }),
  },
  {
    id: "rectifier-bridge",
    name: "rectifier, bridge",
    words: "diode plate",
    group: GROUP,
    stem: "RECT",
    asks: [ask("ratingA", "made for", "A", "stamped on it")],
    make: ({ answers }) => ({
      kind: "rectifier",
      name: "rectifier",
      pins: pins("A", "B", "P", "N"),
      junctions: [
        { anode: "A", cathode: "P" },
        { anode: "B", cathode: "P" },
        { anode: "N", cathode: "A" },
        { anode: "N", cathode: "B" },
      ],
      ...answered("ratingA", answers.ratingA),
    }),
  },
  {
    id: "diode",
    name: "diode",
    words: "one way",
    group: GROUP,
    stem: "DIO",
    asks: [ask("ratingA", "made for", "A", "stamped on it")],
    make: ({ answers }) => ({
      kind: "diode",
      name: "diode",
      pins: pins("A", "K"),
      junctions: [{ anode: "A", cathode: "K" }],
      ...answered("ratingA", answers.ratingA),
    }),
  },
  {
    id: "ammeter",
    name: "ammeter",
    words: "gauge instrument",
    group: GROUP,
    stem: "AMM",
    asks: [ask("ohm", "resistance", "ohm", "volts across it over amps through it")],
    make: ({ answers }) => ({
      kind: "meter",
      name: "ammeter",
      measures: "amps",
      pins: pins("1", "2"),
      between: ["1", "2"],
      ...answered("ohm", answers.ohm),
    }),
  },
];
