import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compileNetwork } from "./compileNetwork.ts";
import { CLOSED_OHM, feederNetwork, MEASURED_SHAPE, OPEN_OHM, seeded } from "./feederNetwork.ts";
import { lawCurrentA } from "./lawPoint.ts";
import type { Branch, Law, Network } from "./network.ts";
import type { BranchOverride, Short, Solution, SolveOptions } from "./solution.ts";
import { solveNetwork } from "./solveNetwork.ts";

const LEAK_OHM = 1e9;

function network(nodeCount: number, ...branches: [number, number, Law][]): Network {
  return {
    nodeCount,
    leakOhm: LEAK_OHM,
    branches: branches.map(([a, b, law], k): Branch => ({ id: `B${k}`, a, b, law })),
  };
}
const ohm = (value: number): Law => ({ kind: "ohm", ohm: value });
const emf = (emfV: number, internalOhm: number): Law => ({ kind: "emf", emfV, internalOhm });
const diode: Law = { kind: "diode", isA: 1e-9, n: 1.8, seriesOhm: 0.02, thermalV: 0.025865 };
const bareDiode: Law = { ...diode, seriesOhm: 0 };

/** Kirchhoff's law summed here, from the laws, not by the solver: the largest current left over at a node. */
function leftoverA(net: Network, solution: Solution, overrides: readonly BranchOverride[]): number {
  const laws = net.branches.map((branch) => branch.law);
  for (const { branchIndex, law } of overrides) laws[branchIndex] = law;
  const sums = Array.from(solution.nodeV, (v) => v / net.leakOhm);
  const carry = (a: number, b: number, iA: number): void => {
    sums[a] = sums[a]! + iA;
    sums[b] = sums[b]! - iA;
  };
  net.branches.forEach(({ a, b }, k) => {
    carry(a, b, lawCurrentA(laws[k]!, solution.nodeV[a]! - solution.nodeV[b]!));
  });
  for (const { a, b, ohm: r } of solution.shorts) {
    carry(a, b, (solution.nodeV[a]! - solution.nodeV[b]!) / r);
  }
  return Math.max(0, ...sums.slice(1).map(Math.abs));
}

function randomCase(seed: number): { net: Network; options: SolveOptions } {
  const random = seeded(seed);
  const made = feederNetwork({
    seed,
    feederCount: 1 + Math.floor(4 * random()),
    filamentCount: 1 + Math.floor(14 * random()),
    relayCount: Math.floor(3 * random()),
    diodeCount: Math.floor(5 * random()),
    emfV: (random() < 0.5 ? 1 : -1) * (random() < 0.5 ? 12.6 : 6.3),
  });
  const overrides = made.contacts
    .filter(() => random() < 0.4)
    .map((branchIndex) => ({ branchIndex, law: ohm(OPEN_OHM) }));
  const any = (): number => Math.floor(made.network.nodeCount * random());
  const shorts: Short[] = Array.from({ length: Math.floor(4 * random()) }, (_, k) => ({
    a: any(),
    b: k === 0 ? 0 : any(),
    ohm: 0.001 * 10 ** (3 * random()),
  }));
  return { net: made.network, options: { overrides, shorts } };
}

const seeds = fc.integer({ min: 0, max: 2 ** 31 });

describe("Kirchhoff's current law", () => {
  it("holds on random networks with filaments, diodes, open contacts and shorts", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const { net, options } = randomCase(seed);
        const solution = solveNetwork(compileNetwork(net), options);
        expect(solution.converged).toBe(true);
        const largestA = Math.max(...[...solution.branchA, ...solution.shortA].map(Math.abs));
        const leftA = leftoverA(net, solution, options.overrides ?? []);
        // The acceptance bound, and the same again for the different order of this sum.
        expect(leftA).toBeLessThanOrEqual(2 * (1e-9 + 1e-12 * largestA));
        expect(Math.abs(leftA - solution.kclResidualA)).toBeLessThanOrEqual(
          1e-10 + 1e-12 * largestA,
        );
      }),
      { numRuns: 300 },
    );
  });

  it("gives each branch the current of its law at the volts across it", () => {
    const { net, options } = randomCase(5);
    const solution = solveNetwork(compileNetwork(net), { ...options, overrides: [] });
    net.branches.forEach(({ a, b, law }, k) => {
      const v = solution.nodeV[a]! - solution.nodeV[b]!;
      expect(solution.branchA[k]).toBeCloseTo(lawCurrentA(law, v), 10);
    });
  });
});

