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

  it("what it says of its loads is what the solved network does, in every position of its switches and the key", () => {
    const text = { feed: live, dipAt: "A", lampAt: "B", warnAt: "A", earth: frame };
    const watts = { mainW: stated(45), dipW: stated(40), warnW: stated(2) };
    const { job, named } = made("headlamp-dip", text, watts);
    const own = new Set([named("headlamp"), named("main-beam warning")]);
    const intents = job.intents.filter(({ load }) => own.has(load.split(":")[0]!));
    expect(intents).toHaveLength(3);
    const [dip, { conductors }] = [named("dip switch"), planJob(job)];
    for (const position of ["HI", "LO"]) {
      const done = operateJob(job, conductors, { set: { [dip]: position } });
      if (!done.ok) throw new Error("not solved");
      const lit = done.solution.lamps.filter((lamp) => lamp.lit && own.has(lamp.part)).length;
      const meant = intents.filter(({ when }) =>
        when.some(({ positions }) => positions[dip]?.includes(position)),
      );
      expect(lit, position).toBe(meant.length);
    }
  });

  it("behind a switch its loads are to work with that switch too; a brake lamp keeps what was said of it", () => {
    const text = { feed: "SW.OUT", hornAt: "A", pushAt: "B", earth: frame };
    const { job, named } = made("horn-push", text, { ohm: stated(4) });
    const horn = job.intents.find(({ load }) => load.startsWith(`${named("horn")}:`));
    expect(horn?.when).toEqual([{ positions: { SW: ["ON"], [named("horn button")]: ["PUSH"] } }]);
    const brake = { feed: live, lamp: "SPL.L", frontAt: "A", rearAt: "A", jointAt: "A" };
    const braked = made("brake-two-switches", brake);
    expect(braked.job.intents.find(({ load }) => load === "SPL:L-E")?.when).toEqual([
      { positions: { SW: ["ON"] } },
      { positions: { [braked.named("front brake switch")]: ["PULLED"] } },
      { positions: { [braked.named("rear brake switch")]: ["PUSH"] } },
    ]);
  });

  it("behind an engine stop switch all that is said holds only while it runs", () => {
    // W2 feeds the switch, W3 one lamp behind it.
    const before = made("kill-feed", { wire: "W2", switchAt: "A" });
    for (const { when } of before.job.intents) {
      expect(when).toEqual([
        { positions: { SW: ["ON"], [before.named("engine stop switch")]: ["RUN"] } },
      ]);
    }
    const behind = made("kill-feed", { wire: "W3", switchAt: "A" });
    const kill = behind.named("engine stop switch");
    const positionsOf = (load: string) =>
      behind.job.intents.find((intent) => intent.load === load)?.when[0]?.positions;
    expect(positionsOf("SPL:L-E")).toEqual({ SW: ["ON"], [kill]: ["RUN"] });
    for (const position of ["RUN", "OFF"]) {
      const lit = working(behind.job, { SW: "ON", [kill]: position }).includes("SPL");
      expect(lit).toBe(position === "RUN");
    }
  });
});
