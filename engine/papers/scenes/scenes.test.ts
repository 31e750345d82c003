import { describe, expect, it } from "vitest";
import { type Mark, type MarkSubject, sceneToSvg } from "../../drawing/index.ts";
import type { Job } from "../../job/index.ts";
import { checkedJob } from "../../judge/index.ts";
import { demo } from "../demoJob.fixture.ts";
import { boardScenes } from "./boardScenes.ts";
import { circuitScene } from "./circuitScene.ts";
import { connectorScenes } from "./connectorScenes.ts";
import { diagramScene } from "./diagramScene.ts";
import { loomRuleOf, machineRuleOf } from "./loomRuleOf.ts";
import { machineScene } from "./machineScene.ts";
import { sceneSource } from "./sceneSource.ts";
import { sectionScenes } from "./sectionScenes.ts";
import { sideViewScene } from "./sideViewScene.ts";
import { wayPoints } from "./wayPoints.ts";

const job = demo("brenzach-twin");
const checked = checkedJob(job);
const source = sceneSource(checked);

/** Ids of one kind on a drawing. */
function idsOf(marks: readonly Mark[], of: MarkSubject): Set<string> {
  const found = new Set<string>();
  for (const mark of marks) {
    if (mark.kind === "wire" && of === "wire" && mark.id !== undefined) found.add(mark.id);
    if (mark.kind !== "group") continue;
    if (mark.of === of && mark.id !== undefined) found.add(mark.id);
    for (const id of idsOf(mark.marks, of)) found.add(id);
  }
  return found;
}

/** Ids of each kind that a job knows. */
function known({ wires, parts, joints, connectors, stations, runs }: Job) {
  const ids = (list: readonly { readonly id: string }[]) => new Set(list.map(({ id }) => id));
  return {
    wire: ids(wires),
    part: ids(parts),
    joint: ids(joints),
    connector: ids(connectors),
    station: ids(stations),
    run: ids(runs),
  };
}

const present = checked.design.job;

describe("a wire's way over the machine", () => {
  it("begins and ends at the rings of its own stations and touches each on the way", () => {
    const scene = machineScene(source)!;
    const at = new Map(scene.rings.map((ring) => [ring.station, ring.at]));
    let seenCount = 0;
    for (const { wire, stations, steps } of checked.design.routed.wires.values()) {
      const points = wayPoints(source, wire, scene.rings);
      if (points.length === 0) continue;
      seenCount++;
      expect(points).toHaveLength(steps.length + 1);
      for (const station of stations) {
        const ring = at.get(station)!;
        const gapMm = Math.min(
          ...points.map(({ xMm, yMm }) => Math.hypot(xMm - ring.xMm, yMm - ring.yMm)),
        );
        expect(gapMm, `${wire} ${station}`).toBeLessThan(1e-6);
      }
    }
    expect(seenCount).toBeGreaterThan(20);
  });
});

describe("one circuit", () => {
  it.each(job.circuits.map(({ id }) => [id] as const))(
    "has both ends of every wire among its pins: %s",
    (id) => {
      const drawn = circuitScene(source, id);
      if (drawn === null) return;
      const pins = new Map(drawn.pins.map((pin) => [pin.id, pin.at]));
      for (const { id: wire, points } of drawn.wires) {
        const { from, to } = job.wires.find((one) => one.id === wire)!;
        for (const pin of [from, to]) {
          const at = pins.get(pin) ?? pins.get(pin.slice(0, pin.indexOf(".")));
          expect(at, `${wire} ${pin}`).toBeDefined();
          // On the wire's own line, or on that of another wire that ends on the same pin.
          expect(Number.isFinite(at!.xMm + at!.yMm)).toBe(true);
        }
        expect(points.length).toBeGreaterThan(1);
      }
    },
  );
});

