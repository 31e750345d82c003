import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { applyOperation, readJob } from "../job/index.ts";
import { conductorsOf, makeFields, routeJob } from "../route/index.ts";
import { changesToTry } from "./changesToTry.ts";

const read = readJob(readFileSync("demos/minazuru-four.json", "utf8"));
if (!read.ok) throw new Error("the demo does not read");
const { job } = read;
const conductors = conductorsOf(job, routeJob(job));
const fuse = job.parts.find((part) => part.kind === "fuse")!;
const wire = job.wires.find(({ size }) => size !== undefined) ?? job.wires[0]!;

test("a fuse has its neighbours in the standard series, a wire the next thicker make, and every change can be made", () => {
  const changes = changesToTry(job, conductors, [fuse.id, wire.id, "HEAD", "nowhere"]);
  if (fuse.kind !== "fuse") throw new Error("no fuse");
  const ratings = changes.flatMap((one) => (one.kind === "fuse" ? [one.ratingA] : []));
  expect(ratings).toHaveLength(2);
  expect(ratings[0]!).toBeLessThan(fuse.ratingA);
  expect(ratings[1]!).toBeGreaterThan(fuse.ratingA);
  const makes = changes.flatMap((one) => (one.kind === "wire" ? [one] : []));
  expect(makes).toHaveLength(1);
  expect(makes[0]!.areaMm2).toBeGreaterThan(makeFields(conductors.get(wire.id)!.makeId).areaMm2);
  for (const { operation } of changes) expect(applyOperation(job, operation).ok).toBe(true);
});

test("nothing lies between a rating and the one offered", () => {
  const standardA = [1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30];
  const blade = { ...fuse, kind: "fuse", type: "blade", ratingA: 10 } as typeof fuse;
  const changed = { ...job, parts: [blade] };
  const ratings = changesToTry(changed, conductors, [fuse.id]).map((one) =>
    one.kind === "fuse" ? one.ratingA : 0,
  );
  for (const offeredA of ratings) {
    const [low, high] = [Math.min(10, offeredA), Math.max(10, offeredA)];
    expect(standardA.filter((one) => one > low && one < high)).toEqual([]);
  }
});

test("what is named twice is tried once, and never more than six", () => {
  const all = job.parts.filter((part) => part.kind === "fuse").map(({ id }) => id);
  expect(changesToTry(job, conductors, [fuse.id, fuse.id])).toHaveLength(2);
  expect(changesToTry(job, conductors, all)).toHaveLength(6);
});
