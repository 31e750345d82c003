import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Connector, Job, PartOf, Wire } from "../job.ts";
import { readJob } from "../read/readJob.ts";
import { writeJob } from "../write/writeJob.ts";
import { applyOperation } from "./applyOperation.ts";
import { insertRelay } from "./insertRelay.ts";
import type { Operation } from "./operation.ts";
import { insertJoint, splitWireByConnector } from "./splitWire.ts";
import { moveWireEnd, removeWithPlaces, resizeWire, setFuseRating } from "./wireEdits.ts";

const read = readJob(readFileSync("demos/accessory-five-wires.json", "utf8"));
if (!read.ok) throw new Error("the demo does not read");
const demo = read.job;

/** The job after an operation, which must also be undone without a trace. */
function after(job: Job, operation: Operation): Job {
  const done = applyOperation(job, operation);
  if (!done.ok) throw new Error(JSON.stringify(done.refusals));
  const undone = applyOperation(done.job, done.inverse);
  expect(undone.ok && writeJob(undone.job)).toBe(writeJob(job));
  return done.job;
}

const wire = (job: Job, id: string): Wire => job.wires.find((item) => item.id === id)!;
const measured = (value: number) => ({ value, basis: "measured" as const });

describe("edits that mean something", () => {
  test("moving an end drops the length typed for the old way unless a new one is given", () => {
    const change = { wire: "W5", end: "to", pin: "FRAME.BATT" } as const;
    const moved = wire(after(demo, moveWireEnd(change)), "W5");
    expect(moved.to).toBe("FRAME.BATT");
    expect(moved.lengthMm).toBeUndefined();
    const again = wire(after(demo, moveWireEnd({ ...change, lengthMm: measured(600) })), "W5");
    expect(again.lengthMm?.value).toBe(600);
  });

  test("resizing is a person's choice, and can be handed back to the engine", () => {
    const resized = wire(after(demo, resizeWire({ wire: "W1", make: "thin-3.0" })), "W1");
    expect(resized.size).toEqual({ make: "thin-3.0", basis: "chosen" });
    expect(wire(after(demo, resizeWire({ wire: "W1" })), "W1").size).toBeUndefined();
    expect(applyOperation(demo, resizeWire({ wire: "W1", make: "thin-3" })).ok).toBe(false);
  });

  test("a fuse's rating; a part that is no fuse has none", () => {
    const part = after(demo, setFuseRating("F1", 7.5)).parts.find((item) => item.id === "F1");
    expect(part?.kind === "fuse" && part.ratingA).toBe(7.5);
    expect(applyOperation(demo, setFuseRating("SW", 7.5)).ok).toBe(false);
  });

  test("a connector in a wire: plug half on the near piece, socket half on the far", () => {
    const connector: Connector = { id: "C1", name: "", kind: "block-6.3", cavities: ["1", "2"] };
    const lengths = { nearMm: measured(300), farMm: measured(220) };
    const change = { wire: "W3", connector, cavity: "2", newWire: "W6", lengths };
    const job = after(demo, splitWireByConnector(demo, change));
    expect(wire(job, "W3")).toMatchObject({
      from: "SW.OUT",
      to: "C1.2p",
      lengthMm: { value: 300 },
    });
    expect(wire(job, "W6")).toMatchObject({
      from: "C1.2s",
      to: "SPL.L",
      lengthMm: { value: 220 },
      colour: { main: "blue", tracer: "yellow" },
    });
    const second = { wire: "W4", connector, cavity: "1", newWire: "W7" };
    const both = after(job, splitWireByConnector(job, second));
    expect(both.connectors).toHaveLength(1);
    expect(wire(both, "W7").lengthMm).toBeUndefined();
  });

  test("a joint in a wire", () => {
    const joint = { id: "J1", kind: "crimped-splice" as const, ways: ["a", "b", "c"] };
    const change = { wire: "W2", joint, ways: ["a", "c"] as const, newWire: "W6" };
    const job = after(demo, insertJoint(demo, change));
    expect(wire(job, "W2").to).toBe("J1.a");
    expect(wire(job, "W6")).toMatchObject({ from: "J1.c", to: "SW.IN" });
  });

  test("a relay between switch and lamps, coil the right way round for either earth", () => {
    const pins = ["85", "86", "30", "87"].map((id) => ({ id }));
    const relay: PartOf<"relay"> = {
      id: "RLY",
      name: "Spot lamp relay",
      kind: "relay",
      status: "new",
      pins,
      coil: { pins: ["86", "85"], ohm: measured(85), diode: true },
      made: [["30", "87"]],
      rest: [],
    };
    const change = {
      wire: "W3",
      loadEnd: "to" as const,
      relay,
      feed: { pin: "F1.2", newWire: "W6" },
      load: { newWire: "W7" },
      earth: { pin: "FRAME.HEAD", newWire: "W8" },
    };
    const job = after(demo, insertRelay(demo, change));
    expect(wire(job, "W3")).toMatchObject({ from: "SW.OUT", to: "RLY.86" });
    expect(wire(job, "W6")).toMatchObject({ from: "F1.2", to: "RLY.30" });
    expect(wire(job, "W7")).toMatchObject({ from: "RLY.87", to: "SPL.L" });
    expect(wire(job, "W8")).toMatchObject({ from: "RLY.85", to: "FRAME.HEAD" });
    const other: Job = { ...demo, supply: { ...demo.supply, earthPolarity: "positive" } };
    const turned = after(other, insertRelay(other, change));
    expect(wire(turned, "W3").to).toBe("RLY.85");
    expect(wire(turned, "W8").from).toBe("RLY.86");
  });

  test("removing a thing takes its places in the drawings along", () => {
    const place: Operation = {
      op: "set",
      list: "job",
      path: ["layout"],
      value: { diagram: { W5: { xMm: 1, yMm: 2 }, F1: { xMm: 3, yMm: 4 } } },
    };
    const job = after(demo, place);
    expect(applyOperation(job, { op: "remove", list: "wires", id: "W5" }).ok).toBe(false);
    const removed = after(job, removeWithPlaces(job.layout, "wires", "W5"));
    expect(removed.layout.diagram).toEqual({ F1: { xMm: 3, yMm: 4 } });
  });

  test("a wire that is not there is refused, not made", () => {
    const joint = { id: "J1", kind: "bus" as const, ways: ["a", "b"] };
    const change = { wire: "W9", joint, ways: ["a", "b"] as const, newWire: "W6" };
    const done = applyOperation(demo, insertJoint(demo, change));
    expect(done.ok || done.refusals[0]?.code).toBe("edit-no-such-item");
  });
});
