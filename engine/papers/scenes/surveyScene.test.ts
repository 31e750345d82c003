import { describe, expect, it } from "vitest";
import { CAP_MM, measureTextMm } from "../../drawing/index.ts";
import { demo } from "../demoJob.fixture.ts";
import { neighboursOf } from "./neighboursOf.ts";
import { surveyScene } from "./surveyScene.ts";

const room = { widthMm: 300, heightMm: 150 };

describe("the machine to be surveyed", () => {
  for (const name of ["aldreth-single", "minazuru-four", "orivesta-enduro", "brenzach-twin"]) {
    it(`${name}: every placed station and run, on the page, words clear of each other`, () => {
      const job = demo(name);
      const scene = surveyScene(job, room);
      expect(scene.stations.map(({ id }) => id).sort()).toEqual(
        Object.keys(job.layout.side ?? {}).sort(),
      );
      expect(scene.runs).toHaveLength(job.runs.length);
      const boxes = scene.stations.flatMap(({ label, holds }) =>
        label === null ? [] : [{ ...label, heightMm: holds === "" ? 4.2 : 8.4 }],
      );
      for (const { xMm, yMm } of [...scene.stations.map(({ at }) => at), ...boxes]) {
        expect(xMm >= 0 && xMm <= room.widthMm && yMm >= 0 && yMm <= room.heightMm).toBe(true);
      }
      const shown = scene.stations.filter(({ label }) => label !== null).length;
      expect(shown).toBeGreaterThan(scene.stations.length / 2);
      const lengths = scene.runs.flatMap(({ box }) => (box === null ? [] : [box]));
      for (const [i, one] of lengths.entries()) {
        for (const other of lengths.slice(i + 1)) {
          const isClear =
            Math.abs(one.xMm - other.xMm) >= 13 || Math.abs(one.yMm - other.yMm) >= 5.4;
          expect(isClear).toBe(true);
        }
      }
    });
  }

  it("names nothing outside a page as narrow as a phone", () => {
    const narrow = { widthMm: 89, heightMm: 100 };
    const scene = surveyScene(demo("aldreth-single"), narrow);
    for (const { label, name } of scene.stations) {
      if (label === null) continue;
      expect(label.xMm).toBeGreaterThanOrEqual(0);
      expect(label.xMm + measureTextMm(name, CAP_MM.text, 700)).toBeLessThanOrEqual(narrow.widthMm);
    }
  });

  it("a place on the scene goes back to the job's own millimetres", () => {
    const job = demo("aldreth-single");
    const one = surveyScene(job, room);
    const [id, at] = Object.entries(job.layout.side!)[0]!;
    const station = one.stations.find((shown) => shown.id === id)!;
    const xMm = (station.at.xMm - one.leftMm) / one.scaleRatio + one.originMm.xMm;
    // Rings that would cover each other stand apart by some millimetres of the page.
    expect(Math.abs(xMm - at.xMm)).toBeLessThan(6 / one.scaleRatio);
  });

  it("shows the body alone where nothing is placed", () => {
    const job = demo("minazuru-four");
    const { side: _, ...layout } = job.layout;
    const scene = surveyScene({ ...job, layout }, room);
    expect(scene.stations).toEqual([]);
    expect(scene.unplaced).toHaveLength(job.stations.length);
    expect(scene.outline.length).toBeGreaterThan(10);
  });

  it("moves the first station over a body that stands still", () => {
    const job = demo("minazuru-four");
    const at = (xMm: number) => {
      const side = { HL: { xMm, yMm: 400 } };
      return surveyScene({ ...job, layout: { ...job.layout, side } }, room);
    };
    const [one, other] = [at(700), at(900)];
    expect(one.outline).toEqual(other.outline);
    const movedMm = other.stations[0]!.at.xMm - one.stations[0]!.at.xMm;
    expect(movedMm).toBeCloseTo(200 * one.scaleRatio, 6);
  });

  it("lays a photograph with its own proportions", () => {
    const job = demo("aldreth-single");
    const photograph = { id: "p", widthPx: 400, heightPx: 100, xMm: 0, yMm: 0, widthMm: 1000 };
    const scene = surveyScene({ ...job, layout: { ...job.layout, photograph } }, room);
    expect(scene.photograph!.widthMm / scene.photograph!.heightMm).toBeCloseTo(4, 9);
    expect(scene.photograph!.widthMm).toBeCloseTo(1000 * scene.scaleRatio, 9);
  });
});

describe("what lies next to a thing", () => {
  it("goes both ways: what a wire ends on has that wire beside it", () => {
    const job = demo("brenzach-twin");
    for (const { id } of job.wires.slice(0, 40)) {
      const ends = neighboursOf(job, { kind: "wire", id }).filter(({ way }) => way !== "beside");
      expect(ends).toHaveLength(2);
      for (const end of ends) {
        const back = neighboursOf(job, end).map((one) => one.id);
        expect(back).toContain(id);
      }
    }
  });

  it("leads from a load to a live post by going towards the feed", () => {
    const job = demo("aldreth-single");
    let at = { kind: "part", id: "HEAD" };
    const passed = new Set<string>();
    for (let steps = 0; steps < 60 && at.id !== "BAT"; steps++) {
      passed.add(at.id);
      const next = neighboursOf(job, at).find(({ way, id }) => way === "feed" && !passed.has(id));
      if (next === undefined) break;
      at = next;
    }
    expect(at.id).toBe("BAT");
  });
});