describe("circuits worked by hand", () => {
  it("a balanced bridge carries nothing across, an unbalanced one what Thevenin says", () => {
    const bridge = (unknown: number): Network =>
      network(
        4,
        [1, 0, emf(10, 1e-3)],
        [1, 2, ohm(100)],
        [2, 0, ohm(200)],
        [1, 3, ohm(50)],
        [3, 0, ohm(unknown)],
        [2, 3, ohm(30)],
      );
    // The leaks of the two middle nodes, 6.7e-9 A each, are all that is left.
    expect(solveNetwork(compileNetwork(bridge(100))).branchA[5]).toBeCloseTo(0, 8);
    // Unbalanced: open-circuit volts 20/3 − 10·150/200 with source resistance 200/3 + 37.5, ideal source.
    const expected = (20 / 3 - 7.5) / (200 / 3 + 37.5 + 30);
    // The 1 mΩ of the source takes 1e-5 of the volts.
    expect(solveNetwork(compileNetwork(bridge(150))).branchA[5]).toBeCloseTo(expected, 6);
  });

  it("a diode on a resistor: the volts that satisfy both laws, found here by bisection", () => {
    for (const law of [diode, bareDiode]) {
      const solution = solveNetwork(
        compileNetwork(network(3, [1, 0, emf(12.6, 0.012)], [1, 2, law], [2, 0, ohm(10)])),
      );
      let low = 0;
      let high = 12.6;
      for (let k = 0; k < 200; k++) {
        const v = (low + high) / 2;
        if (v / 10 < lawCurrentA(law, 12.6 - (0.012 * v) / 10 - v)) low = v;
        else high = v;
      }
      // The leaks of 1e-9 S take about 1e-8 A.
      expect(solution.nodeV[2]).toBeCloseTo(low, 7);
      expect(solution.converged).toBe(true);
    }
  });

  it("twice the conductance halves the drop at a given current", () => {
    const drop = (r: number): number => {
      const load: Law = {
        kind: "curve",
        points: [
          [0, 5],
          [1000, 5.000001],
        ],
      };
      const solution = solveNetwork(
        compileNetwork(network(3, [1, 0, emf(12, 0.01)], [1, 2, ohm(r)], [2, 0, load])),
      );
      return solution.nodeV[1]! - solution.nodeV[2]!;
    };
    expect(drop(0.05) / drop(0.1)).toBeCloseTo(0.5, 7);
  });
});

