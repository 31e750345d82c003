import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { applyOperation, type Job, patternOperation, readJob } from "../job/index.ts";
import { operateJob } from "../operate/index.ts";
import { planJob } from "./planJob.ts";

const read = readJob(readFileSync("demos/accessory-five-wires.json", "utf8"));
if (!read.ok) throw new Error("the demo does not read");

const stations = ["A", "B"].map((id) => ({ id, name: id }));
const runs = [
  { id: "A-B", from: "A", to: "B", lengthMm: { value: 500, basis: "measured" as const } },
];
const bare: Job = { ...read.job, stations, runs };
const stated = (value: number) => ({ value, basis: "stated" as const });
const frame = "FRAME.*";
/** Behind the demo's own fuse. */
const live = "F1.2";

function made(id: string, text: Record<string, string>, figures = {}, job = bare) {
  const pattern = patternOperation(job, id, text, figures);
  if (!pattern.ok) throw new Error(pattern.missing.join());
  const done = applyOperation(job, pattern.operation);
  if (!done.ok) throw new Error(JSON.stringify(done.refusals[0]));
  const named = (name: string): string =>
    done.job.parts.find((part) => part.name === name && pattern.parts.includes(part.id))!.id;
  return { job: done.job, named };
}

/** Parts whose lamps or loads work with the switches so. */
function working(job: Job, set: Record<string, string>, flash: "on" | "off" = "on"): string[] {
  const { conductors } = planJob(job);
  const done = operateJob(job, conductors, { set, flash });
  if (!done.ok) throw new Error(JSON.stringify(done.refusals));
  const { lamps, loads } = done.solution;
  const on = [
    ...lamps.filter(({ lit }) => lit).map(({ part }) => part),
    ...loads.filter(({ works }) => works).map(({ part }) => part),
  ];
  return [...new Set(on)].sort();
}

describe("circuit patterns at work", () => {
  it("horn sounds while its button is pushed", () => {
    const text = { feed: live, hornAt: "A", pushAt: "B", earth: frame };
    const { job, named } = made("horn-push", text, { ohm: stated(4) });
    expect(working(job, {})).toEqual([]);
    expect(working(job, { [named("horn button")]: "PUSH" })).toEqual([named("horn")]);
  });

  it("accessory works with its switch on and dies with its fuse", () => {
    const text = { feed: live, fuseAt: "A", switchAt: "B", loadAt: "B", earth: frame };
    const { job, named } = made("fused-accessory", text, { fuseA: stated(5), ohm: stated(10) });
    const on = { [named("accessory switch")]: "ON" };
    expect(working(job, on)).toEqual([named("accessory")]);
    const { conductors } = planJob(job);
    const blown = operateJob(job, conductors, { set: on, open: [named("accessory fuse")] });
    expect(blown.ok && blown.solution.loads.find(({ works }) => works)).toBeUndefined();
  });

  it("each beam lights in its own position, the warning lamp with the main beam", () => {
    const text = { feed: live, dipAt: "A", lampAt: "B", warnAt: "A", earth: frame };
    const watts = { mainW: stated(45), dipW: stated(40), warnW: stated(2) };
    const { job, named } = made("headlamp-dip", text, watts);
    const dip = named("dip switch");
    const filament = (set: Record<string, string>) => {
      const done = operateJob(job, planJob(job).conductors, { set });
      if (!done.ok) throw new Error("not solved");
      return done.solution.lamps
        .filter(({ lit }) => lit)
        .map(({ part, filament: of }) => `${part} ${of}`);
    };
    const [head, warn] = [named("headlamp"), named("main-beam warning")];
    expect(filament({ [dip]: "LO" })).toEqual([expect.stringContaining(`${head} `)]);
    const main = filament({ [dip]: "HI" });
    expect(main.map((one) => one.split(" ")[0]).sort()).toEqual([head, warn].sort());
    expect(main.some((one) => filament({ [dip]: "LO" }).includes(one))).toBe(false);
  });

  it("either brake switch lights the brake lamp", () => {
    const lamp = "SPL.L";
    const text = { feed: live, lamp, frontAt: "A", rearAt: "B", jointAt: "A" };
    const { job, named } = made("brake-two-switches", text);
    const [front, rear] = [named("front brake switch"), named("rear brake switch")];
    expect(working(job, {})).toEqual([]);
    for (const set of [{ [front]: "PULLED" }, { [rear]: "PUSH" }]) {
      expect(working(job, set)).toContain("SPL");
    }
  });

  it("indicators light on their own side only, and only while the flasher is on", () => {
    const at = { flasherAt: "A", switchAt: "A", frontLeftAt: "A", frontRightAt: "A" };
    const text = {
      feed: live,
      ...at,
      rearLeftAt: "B",
      rearRightAt: "B",
      frontEarth: frame,
      rearEarth: frame,
    };
    const { job, named } = made("indicators", text, { lampW: stated(10) });
    const knob = named("indicator switch");
    for (const side of ["left", "right"]) {
      const set = { [knob]: side.toUpperCase() };
      const lamps = [named(`front ${side} indicator`), named(`rear ${side} indicator`)].sort();
      expect(working(job, set, "on")).toEqual(lamps);
      expect(working(job, set, "off")).toEqual([]);
    }
    expect(working(job, {}, "on")).toEqual([]);
  });

  it("the stop switch kills what its wire fed", () => {
    const { job, named } = made("kill-feed", { wire: "W2", switchAt: "A" });
    const on = { SW: "ON" };
    expect(working(job, on)).toEqual(["SPL", "SPR"]);
    expect(working(job, { ...on, [named("engine stop switch")]: "OFF" })).toEqual([]);
  });

  it("the relay takes the load over: the switch carries the coil's current, the lamps still light", () => {
    const text = { wire: "W3", load: "SPL.L", feed: live, earth: frame, relayAt: "A" };
    const { job, named } = made("relay-for-load", text, { coilOhm: stated(90) });
    expect(working(job, {})).toEqual([]);
    expect(working(job, { SW: "ON" })).toEqual(["SPL", "SPR"]);
    const done = operateJob(job, planJob(job).conductors, { set: { SW: "ON" } });
    if (!done.ok) throw new Error("not solved");
    const { wires, batteries, relays } = done.solution;
    const coil = Math.abs(wires.find(({ wire }) => wire === "W3")!.currentA);
    expect(relays.find(({ part }) => part === named("relay"))?.pulled).toBe(true);
    // Ohm's law: at most the battery's volts over the coil.
    expect(coil).toBeLessThanOrEqual((batteries[0]!.terminalV / 90) * (1 + 1e-9));
    expect(coil).toBeGreaterThan(0.9 * (batteries[0]!.terminalV / 90));
  });

  it("the magneto's button joins its kill lead to the frame", () => {
    const text = { kill: "SW.OUT", buttonAt: "A", earth: frame };
    const { job, named } = made("kill-magneto", text);
    const wires = job.wires.slice(bare.wires.length);
    expect(wires.map(({ from }) => from)).toEqual(["SW.OUT", `${named("engine stop button")}.2`]);
    expect(wires[1]?.to.startsWith("FRAME.")).toBe(true);
  });
});
