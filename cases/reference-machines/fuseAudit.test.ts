import { readFileSync } from "node:fs";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { describe, expect, test } from "vitest";
import { type Job, readJob } from "../../engine/job/index.ts";
import { buildJobNetwork, conditionsOf } from "../../engine/operate/index.ts";
import { type Guard, wireGuards } from "../../engine/protect/index.ts";
import { conductorsOf, routeJob } from "../../engine/route/index.ts";

interface AuditRow {
  readonly machine: string;
  readonly fuse: string;
  readonly wireCount: string;
  readonly smallestMm2: string;
}

const here = import.meta.dirname;
const audit: readonly AuditRow[] = parse(readFileSync(join(here, "fuse-audit.csv"), "utf8"), {
  columns: true,
});

function readMachine(name: string): Job {
  const read = readJob(readFileSync(join(here, name, "job.json"), "utf8"));
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return read.job;
}

function protectionOf(job: Job) {
  const conductors = conductorsOf(job, routeJob(job));
  const network = buildJobNetwork(job, conductors, { conditions: conditionsOf(job, {}) });
  return { conductors, ...wireGuards(job, network, conductors) };
}

const direct = (guards: readonly Guard[]) =>
  guards.find((guard) => guard.sourceKind === "battery" && guard.via === null);

describe.each(["a", "c", "d", "e"])("machine %s: which fuse guards which wire", (name) => {
  const { guards, conductors } = protectionOf(readMachine(name));
  test.each(audit.filter(({ machine }) => machine === name))(
    "$fuse guards $wireCount wires, the thinnest $smallestMm2 mm2",
    ({ fuse, wireCount, smallestMm2 }) => {
      const wires = [...guards].filter(([, list]) => {
        const guard = direct(list);
        return (
          guard !== undefined && (fuse === "none" ? guard.sumA === null : guard.cut.join() === fuse)
        );
      });
      expect(wires.length).toBe(Number(wireCount));
      const thinnest = Math.min(...wires.map(([wire]) => conductors.get(wire)!.areaMm2));
      // Trade sizes hold up to 5 % less copper than their name, counted strand by strand.
      expect(thinnest / Number(smallestMm2)).toBeGreaterThan(0.95);
      expect(thinnest / Number(smallestMm2)).toBeLessThan(1.06);
    },
  );
});

describe("feeds in parallel", () => {
  const job = readMachine("c");
  // A second fuse beside the headlamp fuse, from the same switched live to the same lighting feed.
  const fuse = job.parts.find((part) => part.id === "F1")!;
  const [feed, out] = ["C30", "C31"].map((id) => job.wires.find((wire) => wire.id === id)!);
  const doubled: Job = {
    ...job,
    parts: [...job.parts, { ...fuse, id: "F9" } as Job["parts"][number]],
    wires: [
      ...job.wires,
      { ...feed!, id: "X1", from: "J2.4", to: "F9.IN" },
      { ...out!, id: "X2", from: "F9.OUT", to: "F1.OUT" },
    ],
  };

  test("two 10 A fuses side by side sum to the 20 A of the main fuse", () => {
    const guard = direct(protectionOf(doubled).guards.get("C37")!)!;
    expect(guard.sumA).toBe(20);
  });

  test("behind a 40 A main fuse the two together are the cut", () => {
    const bigMain: Job = {
      ...doubled,
      parts: doubled.parts.map((part) =>
        part.id === "F0" ? { ...part, ratingA: 40 } : part,
      ) as Job["parts"],
    };
    const guard = direct(protectionOf(bigMain).guards.get("C37")!)!;
    expect(guard.cut).toEqual(["F1", "F9"]);
    expect(guard.sumA).toBe(20);
  });
});

describe("what dies with a fuse", () => {
  test("machine c: headlamp fuse takes both filaments and the main beam lamp, and nothing else", () => {
    const { dies } = protectionOf(readMachine("c"));
    expect(dies.get("F1")).toEqual(["HBI:L-E", "HEAD:HI-E", "HEAD:LO-E"]);
  });
});

describe("what dies through a relay", () => {
  test("the four's headlamp control fuse takes both filaments: their relays can no longer pull", () => {
    const read = readJob(readFileSync(join(here, "../../demos/minazuru-four.json"), "utf8"));
    if (!read.ok) throw new Error("the demo does not read");
    const { dies } = protectionOf(read.job);
    expect(dies.get("F1")).toEqual(expect.arrayContaining(["HEAD:HI-E", "HEAD:LO-E"]));
  });
});

describe("a return wire", () => {
  test("is reached through the load whose feed lets the most through, one failing at a time", () => {
    const [guard] = protectionOf(readMachine("c")).guards.get("C69")!;
    expect(guard).toMatchObject({ cut: ["F1"], sumA: 10 });
    expect(guard!.via).toMatch(/^HEAD:/);
  });
});
