import { describe, expect, it } from "vitest";
import { applyOperation } from "../edit/applyOperation.ts";
import { after, demoJob } from "../edit/demoJobs.fixture.ts";
import type { Job, Valued } from "../job.ts";
import { metalNets } from "../metalNets.ts";
import { circuitPatterns, patternOperation } from "./circuitPatterns.ts";

const job = demoJob("minazuru-four");
const wire = job.wires.find(({ id }) => id === "C45") ?? job.wires[0]!;

/** Answers a person could give on the four: places of the machine, pins that are there. */
const TEXT: Readonly<Record<string, string>> = {
  wire: wire.id,
  load: wire.to,
  feed: `${job.joints.find(({ id }) => id === "J12")!.id}.*`,
  earth: "FR.*",
  frontEarth: "FR.*",
  rearEarth: "FR.*",
  kill: "CL1.CB",
  lamp: "REAR.STOP",
};

function answersFor({ asks }: (typeof circuitPatterns)[number], of: Job) {
  const text: Record<string, string> = {};
  const figures: Record<string, Valued> = {};
  for (const { id, kind } of asks) {
    if (kind === "number") figures[id] = { value: 11, basis: "stated" };
    else if (kind === "station") text[id] = of.stations[1]!.id;
    else text[id] = TEXT[id]!;
  }
  return { text, figures };
}

describe("circuit patterns", () => {
  it("each makes parts and wires that can be read, undone, and done twice over", () => {
    for (const pattern of circuitPatterns) {
      const { text, figures } = answersFor(pattern, job);
      const made = patternOperation(job, pattern.id, text, figures);
      if (!made.ok) throw new Error(`${pattern.id}: ${made.missing.join()}`);
      const once = after(job, made.operation);
      expect(once.parts.length).toBe(job.parts.length + made.parts.length);
      expect(once.wires.length).toBeGreaterThan(job.wires.length);
      const again = patternOperation(once, pattern.id, text, figures);
      expect(again.ok && applyOperation(once, again.operation).ok).toBe(true);
    }
  });

  it("brings no figure but those that were given", () => {
    for (const pattern of circuitPatterns) {
      const { text, figures } = answersFor(pattern, job);
      const made = patternOperation(job, pattern.id, text, figures);
      if (!made.ok) throw new Error(pattern.id);
      const items = after(job, made.operation).parts.filter(({ id }) => made.parts.includes(id));
      const numbers = JSON.stringify(items, noIds).match(/(?<=:)\d+(\.\d+)?/g) ?? [];
      expect(
        numbers.filter((number) => !["11", `${job.supply.nominalV}`].includes(number)),
      ).toEqual([]);
    }
  });

  it("gives every new wire a colour, one for each piece of metal, the machine's own where it has one", () => {
    for (const pattern of circuitPatterns) {
      const { text, figures } = answersFor(pattern, job);
      const made = patternOperation(job, pattern.id, text, figures);
      if (!made.ok) throw new Error(pattern.id);
      const done = after(job, made.operation);
      const fresh = done.wires.filter(({ id }) => !job.wires.some((one) => one.id === id));
      expect(
        fresh.filter(({ colour }) => colour === undefined),
        pattern.id,
      ).toEqual([]);
      const nets = metalNets(done);
      const earths = fresh.filter(({ from }) => nets.isEarth(from));
      // This machine's earths are green, as its scheme has it (tables/colourSchemes japanese-1).
      for (const { colour } of earths) expect(colour?.main, pattern.id).toBe("green");
      for (const one of fresh) {
        for (const other of fresh) {
          if (nets.netOf(one.from) === nets.netOf(other.from)) {
            expect(one.colour, `${pattern.id} ${one.id} ${other.id}`).toEqual(other.colour);
          }
        }
      }
    }
  });

  it("gives what a scheme has for the purpose, and no colour another wire wears for the rest", () => {
    const { text, figures } = answersFor(
      circuitPatterns.find(({ id }) => id === "indicators")!,
      job,
    );
    const made = patternOperation(job, "indicators", text, figures);
    if (!made.ok) throw new Error("indicators");
    const done = after(job, made.operation);
    const knob = made.parts.find((id) => id.startsWith("TURN"))!;
    const on = (pin: string) =>
      done.wires.find(({ from, to }) => from === pin || to === pin)?.colour;
    // tables/colourSchemes japanese-1: left-turn orange, right-turn light blue, flasher output grey.
    expect(on(`${knob}.L`)).toEqual({ main: "orange" });
    expect(on(`${knob}.R`)).toEqual({ main: "light blue" });
    expect(on(`${knob}.F`)).toEqual({ main: "grey" });
    const fused = circuitPatterns.find(({ id }) => id === "fused-accessory")!;
    const asked = answersFor(fused, job);
    const second = patternOperation(job, fused.id, asked.text, asked.figures);
    if (!second.ok) throw new Error(fused.id);
    const with2 = after(job, second.operation);
    const worn = new Set(job.wires.map(({ colour }) => JSON.stringify(colour)));
    const free = with2.wires.filter(
      ({ id, from, to }) =>
        !job.wires.some((one) => one.id === id) &&
        [from, to].every((pin) => second.parts.some((part) => pin.startsWith(`${part}.`))),
    );
    expect(free).toHaveLength(2);
    for (const { colour } of free) expect(worn.has(JSON.stringify(colour))).toBe(false);
  });

  it("asks for what is missing and does nothing", () => {
    for (const { id, asks } of circuitPatterns) {
      const made = patternOperation(job, id, {}, {});
      expect(made).toEqual({
        ok: false,
        missing: asks.filter(({ isOptional }) => !isOptional).map(({ word }) => word),
      });
    }
    expect(patternOperation(job, "nothing", {}, {}).ok).toBe(false);
  });

  it("is refused, not half made, where a pin is not there", () => {
    const brake = circuitPatterns.find(({ id }) => id === "brake-two-switches")!;
    const { text, figures } = answersFor(brake, job);
    const made = patternOperation(job, brake.id, { ...text, lamp: "NOWHERE.1" }, figures);
    expect(made.ok && applyOperation(job, made.operation).ok).toBe(false);
  });
});

const noIds = (key: string, value: unknown): unknown => (key === "id" ? undefined : value);
