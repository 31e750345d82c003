import { beforeEach, expect, test } from "vitest";
import {
  addFault,
  benchFor,
  faultWords,
  removeFault,
  setPosition,
  stageAt,
  useTry,
} from "./tryStore.ts";
import type { TryStage } from "./worker/tryState.ts";

beforeEach(() => {
  benchFor("none");
  benchFor("job");
});

test("a position put back to null is at rest again; another job begins with an empty bench", () => {
  setPosition("KEY", "ON");
  expect(useTry.getState().set).toEqual({ KEY: "ON" });
  benchFor("job");
  expect(useTry.getState().set).toEqual({ KEY: "ON" });
  setPosition("KEY", null);
  expect(useTry.getState().set).toEqual({});
  addFault({ kind: "open", place: "W1" });
  benchFor("other");
  expect(useTry.getState().faults).toEqual([]);
});

test("a fault set or lifted puts the flag back to the beginning", () => {
  addFault({ kind: "open", place: "W1" });
  useTry.setState({ atS: 3 });
  addFault({ kind: "short", a: "W2", ohm: 1 });
  expect(useTry.getState().atS).toBeNull();
  removeFault(0);
  expect(useTry.getState().faults.map(faultWords)).toEqual(["W2 shorted to earth"]);
});

test("between soonest and latest the fuse counts as whole, and one never promised never goes", () => {
  const stage = (soonestS: number, latestS: number | null) => ({ soonestS, latestS }) as TryStage;
  const stages = [stage(0, 0), stage(0.1, 1.5), stage(2, null)];
  expect([null, 0.5, 1.5, 1e6].map((atS) => stageAt(stages, atS))).toEqual([0, 0, 1, 1]);
});