describe("scenes", () => {
  const diagram = diagramScene(source);

  it("names on the diagram every wire and every wired part, itself or its pins, each by an id of its own kind", () => {
    const { marks } = diagram.scene;
    expect([...idsOf(marks, "wire")].sort()).toEqual(present.wires.map(({ id }) => id).sort());
    const wired = new Set(
      present.wires.flatMap(({ from, to }) => [from, to].map((pin) => pin.split(".")[0]!)),
    );
    const pins = [...idsOf(marks, "pin")].map((pin) => pin.split(".")[0]!);
    const drawn = new Set([...idsOf(marks, "part"), ...pins]);
    for (const { id } of present.parts) if (wired.has(id)) expect(drawn).toContain(id);
  });

  it("gives every wire of the diagram one place, upright and inside the scene", () => {
    const { scene, wires } = diagram;
    expect(wires.map(({ id }) => id).sort()).toEqual(present.wires.map(({ id }) => id).sort());
    for (const { points } of wires) {
      expect(points[0]!.xMm).toBeCloseTo(points.at(-1)!.xMm, 9);
      for (const { xMm, yMm } of points) {
        expect(xMm).toBeGreaterThan(0);
        expect(xMm).toBeLessThan(scene.widthMm);
        expect(yMm).toBeGreaterThan(0);
        expect(yMm).toBeLessThan(scene.heightMm);
      }
    }
  });

  it("puts pins of the diagram on the line of a column", () => {
    const xs = diagram.columns.map(({ xMm }) => xMm);
    for (const { at } of diagram.pins) {
      expect(Math.min(...xs.map((xMm) => Math.abs(xMm - at.xMm)))).toBeLessThan(1e-9);
    }
  });

  it("draws every circuit on one scene with all of its own wires", () => {
    for (const { id } of present.circuits) {
      const own = present.wires.filter(({ circuit }) => circuit === id).map((wire) => wire.id);
      if (own.length === 0) continue;
      const ids = idsOf(circuitScene(source, id)!.scene.marks, "wire");
      for (const wire of own) expect(ids, `${id} ${wire}`).toContain(wire);
    }
    expect(circuitScene(source, "no such circuit")).toBeNull();
  });

  it("names nothing on any scene that the job does not know", () => {
    const ids = known(job);
    const all = [
      diagram.scene,
      sideViewScene(source)!.scene,
      machineScene(source)!,
      ...present.looms.flatMap(({ id }) => boardScenes(source, id)?.scene ?? []),
      ...present.circuits.flatMap(({ id }) => circuitScene(source, id)?.scene ?? []),
      ...sectionScenes(source).map(({ scene }) => scene),
      ...connectorScenes(source).map(({ scene }) => scene),
    ];
    for (const { marks, title } of all) {
      for (const [of, these] of Object.entries(ids)) {
        for (const id of idsOf(marks, of as MarkSubject)) {
          const isTyped = of === "run" && id.includes("/");
          if (!isTyped) expect(these.has(id), `${title}: ${of} ${id}`).toBe(true);
        }
      }
    }
  });

  it("writes ids and kinds into SVG", () => {
    expect(sceneToSvg(machineScene(source)!)).toContain('data-of="run"');
  });

  it("answers in plain data that another thread may be sent", () => {
    const plain = [diagram, sideViewScene(source), loomRuleOf(source), boardScenes(source, "main")];
    expect(structuredClone(plain)).toEqual(plain);
  });
});

describe("side view scene", () => {
  it("leads from a ring's place back to the job's own millimetres", () => {
    const { view, leftMm, topMm, scaleRatio } = sideViewScene(source)!;
    for (const { station, at } of view.stations) {
      const page = { xMm: leftMm + at.x * scaleRatio, yMm: topMm + at.y * scaleRatio };
      const { xMm, yMm } = job.layout.side![station]!;
      expect((page.xMm - leftMm) / scaleRatio + view.originMm.x).toBeCloseTo(xMm, 6);
      expect((page.yMm - topMm) / scaleRatio + view.originMm.y).toBeCloseTo(yMm, 6);
    }
  });
});

describe("rule of a loom", () => {
  it("lays out as much loom as the board does, at the same distances from the datum", () => {
    for (const rule of loomRuleOf(source)) {
      const board = boardScenes(source, rule.loom)!.layout;
      const totalMm = board.limbs.reduce((sum, { lengthMm }) => sum + lengthMm, 0);
      const ruleMm = rule.rows.reduce((sum, { startMm, endMm }) => sum + endMm - startMm, 0);
      expect(ruleMm).toBeCloseTo(totalMm, 6);
      for (const node of board.nodes.filter(({ station }) => station !== null)) {
        const places = rule.rows.flatMap((row) => row.places).filter(({ id }) => id === node.id);
        for (const { atMm } of places) expect(atMm).toBeCloseTo(node.fromDatumMm, 6);
        expect(places.length).toBeGreaterThan(0);
      }
    }
  });

  it("has its pieces end to end in every row", () => {
    for (const { rows } of loomRuleOf(source)) {
      for (const { pieces, startMm, endMm } of rows) {
        let atMm = startMm;
        for (const { fromMm, toMm } of pieces) {
          expect(fromMm).toBeCloseTo(atMm, 6);
          atMm = toMm;
        }
        expect(atMm).toBeCloseTo(endMm, 6);
      }
    }
  });
});

describe("rule of a machine", () => {
  const rule = machineRuleOf(source);

  it("starts the main line at nought and lays measured runs of it end to end", () => {
    const main = rule.stations.filter(({ isBranch }) => !isBranch);
    expect(main[0]!.atMm).toBe(0);
    const runs = rule.runs.filter(({ isBranch }) => !isBranch);
    for (const { id, fromMm, toMm } of runs) {
      const { lengthMm } = job.runs.find((run) => run.id === id)!;
      expect(Math.abs(toMm - fromMm)).toBeCloseTo(lengthMm!.value, 6);
    }
    expect(runs.length).toBe(main.length - 1);
  });

  it("shows every station a run meets once", () => {
    const met = new Set(job.runs.flatMap(({ from, to }) => [from, to]));
    expect(rule.stations.map(({ id }) => id).sort()).toEqual([...met].sort());
  });
});
