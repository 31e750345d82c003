import { describe, expect, it } from "vitest";
import { applyOperation } from "./applyOperation.ts";
import { connectPins } from "./connectPins.ts";
import { after, demoJob, smallDemos } from "./demoJobs.fixture.ts";
import { freePin } from "./freePin.ts";
import { healWires } from "./healWires.ts";
import { idMaker } from "./idMaker.ts";
import { scaledPhotograph, setPhotograph } from "./photographEdits.ts";
import { placeStation, removeRun, removeStation } from "./placeEdits.ts";
import { removeWhole } from "./removeWhole.ts";
import { splitWireByConnector } from "./splitWire.ts";

describe("edits of a survey and of circuits", () => {
  it("takes away any station, run, part, joint or connector so that the job can still be read", () => {
    for (const [, job] of smallDemos) {
      const gone = [
        ...job.stations.map(({ id }) => [id, removeStation(job, id)] as const),
        ...job.runs.map(({ id }) => [id, removeRun(job, id)] as const),
        ...(["parts", "joints", "connectors"] as const).flatMap((list) =>
          job[list].map(({ id }) => [id, removeWhole(job, list, id)] as const),
        ),
      ];
      for (const [id, operation] of gone) {
        const left = after(job, operation);
        for (const list of ["stations", "runs", "parts", "joints", "connectors"] as const) {
          expect(left[list].map((one) => one.id)).not.toContain(id);
        }
      }
    }
  });

  it("places a station without touching what was measured", () => {
    const job = demoJob("minazuru-four");
    const moved = after(job, placeStation(job, "HL", { xMm: 400, yMm: 310 }));
    expect(moved.layout.side?.HL).toEqual({ xMm: 400, yMm: 310 });
    expect(moved.runs).toEqual(job.runs);
    const { side: _, ...layout } = job.layout;
    const bare = { ...job, layout };
    expect(after(bare, placeStation(bare, "HL", { xMm: 1, yMm: 2 })).layout.side).toEqual({
      HL: { xMm: 1, yMm: 2 },
    });
  });

  it("takes a connector out again: the wire is what it was", () => {
    const job = demoJob("accessory-five-wires");
    const connector = {
      id: "XX",
      name: "plug",
      kind: "block-2.8",
      cavities: ["1"],
      status: "new" as const,
    };
    const change = { wire: "W1", connector, cavity: "1", newWire: "W9" };
    const split = after(job, splitWireByConnector(job, change));
    const whole = after(split, healWires(split, "connectors", "XX")!);
    const wire = (of: typeof job) => of.wires.find(({ id }) => id === "W1")!;
    expect([wire(whole).from, wire(whole).to]).toEqual([wire(job).from, wire(job).to]);
    expect(whole.connectors).toEqual(job.connectors);
  });

  it("does not take out a joint where three wires meet", () => {
    const job = demoJob("minazuru-four");
    const crowded = job.joints.find(
      ({ id }) => job.wires.filter(({ from, to }) => `${from} ${to}`.includes(`${id}.`)).length > 2,
    )!;
    expect(healWires(job, "joints", crowded.id)).toBeNull();
  });

  it("gives a wire a place on joint, connector and body, and none on a part that has no such pin", () => {
    const job = demoJob("minazuru-four");
    const [joint, plug, body] = [job.joints[0]!, job.connectors[0]!, job.bodies[0]!];
    for (const owner of [joint, plug, body]) {
      const made = connectPins(job, {
        from: "HORN.1",
        to: `${owner.id}.*`,
        circuit: job.circuits[0]!.id,
      });
      const wire = after(job, made.operation).wires.find(({ id }) => id === made.id)!;
      expect(wire.to.startsWith(`${owner.id}.`)).toBe(true);
      expect(job.wires.flatMap(({ from, to }) => [from, to])).not.toContain(wire.to);
    }
    expect(freePin(job, "HORN.*").operations).toEqual([]);
    const none = connectPins(job, { from: "HORN.*", to: "HORN.1", circuit: job.circuits[0]!.id });
    expect(applyOperation(job, none.operation).ok).toBe(false);
  });

  it("never gives an id twice", () => {
    const job = demoJob("minazuru-four");
    const next = idMaker(job);
    const given = ["W", "W", "J", "W", "J", "", "a b.c"].map(next);
    expect(new Set(given).size).toBe(given.length);
    const taken = new Set([...job.wires, ...job.joints, ...job.parts].map(({ id }) => id));
    expect(given.filter((id) => taken.has(id))).toEqual([]);
  });

  it("scales a photograph by two points: the first stays, their distance becomes the true one", () => {
    const before = { id: "p1", widthPx: 800, heightPx: 600, xMm: 100, yMm: 50, widthMm: 1000 };
    const [a, b] = [
      { xMm: 300, yMm: 250 },
      { xMm: 600, yMm: 650 },
    ];
    const now = scaledPhotograph(before, a, b, 1000)!;
    // Share of the picture's width at which a point lies does not change; in mm it is worth twice as much.
    const place = ({ xMm, widthMm }: typeof before, share: number) => xMm + share * widthMm;
    const shareA = (a.xMm - before.xMm) / before.widthMm;
    const shareB = (b.xMm - before.xMm) / before.widthMm;
    expect(place(now, shareA)).toBeCloseTo(a.xMm, 9);
    expect(place(now, shareB) - place(now, shareA)).toBeCloseTo(600, 9);
    expect(scaledPhotograph(before, a, a, 1000)).toBeNull();
    const job = demoJob("minazuru-four");
    expect(after(job, setPhotograph(now)).layout.photograph).toEqual(now);
    expect(after(after(job, setPhotograph(now)), setPhotograph()).layout).toEqual(job.layout);
  });
});
