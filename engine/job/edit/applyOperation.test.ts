import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Job } from "../job.ts";
import { readJob } from "../read/readJob.ts";
import { writeJob } from "../write/writeJob.ts";
import { applyOperation } from "./applyOperation.ts";
import type { Operation } from "./operation.ts";
import { operationsOn } from "./operations.fixture.ts";

function jobOf(file: string): Job {
  const read = readJob(readFileSync(file, "utf8"));
  if (!read.ok) throw new Error(JSON.stringify(read.refusals.slice(0, 3)));
  return read.job;
}

const demo = jobOf("demos/accessory-five-wires.json");
const demos = readdirSync("demos").filter((name) => name.endsWith(".json"));
const JOBS = [...demos.map((name) => `demos/${name}`), "cases/reference-machines/c/job.json"].map(
  jobOf,
);

describe("an operation and its inverse", () => {
  for (const job of JOBS) {
    test(`${job.id}: the inverse takes the job back byte for byte`, () => {
      const before = writeJob(job);
      let doneCount = 0;
      fc.assert(
        fc.property(operationsOn(job), (operation) => {
          const done = applyOperation(job, operation);
          expect(writeJob(job)).toBe(before);
          if (!done.ok) {
            expect(done.refusals.length).toBeGreaterThan(0);
            return;
          }
          doneCount++;
          const text = writeJob(done.job);
          expect(readJob(text)).toMatchObject({ ok: true, job: done.job });
          const undone = applyOperation(done.job, done.inverse);
          if (!undone.ok) throw new Error(JSON.stringify(undone.refusals));
          expect(writeJob(undone.job)).toBe(before);
          const redone = applyOperation(undone.job, undone.inverse);
          expect(redone.ok && writeJob(redone.job)).toBe(text);
          expect(undone.changed).toEqual(done.changed);
        }),
        { numRuns: 60 },
      );
      expect(doneCount).toBeGreaterThan(10);
    });
  }

  test("an operation may come as JSON text and back", () => {
    const operation: Operation = { op: "set", list: "wires", id: "W1", path: ["note"], value: "a" };
    const done = applyOperation(demo, JSON.parse(JSON.stringify(operation)));
    if (!done.ok) throw new Error("should apply");
    expect(JSON.parse(JSON.stringify(done.inverse))).toEqual({
      op: "set",
      list: "wires",
      id: "W1",
      path: ["note"],
    });
    expect(done.changed).toEqual(["W1"]);
  });

  test("a batch may pass through what could not be read, if its end can", () => {
    const rename: Operation = {
      op: "batch",
      name: "exchange the circuit",
      operations: [
        { op: "remove", list: "circuits", id: "SPOTS" },
        { op: "add", list: "circuits", item: { ...demo.circuits[0], dropClass: "accessory" } },
      ],
    };
    const first = rename.operations[0]!;
    expect(applyOperation(demo, first).ok).toBe(false);
    const done = applyOperation(demo, rename);
    expect(done.ok && done.job.circuits[0]?.dropClass).toBe("accessory");
  });
});

describe("an operation that cannot be done", () => {
  const refusedWith = (operation: unknown): readonly (readonly [string, string])[] => {
    const done = applyOperation(demo, operation as Operation);
    return done.ok ? [] : done.refusals.map(({ code, pointer }) => [code, pointer]);
  };
  const set = (path: unknown, value?: unknown, id = "W1") => ({
    op: "set",
    list: "wires",
    id,
    path,
    value,
  });

  test("names what is not there, or is already there", () => {
    expect(refusedWith({ op: "remove", list: "wires", id: "W9" })).toEqual([
      ["edit-no-such-item", "/id"],
    ]);
    expect(refusedWith({ op: "add", list: "wires", item: demo.wires[0] })).toEqual([
      ["edit-id-taken", "/item"],
    ]);
    const inner = {
      op: "batch",
      name: "",
      operations: [set(["note"], "x"), set(["note"], "x", "X")],
    };
    expect(refusedWith(inner)).toEqual([["edit-no-such-item", "/operations/1/id"]]);
  });

  test("sets a place that is not there, an id, or the length of an inner list", () => {
    expect(refusedWith(set(["id"], "W8"))).toEqual([["edit-of-id", "/path"]]);
    for (const path of [
      ["fromEnd", "terminal"],
      ["via", 0],
      ["__proto__", "x"],
      ["from", 0],
    ]) {
      expect(refusedWith(set(path, "x"))).toEqual([["edit-no-such-place", "/path"]]);
    }
    const onList = { op: "set", list: "job", path: ["wires", 0, "note"], value: "x" };
    expect(refusedWith(onList)).toEqual([["edit-no-such-place", "/path"]]);
    const shorter = { op: "set", list: "parts", id: "F1", path: ["pins", 0] };
    expect(refusedWith(shorter)).toEqual([["edit-no-such-place", "/path"]]);
  });

  test("would leave a job that does not read: the refusals of reading, with pointers into that job", () => {
    expect(refusedWith(set(["to"], "NOPE.1"))).toEqual([["unknown-pin-owner", "/wires/0/to"]]);
    expect(refusedWith(set(["colour", "main"], 7))).toEqual([
      ["field-wrong-sort", "/wires/0/colour/main"],
    ]);
    expect(refusedWith({ op: "remove", list: "parts", id: "F1" }).map(([code]) => code)).toEqual([
      "unknown-pin-owner",
      "unknown-pin-owner",
    ]);
  });

  test("is no operation at all", () => {
    for (const value of [null, 7, "add", {}, { op: "add" }, set([]), set(["a"], 1, "no id!")]) {
      expect(refusedWith(value)).toEqual([["edit-unreadable", ""]]);
    }
    expect(refusedWith({ op: "add", list: "wires", item: 7 })[0]?.[0]).toBe("edit-unreadable");
    expect(refusedWith({ op: "set", list: "wires", path: ["a"] })[0]?.[0]).toBe("edit-unreadable");
  });

  test("is nested or long beyond reason", () => {
    let deep: unknown = set(["note"], "x");
    for (let i = 0; i < 10_000; i++) deep = { op: "batch", name: "", operations: [deep] };
    expect(refusedWith(deep)[0]?.[0]).toBe("edit-too-large");
    const long = { op: "batch", name: "", operations: Array(100_001).fill(set(["note"], "x")) };
    expect(refusedWith(long)[0]?.[0]).toBe("edit-too-large");
  });

  test("holds a value that goes in circles", () => {
    const circle: Record<string, unknown> = {};
    circle.self = circle;
    expect(refusedWith(set(["colour"], circle)).length).toBeGreaterThan(0);
  });
});
