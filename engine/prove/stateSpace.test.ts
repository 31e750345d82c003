import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { asPlanned, readJob } from "../job/index.ts";
import { combinationsOf, stateSpace } from "./stateSpace.ts";

const path = join(import.meta.dirname, "../../demos/minazuru-four.json");
const read = readJob(readFileSync(path, "utf8"));
if (!read.ok) throw new Error("the demo does not read");
const job = asPlanned(read.job);
const space = stateSpace(job);

test("the product is that of all positions, the flasher's phases and the ways the engine stands", () => {
  const positions = job.parts.flatMap((part) =>
    part.kind === "switch" ? [part.positions.length] : [],
  );
  const product = positions.reduce((sofar, count) => sofar * count, 1);
  expect(space.positionCount).toBe(product);
  expect(space.productCount).toBe(product * 2 * 4);
});

test("a completed state never meets an exclusion, and one that is excluded by what is given is refused", () => {
  const running = space.engines.find(({ mode }) => mode === "running")!;
  const full = space.completed({ LSW: "H" }, running)!;
  expect(full.LSW).toBe("H");
  expect(full.KEY).toBe("ON");
  expect(space.completed({ KEY: "OFF" }, running)).toBeNull();
});

test("combinations are every one, once", () => {
  const all = combinationsOf(space.variables, ["KEY", "DIP"]);
  expect(all).toHaveLength(6);
  expect(new Set(all.map((one) => JSON.stringify(one))).size).toBe(6);
});
