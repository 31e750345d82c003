import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, test } from "vitest";
import { polylineDistance, polylineLength, segmentCrossing } from "../../geometry/index.ts";
import { type Job, readJob } from "../../job/index.ts";
import { routeJob } from "../../route/index.ts";
import type { BoardLayout, BoardLimb } from "./boardLayout.ts";
import { layoutBoard } from "./layoutBoard.ts";
import { limbShape } from "./limbShape.ts";

const DEMOS = ["accessory-five-wires", "aldreth-single", "brenzach-twin", "minazuru-four"];
DEMOS.push("orivesta-enduro");

function demo(name: string): Job {
  const path = join(import.meta.dirname, "../../../demos", `${name}.json`);
  const read = readJob(readFileSync(path, "utf8"));
  if (!read.ok) throw new Error(name);
  return read.job;
}

const board = (job: Job, loom: string, boardWidthMm = 1200): BoardLayout | null =>
  layoutBoard(job, routeJob(job), loom, {
    boardWidthMm,
    seed: 1,
    diameterOf: (wires) => 2.2 * Math.sqrt(wires.length),
    labelMmOf: () => 25,
  });

/** Points every 8 mm with how far each lies from the root along the loom. */
function sampled({ limbs, nodes }: BoardLayout) {
  return limbs.map((limb) => {
    const startMm = nodes.find(({ id }) => id === limb.from)!.fromDatumMm;
    let passedMm = 0;
    const samples = limb.points.slice(1).flatMap((b, i) => {
      const a = limb.points[i]!;
      const stepMm = Math.hypot(b.x - a.x, b.y - a.y);
      const count = Math.max(1, Math.ceil(stepMm / 8));
      const made = Array.from({ length: count }, (_, k) => ({
        x: a.x + ((b.x - a.x) * k) / count,
        y: a.y + ((b.y - a.y) * k) / count,
        alongMm: startMm + passedMm + (stepMm * k) / count,
      }));
      passedMm += stepMm;
      return made;
    });
    return { limb, samples };
  });
}

/** Limbs from the root to a limb, itself included. */
function wayTo(limbs: readonly BoardLimb[], limb: BoardLimb): readonly BoardLimb[] {
  const before = limbs.find(({ to }) => to === limb.from);
  return before === undefined ? [limb] : [...wayTo(limbs, before), limb];
}

function expectApart(laid: BoardLayout): void {
  const all = sampled(laid);
  for (const [i, first] of all.entries()) {
    for (const second of all.slice(0, i)) {
      const way = wayTo(laid.limbs, first.limb);
      const shared = wayTo(laid.limbs, second.limb).filter((limb) => way.includes(limb));
      const isAncestor = shared.includes(second.limb);
      const fork = shared.at(-1);
      const forkMm =
        fork === undefined
          ? 0
          : laid.nodes.find(({ id }) => id === (isAncestor ? fork.to : fork.to))!.fromDatumMm;
      const needMm = 25 + (thickest(first.limb) + thickest(second.limb)) / 2 - 1e-6;
      for (const p of first.samples) {
        for (const q of second.samples) {
          const loomMm = isAncestor
            ? p.alongMm - q.alongMm
            : p.alongMm - forkMm + (q.alongMm - forkMm);
          // Only well past the zone of a fork, whichever limb the loom between them is counted on.
          if (loomMm < 260) continue;
          expect(Math.hypot(p.x - q.x, p.y - q.y)).toBeGreaterThanOrEqual(needMm);
        }
      }
    }
  }
}

const thickest = ({ pieces }: BoardLimb): number =>
  Math.max(...pieces.map(({ diameterMm }) => diameterMm));

function crossingsOf({ limbs }: BoardLayout): number {
  let count = 0;
  const cut = limbs.map(({ points }) => points.slice(1).map((b, i) => ({ a: points[i]!, b })));
  for (const [i, first] of cut.entries()) {
    for (const [j, second] of cut.slice(0, i).entries()) {
      const [one, two] = [limbs[i]!, limbs[j]!];
      const meet = [one.from, one.to].filter((end) => [two.from, two.to].includes(end));
      for (const p of first) {
        for (const q of second) {
          const at = segmentCrossing(p, q);
          if (at === null) continue;
          const ends = [one.points[0]!, one.points.at(-1)!];
          const atFork = ends.some(({ x, y }) => Math.hypot(at.x - x, at.y - y) < 1e-6);
          if (meet.length === 0 || !atFork) count++;
        }
      }
    }
  }
  return count;
}