describe("laws of networks", () => {
  it("mirrored sources and mirrored polarised parts mirror every volt", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const { net, options } = randomCase(seed);
        const turned: Network = {
          ...net,
          branches: net.branches.map(({ id, a, b, law }) => {
            if (law.kind === "emf") return { id, a, b, law: { ...law, emfV: -law.emfV } };
            return law.kind === "diode" ? { id, a: b, b: a, law } : { id, a, b, law };
          }),
        };
        const one = solveNetwork(compileNetwork(net), options);
        const other = solveNetwork(compileNetwork(turned), options);
        one.nodeV.forEach((v, node) => {
          // The turned network is eliminated in the same order, so even nodes held by leaks alone mirror closely.
          expect(other.nodeV[node]).toBeCloseTo(-v, 7);
        });
      }),
      { numRuns: 60 },
    );
  });

  it("adds up when linear: the volts of two sources are the sum of the volts of each alone", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 3, max: 25 }),
        fc.infiniteStream(fc.double({ min: 0.001, max: 100, noNaN: true })),
        fc.double({ min: -50, max: 50, noNaN: true }),
        fc.double({ min: -50, max: 50, noNaN: true }),
        (nodeCount, ohms, oneV, otherV) => {
          const links: [number, number, Law][] = [];
          for (let k = 1; k < nodeCount; k++) {
            links.push(
              [k, k - 1, ohm(ohms.next().value)],
              [k, (k * 7) % nodeCount, ohm(ohms.next().value)],
            );
          }
          const last = nodeCount - 1;
          const volts = (first: number, second: number): Float64Array =>
            solveNetwork(
              compileNetwork(
                network(nodeCount, ...links, [1, 0, emf(first, 0.1)], [last, 1, emf(second, 0.2)]),
              ),
            ).nodeV;
          const both = volts(oneV, otherV);
          const one = volts(oneV, 0);
          const other = volts(0, otherV);
          both.forEach((v, node) => {
            expect(v).toBeCloseTo(one[node]! + other[node]!, 9);
          });
        },
      ),
      { numRuns: 100 },
    );
  });

  it("keeps its shape from milliamperes to 300 A: all conductances up by a factor leave the volts", () => {
    const { net, options } = randomCase(11);
    const scaled = (factor: number): Network => ({
      ...net,
      leakOhm: net.leakOhm / factor,
      branches: net.branches.map((branch) => ({ ...branch, law: scaleLaw(branch.law, factor) })),
    });
    const overrides = (options.overrides ?? []).map(({ branchIndex, law }) => (factor: number) => ({
      branchIndex,
      law: scaleLaw(law, factor),
    }));
    const solve = (factor: number): Solution =>
      solveNetwork(compileNetwork(scaled(factor)), {
        overrides: overrides.map((make) => make(factor)),
      });
    const plain = solve(1);
    for (const factor of [1e-4, 1e-2, 10, 300]) {
      const solution = solve(factor);
      expect(solution.converged).toBe(true);
      plain.branchA.forEach((iA, k) => {
        expect(Math.abs(solution.branchA[k]! / factor - iA)).toBeLessThan(
          1e-4 * Math.abs(iA) + 2e-5,
        );
      });
    }
  });
});

function scaleLaw(law: Law, factor: number): Law {
  switch (law.kind) {
    case "ohm":
      return { ...law, ohm: law.ohm / factor };
    case "emf":
      return { ...law, internalOhm: law.internalOhm / factor };
    case "filament":
      return { ...law, ratedA: law.ratedA * factor };
    case "diode":
      return { ...law, isA: law.isA * factor, seriesOhm: law.seriesOhm / factor };
    case "curve":
      return { ...law, points: law.points.map(([v, iA]) => [v, iA * factor]) };
  }
}

function withExtra(net: Network, shorts: readonly Short[]): Network {
  const extra = shorts.map(({ a, b, ohm: r }, k): Branch => ({ id: `S${k}`, a, b, law: ohm(r) }));
  return { ...net, branches: [...net.branches, ...extra] };
}

