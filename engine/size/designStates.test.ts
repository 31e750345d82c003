import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { type Job, presentParts } from "../job/index.ts";
import { type DesignState, designStates } from "./designStates.ts";

const path = new URL("../../cases/reference-machines/e/job.json", import.meta.url);
const job = JSON.parse(readFileSync(path, "utf8")) as Job;

test("every state is asked for once, with the flash on and off", () => {
  const asked: DesignState[] = [];
  designStates(job, (state) => asked.push(state));
  const keys = asked.map(({ positions, flash, engine }) =>
    JSON.stringify([Object.entries(positions).sort(), flash, engine.mode]),
  );
  expect(new Set(keys).size).toBe(keys.length);
  const withFlash = (flash: string) => asked.filter((one) => one.flash === flash).length;
  expect(withFlash("off")).toBe(withFlash("on"));
});

test("where more is drawn with a switch moved the climb goes there", () => {
  const switches = presentParts(job).flatMap((part) => (part.kind === "switch" ? [part] : []));
  const last = Object.fromEntries(switches.map(({ id, positions }) => [id, positions.at(-1)!.id]));
  const isLast = ({ positions }: DesignState): number =>
    Object.keys(last).filter((id) => positions[id] === last[id]).length;
  const counts = designStates({ ...job, exclusions: [] }, isLast).map(isLast);
  expect(Math.max(...counts)).toBe(switches.length);
});
