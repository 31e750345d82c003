import { spawnSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { feederNetwork, OPEN_OHM, seeded } from "../../engine/network/feederNetwork.ts";
import {
  type BranchOverride,
  compileNetwork,
  floatingNodes,
  type Network,
  type Short,
  solveNetwork,
} from "../../engine/network/index.ts";
import { ngspiceText, ngspiceVolts } from "./ngspiceText.ts";

/** Pass mark: the project's own bound against the simulator, over nodes that do not float. */
const AGREEMENT_V = 1e-6;

interface Case {
  readonly net: Network;
  readonly overrides: BranchOverride[];
  readonly shorts: Short[];
}

/** Half the cases negative, a quarter 6 V; shorts from 1 mΩ to 1 Ω, to the reference and across. */
function randomCase(seed: number): Case {
  const random = seeded(seed);
  const made = feederNetwork({
    seed,
    feederCount: 1 + Math.floor(5 * random()),
    filamentCount: 2 + Math.floor(19 * random()),
    relayCount: 0,
    diodeCount: seed % 3 === 0 ? 0 : 1 + Math.floor(4 * random()),
    emfV: (seed % 2 === 0 ? 1 : -1) * (seed % 4 === 3 ? 6.3 : 12.6),
  });
  const overrides = made.contacts
    .filter(() => random() < 0.3)
    .map((branchIndex) => ({ branchIndex, law: { kind: "ohm", ohm: OPEN_OHM } as const }));
  const any = (): number => Math.floor(random() * made.network.nodeCount);
  const shorts = Array.from({ length: seed % 5 === 0 ? 0 : 1 + (seed % 2) }, (_, k) => ({
    a: any(),
    b: k === 0 ? 0 : any(),
    ohm: seed % 5 === 1 ? 0.001 : 0.001 * 1000 ** random(),
  }));
  return { net: made.network, overrides, shorts };
}

function worstDifferenceV(one: Case): { differenceV: number; comparedCount: number } {
  const compiled = compileNetwork(one.net);
  const solution = solveNetwork(compiled, one);
  expect(solution.converged).toBe(true);
  const volts = ngspiceVolts(one.net, ngspiceText(one.net, one.overrides, one.shorts));
  const floating = new Set(floatingNodes(compiled, solution));
  let differenceV = 0;
  let comparedCount = 0;
  for (let node = 1; node < one.net.nodeCount; node++) {
    if (floating.has(node)) continue;
    comparedCount++;
    differenceV = Math.max(differenceV, Math.abs(volts[node]! - solution.nodeV[node]!));
  }
  return { differenceV, comparedCount };
}

describe("against the simulator", () => {
  it("ngspice is installed (the comparison is part of the proof: without it this fails)", () => {
    const found = spawnSync("ngspice", ["--version"], { encoding: "utf8" });
    expect(found.error?.message ?? "present", "ngspice not found: install it").toBe("present");
  });

  it("agrees within 1e-6 V on 80 random networks with filaments, diodes, open contacts and shorts", () => {
    let compared = 0;
    for (let seed = 1; seed <= 80; seed++) {
      const one = randomCase(seed);
      const { differenceV, comparedCount } = worstDifferenceV(one);
      expect(differenceV, `seed ${seed}`).toBeLessThanOrEqual(AGREEMENT_V);
      compared += comparedCount;
    }
    // The claim is about most nodes of most networks, not about the few that happen to be tied.
    expect(compared).toBeGreaterThan(4000);
  });

  it("agrees on a straight-line source against its own resistor form", () => {
    const net: Network = {
      nodeCount: 3,
      leakOhm: 1e9,
      branches: [
        {
          id: "s",
          a: 1,
          b: 0,
          law: {
            kind: "curve",
            points: [
              [-1, -20],
              [13.5, -14],
              [14.4, 0],
            ],
          },
        },
        { id: "w", a: 1, b: 2, law: { kind: "ohm", ohm: 0.02 } },
        { id: "e", a: 2, b: 0, law: { kind: "emf", emfV: 12.6, internalOhm: 0.012 } },
      ],
    };
    expect(worstDifferenceV({ net, overrides: [], shorts: [] }).differenceV).toBeLessThan(
      AGREEMENT_V,
    );
  });
});
