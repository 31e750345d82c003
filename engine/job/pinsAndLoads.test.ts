import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import {
  asFound,
  asPlanned,
  batteryOf,
  connectorCavityPins,
  type Job,
  loadsOf,
  mainEarthBody,
  type Part,
  pinsOf,
  presentWires,
  readJob,
  writeJob,
} from "./index.ts";

const read = readJob(readFileSync("demos/accessory-five-wires.json", "utf8"));
if (!read.ok) throw new Error("the demo does not read");
const demo = read.job;

describe("pins", () => {
  test("of parts, ways of joints, both halves of cavities, points of bodies and their hub", () => {
    const job: Job = {
      ...demo,
      joints: [{ id: "J", kind: "bus", ways: ["a"] }],
      connectors: [{ id: "C", name: "", kind: "block-6.3", cavities: ["3"] }],
    };
    const pins = pinsOf(job);
    const expected = "BAT.+ BAT.- F1.1 F1.2 SPL.L SPL.E SPR.L SPR.E SW.IN SW.OUT J.a C.3p C.3s";
    const ofBody = ["FRAME.hub", "FRAME.BATT", "FRAME.HEAD"];
    expect([...pins.keys()]).toEqual([...expected.split(" "), ...ofBody]);
    expect(pins.get("C.3s")).toMatchObject({ ownerKind: "connector", cavity: "3", half: "socket" });
    expect(connectorCavityPins(job.connectors[0]!)).toEqual([
      { cavity: "3", plug: "C.3p", socket: "C.3s" },
    ]);
    expect(pins.get("FRAME.hub")).toMatchObject({ owner: "FRAME", pinId: "hub", station: null });
  });
});

describe("loads", () => {
  test("the two spot lamps, and nothing else", () => {
    expect(loadsOf(demo).map(({ ref, pins, ratedW }) => [ref, pins, ratedW])).toEqual([
      ["SPL:L-E", ["SPL.L", "SPL.E"], 35],
      ["SPR:L-E", ["SPR.L", "SPR.E"], 35],
    ]);
  });

  test("elements, windings and one-way lamps; relay coils are none", () => {
    const ohm = { value: 3, basis: "stated" as const };
    const pins = [{ id: "1" }, { id: "2" }];
    const base = { name: "", pins };
    const parts: readonly Part[] = [
      { ...base, id: "H", kind: "horn", elements: [{ pins: ["1", "2"], ohm }] },
      { ...base, id: "M", kind: "motor", use: "fan", between: ["2", "1"], runOhm: ohm },
      { ...base, id: "R", kind: "relay", coil: { pins: ["1", "2"], ohm }, made: [], rest: [] },
      {
        ...base,
        id: "L",
        kind: "lamp",
        source: "led",
        filaments: [{ pins: ["1", "2"], ratedV: 12, ratedW: 1 }],
      },
    ];
    const loads = loadsOf({ ...demo, parts });
    expect(loads.map(({ ref, kind, oneWay }) => [ref, kind, oneWay])).toEqual([
      ["H:1-2", "element", false],
      ["M:2-1", "winding", false],
      ["L:1-2", "filament", true],
    ]);
    expect(loads.map(({ resistanceOhm }) => resistanceOhm)).toEqual([3, 3, null]);
  });
});

describe("battery and earth", () => {
  test("which post is earthed is data", () => {
    expect(batteryOf(demo)).toMatchObject({ earthedPost: "BAT.-", livePost: "BAT.+" });
    const turned: Job = { ...demo, supply: { ...demo.supply, earthPolarity: "positive" } };
    expect(batteryOf(turned)).toMatchObject({ earthedPost: "BAT.+", livePost: "BAT.-" });
    expect(batteryOf({ ...demo, parts: [] })).toBeNull();
  });

  test("of two batteries in series, the one whose post is on a body", () => {
    const battery = demo.parts[0]!;
    const bond = { ...demo.bonds[0]!, from: "BX.-" };
    const job = { ...demo, parts: [battery, { ...battery, id: "BX" }], bonds: [bond] };
    expect(batteryOf(job)?.battery.id).toBe("BX");
  });

  test("the frame is earth, then the engine, then whatever there is", () => {
    const body = (id: string, kind: "frame" | "engine" | "bars") => ({
      id,
      name: "",
      kind,
      points: [],
    });
    const of = (...bodies: Job["bodies"][number][]) => mainEarthBody({ ...demo, bodies })?.id;
    expect(of(body("A", "bars"), body("B", "engine"), body("Z", "frame"))).toBe("Z");
    expect(of(body("A", "bars"), body("B", "engine"))).toBe("B");
    expect(of(body("B", "bars"), body("A", "bars"))).toBe("A");
    expect(of()).toBeUndefined();
  });
});

describe("as found and as planned", () => {
  const files = readdirSync("demos").filter((name) => name.endsWith(".json"));
  for (const file of files) {
    test(`${file}: both read as jobs of their own`, () => {
      const whole = readJob(readFileSync(`demos/${file}`, "utf8"));
      if (!whole.ok) throw new Error(JSON.stringify(whole.refusals.slice(0, 3)));
      for (const job of [asFound(whole.job), asPlanned(whole.job)]) {
        const again = readJob(writeJob(job));
        expect(again.ok ? [] : again.refusals).toEqual([]);
      }
      expect(asPlanned(whole.job).wires.length).toBeLessThanOrEqual(presentWires(whole.job).length);
    });
  }

  test("before the work nothing new is there and what goes is still there", () => {
    const [first, second, ...others] = demo.wires;
    const wires = [
      { ...first!, status: "remove" as const },
      { ...second!, status: "keep" as const },
      ...others,
    ];
    const parts = demo.parts.map((part) => ({ ...part, status: "keep" as const }));
    const job: Job = { ...demo, wires, parts };
    expect(asFound(job).wires.map(({ id, status }) => [id, status])).toEqual([
      ["W1", "found"],
      ["W2", "keep"],
    ]);
    expect(presentWires(job).map(({ id }) => id)).toEqual(["W2", "W3", "W4", "W5"]);
    expect(asPlanned(job).wires).toEqual(presentWires(job));
  });

  test("what named a part that is not there goes with it", () => {
    const found = asFound(demo);
    expect(found.parts.map(({ id }) => id)).toEqual(["BAT"]);
    expect(found.wires).toEqual([]);
    expect(found.intents).toEqual([]);
    expect(found.bonds.map(({ id }) => id)).toEqual(["BE"]);
    expect(found.states.map(({ positions, on }) => [positions, on])).toEqual([
      [{}, undefined],
      [{}, []],
    ]);
  });
});
