import fc from "fast-check";
import { inverse, Matrix } from "ml-matrix";
import { describe, expect, it } from "vitest";
import { compileNetwork } from "./compileNetwork.ts";
import { feederNetwork, OPEN_OHM, seeded } from "./feederNetwork.ts";
import type { Branch, Law, Network } from "./network.ts";
import type { Solution } from "./solution.ts";
import { solveNetwork } from "./solveNetwork.ts";
import { floatingNodes, theveninConductancesS } from "./theveninConductances.ts";

const ohm = (value: number): Law => ({ kind: "ohm", ohm: value });
const emf: Law = { kind: "emf", emfV: 12.6, internalOhm: 0.02 };
const diode: Law = { kind: "diode", isA: 1e-9, n: 1.8, seriesOhm: 0.02, thermalV: 0.025865 };

function network(nodeCount: number, ...branches: [number, number, Law][]): Network {
  return {
    nodeCount,
    leakOhm: 1e9,
    branches: branches.map(([a, b, law], k): Branch => ({ id: `B${k}`, a, b, law })),
  };
}

/** The same by a dense inverse, with a leak small beside 1e-6 S but large enough for the subtractions of LU. */
function denseConductancesS(net: Network, solution: Solution): number[] {
  const size = net.nodeCount - 1;
  const matrix = Matrix.zeros(size, size);
  const link = (a: number, b: number, g: number): void => {
    for (const [row, column, sign] of [
      [a, a, 1],
      [b, b, 1],
      [a, b, -1],
      [b, a, -1],
    ] as const) {
      if (row === 0 || column === 0) continue;
      matrix.set(row - 1, column - 1, matrix.get(row - 1, column - 1) + sign * g);
    }
  };
  net.branches.forEach(({ a, b }, k) => {
    link(a, b, solution.branchSlopeS[k]!);
  });
  for (const { a, b, ohm: r } of solution.shorts) link(a, b, 1 / r);
  for (let node = 1; node <= size; node++) link(node, 0, 1e-10);
  return inverse(matrix)
    .diagonal()
    .map((resistance) => 1 / resistance);
}

describe("theveninConductancesS", () => {
  it("a node behind resistances in series and parallel, by hand", () => {
    const net = network(3, [1, 0, emf], [1, 2, ohm(1)], [2, 0, ohm(3)]);
    const compiled = compileNetwork(net);
    const [reference, one, two] = theveninConductancesS(compiled, solveNetwork(compiled));
    expect(reference).toBe(Number.POSITIVE_INFINITY);
    expect(one).toBeCloseTo(1 / 0.02 + 1 / 4, 10);
    expect(two).toBeCloseTo(1 / 1.02 + 1 / 3, 10);
  });

  it("agrees with a dense inverse on random networks with shorts", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e9 }), (seed) => {
        const random = seeded(seed);
        const { network: net, contacts } = feederNetwork({
          seed,
          feederCount: 2,
          filamentCount: 6,
          relayCount: 1,
          diodeCount: 2,
          emfV: 12.6,
        });
        const compiled = compileNetwork(net);
        const any = (): number => Math.floor(random() * net.nodeCount);
        const solution = solveNetwork(compiled, {
          overrides: contacts
            .filter(() => random() < 0.5)
            .map((branchIndex) => ({ branchIndex, law: ohm(OPEN_OHM) })),
          shorts: random() < 0.5 ? [] : [{ a: any(), b: any(), ohm: 0.01 }],
        });
        const ours = theveninConductancesS(compiled, solution);
        const dense = denseConductancesS(net, solution);
        dense.forEach((conductanceS, k) => {
          if (conductanceS > 1e-5) expect(ours[k + 1]! / conductanceS).toBeCloseTo(1, 3);
          else expect(ours[k + 1]).toBeLessThan(1e-5);
        });
      }),
      { numRuns: 60 },
    );
  });
});

describe("floatingNodes", () => {
  it("finds an island with a source of its own, and nothing else", () => {
    const net = network(5, [1, 0, emf], [1, 2, ohm(1)], [3, 4, emf], [3, 4, ohm(5)]);
    const compiled = compileNetwork(net);
    expect(floatingNodes(compiled, solveNetwork(compiled))).toEqual([3, 4]);
    const tied = solveNetwork(compiled, { shorts: [{ a: 4, b: 2, ohm: 100 }] });
    expect(floatingNodes(compiled, tied)).toEqual([]);
    // An island tied only by open contacts still floats, even by many.
    const contacts = Array.from({ length: 50 }, (): [number, number, Law] => [4, 0, ohm(OPEN_OHM)]);
    const open = compileNetwork(network(5, [1, 0, emf], [1, 2, ohm(1)], [3, 4, emf], ...contacts));
    expect(floatingNodes(open, solveNetwork(open))).toEqual([3, 4]);
  });

  it("a filament behind an open contact still ties its ends to the live side", () => {
    const filament: Law = { kind: "filament", ratedV: 12, ratedA: 2, exponent: 0.55, eps: 0.004 };
    const net = network(4, [1, 0, emf], [1, 2, filament], [2, 3, ohm(1)], [3, 0, ohm(OPEN_OHM)]);
    const compiled = compileNetwork(net);
    expect(floatingNodes(compiled, solveNetwork(compiled))).toEqual([]);
  });

  it("what hangs on a blocking diode alone floats; on a conducting one it does not", () => {
    const blocked = compileNetwork(network(3, [1, 0, emf], [2, 1, diode]));
    expect(floatingNodes(blocked, solveNetwork(blocked))).toEqual([2]);
    const conducting = compileNetwork(network(3, [1, 0, emf], [1, 2, diode], [2, 0, ohm(100)]));
    expect(floatingNodes(conducting, solveNetwork(conducting))).toEqual([]);
  });

  it("the bound is 1e-6 S: 0.9 MΩ holds a node, 1.1 MΩ does not", () => {
    const at = (value: number): number[] => {
      const compiled = compileNetwork(network(3, [1, 0, emf], [1, 2, ohm(value)]));
      return floatingNodes(compiled, solveNetwork(compiled));
    };
    expect(at(0.9e6)).toEqual([]);
    expect(at(1.1e6)).toEqual([2]);
  });
});
