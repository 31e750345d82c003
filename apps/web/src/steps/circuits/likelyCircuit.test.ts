import type { Job } from "@copperwright/engine";
import { describe, expect, it } from "vitest";
import { likelyCircuit, wiresNear } from "./likelyCircuit.ts";

const wire = (id: string, from: string, to: string, circuit: string) => ({ id, from, to, circuit });
const job = {
  circuits: [
    { id: "E", dropClass: "earth" },
    { id: "HORN", dropClass: "horn" },
    { id: "LIGHT", dropClass: "headlamp" },
  ],
  wires: [
    wire("1", "LAMP.1", "J.1", "LIGHT"),
    wire("2", "HORN.2", "FR.1", "E"),
    wire("3", "HORN.1", "F.2", "HORN"),
    wire("4", "A.1", "B.1", "LIGHT"),
  ],
} as unknown as Job;

describe("what a new wire most likely belongs to", () => {
  it("goes by the nearest wire: the pin itself, then the thing", () => {
    expect(wiresNear(job, "HORN.2", "LAMP.2").map(({ id }) => id)).toEqual(["2", "3", "1"]);
  });

  it("passes over earths and main feeds where something else is near", () => {
    expect(likelyCircuit(job, "HORN.2", "PUSH.1")).toBe("HORN");
    expect(likelyCircuit(job, "FR.9", "X.1")).toBe("E");
    expect(likelyCircuit(job, "X.1", "Y.1")).toBeNull();
  });
});