describe.each(DEMOS)("boards of %s", (name) => {
  const job = demo(name);
  const routed = routeJob(job);
  test.each(job.looms.map(({ id }) => id))("%s: true, clear, whole and repeatable", (loom) => {
    const laid = board(job, loom)!;
    for (const { points, lengthMm, pieces } of laid.limbs) {
      expect(Math.abs(polylineLength(points) - lengthMm)).toBeLessThan(1e-6);
      expect(
        Math.abs(pieces.reduce((sum, p) => sum + p.toMm - p.fromMm, 0) - lengthMm),
      ).toBeLessThan(1e-9);
    }
    expect(crossingsOf(laid)).toBe(0);
    expect(laid.faults).toEqual({ crossingCount: 0, tightCount: 0, overWidthMm: 0 });
    expectApart(laid);
    expect(laid.widthMm).toBeLessThanOrEqual(1200 + 1e-6);
    const drawn = new Set(laid.limbs.flatMap(({ pieces }) => pieces.map(({ stretch }) => stretch)));
    const planned = routed.stretches.filter((one) => one.loom === loom).map(({ id }) => id);
    for (const id of planned) expect(drawn).toContain(id);
    expect(board(job, loom)).toEqual(laid);
  });
});

it("folds what is longer than the board, at true length and no tighter than six times its thickness", () => {
  const job = demo("aldreth-single");
  const laid = board(job, "rear", 500)!;
  expect(laid.faults.overWidthMm).toBe(0);
  expect(laid.widthMm).toBeLessThanOrEqual(500);
  const [limb] = laid.limbs;
  expect(limb!.folds.length).toBeGreaterThan(0);
  expect(polylineLength(limb!.points)).toBeCloseTo(780, 6);
  for (const { radiusMm } of limb!.folds) {
    expect(radiusMm).toBeGreaterThanOrEqual(6 * thickest(limb!));
  }
});

it("keeps a fold outside its radius at every chord", () => {
  const shape = limbShape({
    start: { x: 0, y: 0 },
    headingRad: 0,
    lengthMm: 1000,
    bends: [{ atRatio: 0.5, turnDeg: 180 }],
    radiusMm: 60,
    chordDeg: 3,
  })!;
  const { fromMm, toMm } = shape.folds[0]!;
  // Twice the straight part and half a circle of 60 mm, whose chords are tangents: longer than the arc by 0.03 %.
  expect(toMm - fromMm).toBeGreaterThan(Math.PI * 60);
  expect(toMm - fromMm).toBeLessThan(Math.PI * 60 * 1.001);
  const end = shape.points.at(-1)!;
  const centre = { x: fromMm, y: end.y / 2 };
  const arc = shape.points.slice(1, -1);
  expect(polylineDistance([centre, centre], arc)).toBeGreaterThanOrEqual(60 - 1e-9);
  expect(end.y).toBeGreaterThanOrEqual(120);
  expect(end.y).toBeLessThan(120.1);
});

it("lays a limb the way somebody has fixed it", () => {
  const job = demo("aldreth-single");
  const fixed = {
    ...job,
    layout: { ...job.layout, board: { SD: { xMm: 0, yMm: 0 }, RM: { xMm: 50, yMm: 50 } } },
  };
  const [limb] = board(fixed, "rear")!.limbs;
  const a = limb!.points[0]!;
  const b = limb!.points.at(-1)!;
  const angle = (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;
  const isOutwards = limb!.from === "SD";
  expect(angle).toBeCloseTo(isOutwards ? 45 : -135, 6);
});

it("opens a loop at its thinnest run and says which", () => {
  const job = demo("aldreth-single");
  const loop = {
    id: "LOOP",
    from: "UT",
    to: "TB",
    lengthMm: { value: 300, basis: "measured" as const },
  };
  const spare = job.wires.find((wire) => wire.loom === "main")!;
  const pinOf = (part: string): string =>
    `${part}.${job.parts.find(({ id }) => id === part)!.pins[0]!.id}`;
  const around = {
    ...spare,
    id: "W99",
    number: "99",
    from: pinOf("BAT"),
    to: pinOf("CB"),
    via: ["UT"],
  };
  const looped = { ...job, runs: [...job.runs, loop], wires: [...job.wires, around] };
  const laid = board(looped, "main")!;
  expect(laid.brokenLoops).toHaveLength(1);
  expect(laid.nodes.filter(({ meets }) => meets !== null)).toHaveLength(1);
  const drawn = laid.limbs.flatMap(({ pieces }) => pieces.map(({ run }) => run));
  expect(drawn).toContain("LOOP");
  expect(crossingsOf(laid)).toBe(0);
});
