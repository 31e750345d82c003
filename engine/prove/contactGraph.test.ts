import { expect, test } from "vitest";
import type { ContactGraph, Joining } from "./contactGraph.ts";
import { elementStates, JOINED, PARTED, QUESTION, RAIL, regionsOf } from "./regionsOf.ts";

/** Live post 1, earth 0; 1 –fuse– 2 –switch– 3 –lamp– 0. */
function smallGraph(): ContactGraph {
  const edges: readonly (readonly [number, number, Joining])[] = [
    [1, 2, { kind: "always" }],
    [2, 3, { kind: "variable", id: "SW", closedIn: ["ON"] }],
    [3, 0, { kind: "couples" }],
  ];
  const at = [[2], [0], [0, 1], [1, 2]];
  return {
    nodeCount: 4,
    a: edges.map(([a]) => a),
    b: edges.map(([, b]) => b),
    joining: edges.map(([, , joining]) => joining),
    live: [1],
    earth: [0],
    relayCoils: [],
    sources: [],
    start: Int32Array.from([0, 1, 2, 4, 6]),
    elementAt: Int32Array.from(at.flat()),
  };
}

const known = (positions: Readonly<Record<string, string>>, opened: readonly number[] = []) => ({
  positions,
  relays: new Map<number, boolean | null>(),
  opened: new Set(opened),
});

test("a switch is a question until its position is known", () => {
  const graph = smallGraph();
  expect(elementStates(graph, known({}))[1]).toBe(QUESTION);
  expect(elementStates(graph, known({ SW: "ON" }))[1]).toBe(JOINED);
  expect(elementStates(graph, known({ SW: "OFF" }))[1]).toBe(PARTED);
});

test("the live side reaches through what joins, and no load", () => {
  const graph = smallGraph();
  const on = regionsOf(graph, elementStates(graph, known({ SW: "ON" })));
  expect([...on].map((region) => region & RAIL)).toEqual([0, RAIL, RAIL, RAIL]);
  const off = regionsOf(graph, elementStates(graph, known({ SW: "OFF" })));
  expect(off[3]).toBe(0);
});

test("a place taken out parts the live side", () => {
  const graph = smallGraph();
  const region = regionsOf(graph, elementStates(graph, known({ SW: "ON" }, [0])));
  expect(region[2]! & RAIL).toBe(0);
});
