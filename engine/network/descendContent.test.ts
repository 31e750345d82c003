import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { compileNetwork } from "./compileNetwork.ts";
import { descendContent } from "./descendContent.ts";
import { feederNetwork, seeded } from "./feederNetwork.ts";
import type { Branch, Law, Network } from "./network.ts";
import { applyOverrides } from "./overrides.ts";
import { solveNetwork } from "./solveNetwork.ts";

/** Diodes and filaments on every node, so that no column is left out of the repetition; junctions without resistance. */
function tangle(seed: number): Network {
  const random = seeded(seed);
  const nodeCount = 4 + Math.floor(6 * random());
  const any = (): number => Math.floor(nodeCount * random());
  const law = (): Law =>
    random() < 0.5
      ? { kind: "diode", isA: 1e-12, n: 1, seriesOhm: random() < 0.5 ? 0 : 0.05, thermalV: 0.0259 }
      : { kind: "filament", ratedV: 6, ratedA: 1 + random(), exponent: 0.55, eps: 0.004 };
  const branches: Branch[] = [];
  for (let node = 1; node < nodeCount; node++) {
    branches.push({ id: `N${node}`, a: node, b: any(), law: law() });
    branches.push({ id: `M${node}`, a: any(), b: node, law: law() });
  }
  branches.push({ id: "E", a: 1, b: 0, law: { kind: "emf", emfV: 12, internalOhm: 0.1 } });
  branches.push({
    id: "F",
    a: nodeCount - 1,
    b: 2,
    law: { kind: "emf", emfV: -9, internalOhm: 0.3 },
  });
  return { nodeCount, branches, leakOhm: 1e9 };
}

function descend(
  net: Network,
  shorts: { a: number; b: number; ohm: number }[],
  startV: number,
  most = 300,
) {
  const compiled = compileNetwork(net);
  applyOverrides(compiled, []);
  compiled.work.positionV.fill(startV);
  compiled.work.positionV[compiled.pattern.unknownCount] = 0;
  const descent = descendContent(compiled, shorts, most);
  return { descent, branchA: compiled.work.branchA.slice() };
}

describe("descendContent", () => {
  it("reaches what the plain steps reach, from far away, with and without a short", () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1e9 }), fc.boolean(), (seed, short) => {
        const net =
          seed % 2 === 0
            ? tangle(seed)
            : feederNetwork({
                seed,
                feederCount: 2,
                filamentCount: 6,
                relayCount: 0,
                diodeCount: 3,
                emfV: 12.6,
              }).network;
        const shorts = short ? [{ a: net.nodeCount - 1, b: 0, ohm: 0.01 }] : [];
        const { descent, branchA } = descend(net, shorts, seed % 3 === 0 ? 40 : -7);
        expect(descent.accepted).toBe(true);
        const plain = solveNetwork(compileNetwork(net), { shorts });
        expect(plain.converged).toBe(true);
        plain.branchA.forEach((iA, k) => {
          // Both meet the bound of 1e-9 A at each node; through meshes of milliohms a few of them may add up.
          expect(Math.abs(branchA[k]! - iA)).toBeLessThan(1e-7);
        });
      }),
      { numRuns: 200 },
    );
  });

  it("gives up in words, not silently, when the steps run out", () => {
    expect(descend(tangle(2), [], 40).descent.stepCount).toBeGreaterThan(1);
    expect(descend(tangle(2), [], 40, 1).descent.accepted).toBe(false);
  });
});
