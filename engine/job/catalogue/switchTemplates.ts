import type { PartTemplate } from "./partTemplate.ts";
import { pins } from "./partTemplate.ts";

type Row = readonly [id: string, joins: readonly (readonly [string, string])[]];
type Named = Pick<PartTemplate, "id" | "name" | "words" | "stem">;

interface Made {
  readonly pins: readonly string[];
  readonly rows: readonly Row[];
  readonly driven?: "hand" | "machine" | "engine";
  readonly isMomentary?: boolean;
  readonly follows?: { stopped: string; cranking: string; running: string };
}

const made = (
  at: Named,
  { pins: ids, rows, driven, isMomentary, follows }: Made,
): PartTemplate => ({
  ...at,
  group: "switches",
  asks: [],
  make: () => ({
    kind: "switch",
    name: at.name,
    pins: pins(...ids),
    driven: driven ?? "hand",
    positions: rows.map(([id, joins]) => ({ id, joins })),
    rest: rows[0]![0],
    ...(isMomentary ? { momentary: true } : {}),
    ...(follows === undefined ? {} : { follows }),
  }),
});

const A_B = [["1", "2"]] as const;

/** Switches whose contacts follow from what they are. Those that differ from maker to maker come with an empty table, to be metered. */
export const switchTemplates: readonly PartTemplate[] = [
  made(
    { id: "key-2", name: "key switch, 2 terminals", words: "ignition main", stem: "KEY" },
    {
      pins: ["1", "2"],
      rows: [
        ["OFF", []],
        ["ON", A_B],
      ],
    },
  ),
  made(
    {
      id: "key-4",
      name: "key switch, 4 terminals, to be metered",
      words: "ignition main park",
      stem: "KEY",
    },
    {
      pins: ["1", "2", "3", "4"],
      rows: [
        ["OFF", []],
        ["ON", []],
        ["PARK", []],
      ],
    },
  ),
  made(
    { id: "lights-3", name: "light switch, to be metered", words: "lamp head pilot", stem: "LTS" },
    {
      pins: ["1", "2", "3"],
      rows: [
        ["OFF", []],
        ["PILOT", []],
        ["HEAD", []],
      ],
    },
  ),
  made(
    { id: "dip", name: "dip switch", words: "main beam high low", stem: "DIP" },
    {
      pins: ["F", "HI", "LO"],
      rows: [
        ["LO", [["F", "LO"]]],
        ["HI", [["F", "HI"]]],
      ],
    },
  ),
  made(
    { id: "turn", name: "indicator switch", words: "turn signal left right", stem: "TURN" },
    {
      pins: ["F", "L", "R"],
      rows: [
        ["OFF", []],
        ["LEFT", [["F", "L"]]],
        ["RIGHT", [["F", "R"]]],
      ],
    },
  ),
  made(
    { id: "on-off", name: "switch, on and off", words: "toggle lights spot heater", stem: "SW" },
    {
      pins: ["1", "2"],
      rows: [
        ["OFF", []],
        ["ON", A_B],
      ],
    },
  ),
  made(
    { id: "push", name: "push button", words: "horn starter", stem: "PB" },
    {
      pins: ["1", "2"],
      rows: [
        ["OUT", []],
        ["PUSH", A_B],
      ],
      isMomentary: true,
    },
  ),
  made(
    {
      id: "kill-break",
      name: "engine stop switch, breaks the feed",
      words: "kill run",
      stem: "KILL",
    },
    {
      pins: ["1", "2"],
      rows: [
        ["RUN", A_B],
        ["OFF", []],
      ],
    },
  ),
  made(
    {
      id: "kill-earth",
      name: "engine stop button, earths the magneto",
      words: "kill cut-out",
      stem: "KILL",
    },
    {
      pins: ["1", "2"],
      rows: [
        ["RUN", []],
        ["STOP", A_B],
      ],
    },
  ),
  made(
    { id: "brake-front", name: "brake lamp switch, front", words: "stop lever", stem: "BF" },
    {
      pins: ["1", "2"],
      rows: [
        ["OUT", []],
        ["PULLED", A_B],
      ],
      isMomentary: true,
    },
  ),
  made(
    { id: "brake-rear", name: "brake lamp switch, rear", words: "stop pedal", stem: "BR" },
    {
      pins: ["1", "2"],
      rows: [
        ["OUT", []],
        ["PUSH", A_B],
      ],
      isMomentary: true,
    },
  ),
  made(
    { id: "neutral", name: "neutral switch", words: "gearbox", stem: "NEU" },
    {
      pins: ["1", "2"],
      rows: [
        ["NEUTRAL", A_B],
        ["GEAR", []],
      ],
      driven: "machine",
    },
  ),
  made(
    { id: "clutch", name: "clutch switch", words: "lever", stem: "CLU" },
    {
      pins: ["1", "2"],
      rows: [
        ["OUT", []],
        ["PULLED", A_B],
      ],
      isMomentary: true,
    },
  ),
  made(
    { id: "stand", name: "side-stand switch", words: "prop", stem: "STD" },
    {
      pins: ["1", "2"],
      rows: [
        ["UP", A_B],
        ["DOWN", []],
      ],
      driven: "machine",
    },
  ),
  made(
    { id: "oil", name: "oil pressure switch", words: "sender engine", stem: "OPS" },
    {
      pins: ["1", "2"],
      rows: [
        ["NO-PRESSURE", A_B],
        ["PRESSURE", []],
      ],
      driven: "engine",
      follows: { stopped: "NO-PRESSURE", cranking: "NO-PRESSURE", running: "PRESSURE" },
    },
  ),
  made(
    { id: "points", name: "contact breaker", words: "points ignition", stem: "PT" },
    {
      pins: ["1", "2"],
      rows: [
        ["CLOSED", A_B],
        ["OPEN", []],
      ],
      driven: "machine",
    },
  ),
];
