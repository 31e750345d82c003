import { expect, test } from "vitest";
import { circuits } from "../operate/circuits.fixture.ts";
import { restPositions } from "../operate/index.ts";
import { conductorsOf, routeJob } from "../route/index.ts";
import { designNetwork } from "./designNetwork.ts";
import { jobCurrents } from "./jobCurrents.ts";

const job = circuits([21, 5, 10]);
const conductors = conductorsOf(job, routeJob(job));

/** Largest current of every wire over all 64 positions of the six switches, whole machine solved. */
function overEveryState(): ReadonlyMap<string, number> {
  const network = designNetwork(job, conductors, "charging");
  const ids = Object.keys(restPositions(job, "stopped"));
  const mostA = new Map<string, number>();
  for (let n = 0; n < 2 ** ids.length; n++) {
    const positions = Object.fromEntries(ids.map((id, k) => [id, (n >> k) & 1 ? "ON" : "OFF"]));
    const solution = network.solve({ positions, flash: "off", engine: { mode: "stopped" } });
    for (const [k, wire] of network.conductorAt) {
      mostA.set(wire, Math.max(mostA.get(wire) ?? 0, Math.abs(solution!.elementA[k]!)));
    }
  }
  return mostA;
}

test("found circuit by circuit, no wire's current is below what any state of the whole lets flow", () => {
  const { continuous } = jobCurrents(job, conductors);
  for (const [wire, mostA] of overEveryState()) {
    const { currentA } = continuous.get(wire)!;
    expect(currentA, wire).toBeGreaterThanOrEqual(mostA * (1 - 1e-9));
    // Design volts hardly depend on what the others draw: some tenths of a per mille on a supply of 30 micro-ohms.
    expect(currentA, wire).toBeLessThan(mostA * 1.001);
  }
});

test("the earth lead common to all is told with every circuit on", () => {
  const { state } = jobCurrents(job, conductors).continuous.get("E")!;
  expect(state!.positions).toEqual(
    Object.fromEntries(["S1a", "S1b", "S2a", "S2b", "S3a", "S3b"].map((id) => [id, "ON"])),
  );
});

test("every load keeps its way, by its own wires and the common earth", () => {
  const { ways } = jobCurrents(job, conductors);
  expect(ways.map(({ load }) => load).sort()).toHaveLength(6);
  const way = ways.find(({ load }) => load === "L2a:L-E")!;
  expect(way.feed).toEqual(["2a", "2Sa", "2F"]);
  expect(way.back).toEqual(["2Ea", "E"]);
});