describe("overrides, shorts and starts", () => {
  it("takes more shorts than fit beside the pattern", () => {
    const { network: net } = feederNetwork(MEASURED_SHAPE);
    const shorts = Array.from({ length: 20 }, (_, k) => ({
      a: 3 * k + 2,
      b: 3 * k + 1,
      ohm: 0.05 + k,
    }));
    const many = solveNetwork(compileNetwork(net), { shorts });
    const inside = solveNetwork(compileNetwork(withExtra(net, shorts)));
    expect(many.branchA.length).toBe(net.branches.length);
    many.nodeV.forEach((v, node) => {
      expect(v).toBeCloseTo(inside.nodeV[node]!, 9);
    });
    expect(many.shortA[7]).toBeCloseTo(inside.branchA[net.branches.length + 7]!, 7);
  });

  it("a short outside the pattern equals the same resistance built in, to 1e-9 V", () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const { net, options } = randomCase(seed);
        const shorts = options.shorts ?? [];
        const built = withExtra(net, shorts);
        const beside = solveNetwork(compileNetwork(net), options);
        const inside = solveNetwork(compileNetwork(built), { overrides: options.overrides ?? [] });
        beside.branchA.forEach((iA, k) => {
          expect(Math.abs(iA - inside.branchA[k]!)).toBeLessThan(1e-9 + 1e-9 * Math.abs(iA));
        });
      }),
      { numRuns: 150 },
    );
  });

  it("an override equals the network compiled with it, also where a resistance turns into a filament", () => {
    const { network: net, contacts, filaments } = feederNetwork(MEASURED_SHAPE);
    const filamentLaw = net.branches[filaments[0]!]!.law;
    const overrides = [
      { branchIndex: contacts[3]!, law: ohm(OPEN_OHM) },
      { branchIndex: filaments[1]!, law: ohm(4) },
      { branchIndex: 8, law: filamentLaw },
    ];
    const branches = net.branches.map((branch, k) => ({
      ...branch,
      law: overrides.find(({ branchIndex }) => branchIndex === k)?.law ?? branch.law,
    }));
    const compiled = compileNetwork(net);
    const changed = solveNetwork(compiled, { overrides });
    const built = solveNetwork(compileNetwork({ ...net, branches }));
    changed.nodeV.forEach((v, node) => {
      expect(v).toBeCloseTo(built.nodeV[node]!, 9);
    });
    // And nothing stays behind for the next solve.
    const after = solveNetwork(compiled);
    expect([...after.nodeV]).toEqual([...solveNetwork(compileNetwork(net)).nodeV]);
  });

  it("what was solved before does not show in the last bit of the next answer", () => {
    const { network: net, contacts } = feederNetwork({ ...MEASURED_SHAPE, diodeCount: 2 });
    const fresh = compileNetwork(net);
    const used = compileNetwork(net);
    const overrides = [{ branchIndex: contacts[4]!, law: ohm(OPEN_OHM) }];
    for (let k = 0; k < 20; k++) {
      const before = [{ branchIndex: contacts[k]!, law: ohm(k % 2 === 0 ? OPEN_OHM : 0.5) }];
      solveNetwork(used, { overrides: before, shorts: [{ a: 5 * k + 1, b: 0, ohm: 0.01 }] });
      expect([...solveNetwork(used, { overrides }).nodeV]).toEqual([
        ...solveNetwork(compileNetwork(net), { overrides }).nodeV,
      ]);
    }
    expect([...solveNetwork(used).nodeV]).toEqual([...solveNetwork(fresh).nodeV]);
  });

  it("a warm start changes the road, not the answer", () => {
    const { network: net, contacts } = feederNetwork({ ...MEASURED_SHAPE, diodeCount: 3 });
    const compiled = compileNetwork(net);
    const before = solveNetwork(compiled);
    const overrides = [{ branchIndex: contacts[2]!, law: ohm(OPEN_OHM) }];
    const cold = solveNetwork(compiled, { overrides });
    const warm = solveNetwork(compiled, { overrides, initialV: before.nodeV });
    cold.branchA.forEach((iA, k) => {
      expect(Math.abs(warm.branchA[k]! - iA)).toBeLessThan(2e-9);
    });
  });

  it("says so when the steps allowed are too few", () => {
    const { network: net } = feederNetwork(MEASURED_SHAPE);
    const solution = solveNetwork(compileNetwork(net), { maxIterationCount: 1 });
    expect(solution.converged).toBe(false);
    expect(solution.kclResidualA).toBeGreaterThan(1e-9);
  });

  it("says so when the numbers run out: a leak of no ohm is refused, an overflow is not called solved", () => {
    expect(() => compileNetwork({ nodeCount: 2, branches: [], leakOhm: 0 })).toThrow("leakOhm 0");
    const solution = solveNetwork(compileNetwork(network(2, [1, 0, emf(1e308, 1e-300)])));
    expect(solution.converged).toBe(false);
  });

  it("refuses a network that breaks its own rules, naming the branch", () => {
    expect(() => compileNetwork(network(2, [1, 5, ohm(1)]))).toThrow("B0 ends on node 5");
    expect(() => compileNetwork(network(2, [1, 0, ohm(0)]))).toThrow("ohm 0 is not above 0");
    const falling: Law = {
      kind: "curve",
      points: [
        [0, 1],
        [1, 1],
      ],
    };
    expect(() => compileNetwork(network(2, [1, 0, falling]))).toThrow("does not rise");
    const compiled = compileNetwork(network(2, [1, 0, ohm(CLOSED_OHM)]));
    expect(() => solveNetwork(compiled, { shorts: [{ a: 1, b: 7, ohm: 1 }] })).toThrow(
      "no such nodes",
    );
  });
});
