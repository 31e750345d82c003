import { describe, expect, test } from "vitest";
import { wires as makes } from "../tables/index.ts";
import { conductorsOf, UNSIZED_MAKE } from "./conductorsOf.ts";
import { emptyJob, lampAt, run, wire } from "./loom.fixture.ts";
import { makeFields } from "./makeFields.ts";
import { routeJob } from "./routeJob.ts";

describe("figures of a make", () => {
  // Areas N·π/4·d², to 0.001 mm²: worked by hand in the trade's own terms (28/0.30 sold as 2.0, 32/0.20 as 1.0).
  test.each([
    ["thin-1.0", 1.005],
    ["thin-2.0", 1.979],
    ["thick-1.0", 0.99],
    ["thin-3.0", 3.11],
    ["thin-4.5", 4.595],
  ])("%s holds %f mm² of copper", (makeId, areaMm2) => {
    expect(Math.abs(makeFields(makeId).areaMm2 - areaMm2)).toBeLessThan(0.001);
  });

  test("the resistance of the counted copper is never over the largest", () => {
    for (const { id } of makes) {
      const { ohmPerM20Min, ohmPerM20Max } = makeFields(id);
      expect(ohmPerM20Min, id).toBeLessThanOrEqual(ohmPerM20Max);
    }
  });

  test("a make that is not in the table is a bug and says so", () => {
    expect(() => makeFields("thin-99")).toThrow("thin-99");
  });
});

test("a person's size stands, then the engine's, then the usual wire; fly leads count, removed wires do not", () => {
  const flyLead = {
    colour: { main: "black" },
    make: "thin-0.5",
    lengthMm: { value: 150, basis: "stated" },
  } as const;
  const lamp = lampAt("P", "B");
  const job = emptyJob({
    stations: [
      { id: "A", name: "A" },
      { id: "B", name: "B" },
    ],
    runs: [run("AB", ["A", "B"], 500)],
    parts: [lampAt("Q", "A"), { ...lamp, pins: [{ id: "A", flyLead }, { id: "E" }] }],
    wires: [
      wire("W1", "Q.A", "P.A", { size: { make: "thick-2.0", basis: "chosen" } }),
      wire("W2", "Q.A", "P.A"),
      wire("W3", "Q.A", "P.E"),
      wire("W4", "Q.A", "P.E", { status: "remove" }),
    ],
  });
  const sizes = new Map([
    ["W1", "thin-6.0"],
    ["W2", "thin-2.0"],
  ]);
  const conductors = conductorsOf(job, routeJob(job), sizes);
  expect([...conductors.keys()]).toEqual(["P.A", "W1", "W2", "W3"]);
  expect(conductors.get("W1")).toMatchObject({ makeId: "thick-2.0", sizedBy: "person" });
  expect(conductors.get("W2")).toMatchObject({ makeId: "thin-2.0", sizedBy: "engine" });
  expect(conductors.get("W3")).toMatchObject({ makeId: UNSIZED_MAKE, lengthMm: 500 });
  expect(conductors.get("P.A")).toMatchObject({
    kind: "flyLead",
    to: "P.A~",
    makeId: "thin-0.5",
    lengthMm: 150,
  });
});
