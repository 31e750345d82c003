import type { CircuitPattern, PatternAsk } from "./circuitPattern.ts";
import { given } from "./simplePatterns.ts";

const feed: PatternAsk = {
  id: "feed",
  word: "where the live comes from",
  kind: "pin",
  howTo: "a fused live behind the key",
};

const at = (id: string, word: string): PatternAsk => ({
  id,
  word: `${word} sits at`,
  kind: "station",
});

/** What other road users see. */
export const signalPatterns: readonly CircuitPattern[] = [
  {
    id: "brake-two-switches",
    name: "brake lamp with two switches",
    what: "Front and rear switch beside each other: either lights the brake lamp.",
    dropClass: "tail-signal",
    asks: [
      feed,
      { id: "lamp", word: "brake terminal of the lamp", kind: "pin" },
      at("frontAt", "front switch"),
      at("rearAt", "rear switch"),
      { id: "jointAt", word: "where their wires join", kind: "station" },
    ],
    build(put, { text }) {
      const front = put.part("brake-front", text("frontAt"), "front brake switch");
      const rear = put.part("brake-rear", text("rearAt"), "rear brake switch");
      const live = put.joint(text("jointAt"), 3);
      const out = put.joint(text("jointAt"), 3);
      put.wire(text("feed"), `${live}.1`, text("jointAt"));
      put.wire(`${live}.2`, `${front}.1`);
      put.wire(`${live}.3`, `${rear}.1`);
      put.wire(`${front}.2`, `${out}.1`);
      put.wire(`${rear}.2`, `${out}.2`);
      put.wire(`${out}.3`, text("lamp"), undefined, "brake-lamp");
      put.works(text("lamp"), [
        { positions: { [front]: ["PULLED"] } },
        { positions: { [rear]: ["PUSH"] } },
      ]);
    },
  },
  {
    id: "indicators",
    name: "indicators, four lamps",
    what: "Flasher, switch at the bars, two lamps a side, each lamp with its own return.",
    dropClass: "tail-signal",
    asks: [
      feed,
      at("flasherAt", "flasher"),
      at("switchAt", "switch"),
      at("frontLeftAt", "front left lamp"),
      at("frontRightAt", "front right lamp"),
      at("rearLeftAt", "rear left lamp"),
      at("rearRightAt", "rear right lamp"),
      { id: "frontEarth", word: "where the front lamps return", kind: "pin" },
      { id: "rearEarth", word: "where the rear lamps return", kind: "pin" },
      {
        id: "lampW",
        word: "each lamp",
        kind: "number",
        unit: "W",
        howTo: "read the cap of the bulb",
      },
    ],
    build(put, { text, figure }) {
      const power = given("powerW", figure("lampW"));
      const flasher = put.part("flasher-electronic", text("flasherAt"), "flasher");
      const knob = put.part("turn", text("switchAt"), "indicator switch");
      put.wire(text("feed"), `${flasher}.B`, text("flasherAt"));
      put.wire(`${flasher}.E`, text("frontEarth"), text("flasherAt"));
      put.wire(`${flasher}.L`, `${knob}.F`, undefined, "flasher-output");
      for (const [side, pin] of [
        ["Left", "L"],
        ["Right", "R"],
      ] as const) {
        const front = put.part(
          "indicator",
          text(`front${side}At`),
          `front ${side.toLowerCase()} indicator`,
          power,
        );
        const rear = put.part(
          "indicator",
          text(`rear${side}At`),
          `rear ${side.toLowerCase()} indicator`,
          power,
        );
        const joint = put.joint(text("switchAt"), 3);
        put.wire(`${knob}.${pin}`, `${joint}.1`, undefined, `${side.toLowerCase()}-turn`);
        put.wire(`${joint}.2`, `${front}.L`);
        put.wire(`${joint}.3`, `${rear}.L`);
        put.wire(`${front}.E`, text("frontEarth"), text(`front${side}At`));
        put.wire(`${rear}.E`, text("rearEarth"), text(`rear${side}At`));
        const turned = [{ positions: { [knob]: [side.toUpperCase()] }, flash: "on" as const }];
        put.works(`${front}.L`, turned);
        put.works(`${rear}.L`, turned);
      }
    },
  },
];
