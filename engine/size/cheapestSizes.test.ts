import fc from "fast-check";
import highsLoader from "highs";
import { describe, expect, test } from "vitest";
import { cheapestSizes } from "./cheapestSizes.ts";
import type { SizeOption, SizeProblem } from "./sizeProblem.ts";
import { twoTrees } from "./twoTrees.fixture.ts";

/** The same problem as a mixed-integer programme in LP text: one 0/1 variable a wire and size. */
function asProgramme({ wires, budgets }: SizeProblem, unmet: readonly string[]): string {
  const name = new Map([...wires.keys()].map((wire, i) => [wire, i]));
  const term = (wire: string, option: number, factor: number): string =>
    `+ ${factor.toPrecision(17)} x${name.get(wire)}_${option}`;
  const terms = (wire: string, of: (option: SizeOption) => number): string =>
    wires
      .get(wire)!
      .map((option, i) => term(wire, i, of(option)))
      .join("\n");
  const all = [...wires.keys()];
  return [
    "Minimize",
    ...all.map((wire) => terms(wire, ({ cost }) => cost)),
    "Subject To",
    ...all.map((wire) => `${terms(wire, () => 1)} = 1`),
    ...budgets
      .filter(({ id }) => !unmet.includes(id))
      .map(
        (budget) =>
          `${budget.wires.map((wire) => terms(wire, ({ dropV }) => dropV)).join("\n")} <= ${budget.budgetV.toPrecision(17)}`,
      ),
    "Binary",
    ...all.flatMap((wire) => wires.get(wire)!.map((_, i) => `x${name.get(wire)}_${i}`)),
    "End",
  ].join("\n");
}

describe("against a mixed-integer solver", () => {
  // Both sum some hundred doubles; the solver's own gap and feasibility tolerances are 1e-6 of its sums.
  const TOLERANCE_RATIO = 2e-6;
  const shapes = [
    { seed: 11, loadCount: 24, feedCount: 12, returnCount: 0 },
    { seed: 12, loadCount: 32, feedCount: 16, returnCount: 0 },
    { seed: 13, loadCount: 40, feedCount: 14, returnCount: 0 },
    { seed: 14, loadCount: 16, feedCount: 8, returnCount: 2 },
    { seed: 15, loadCount: 20, feedCount: 10, returnCount: 4 },
    { seed: 16, loadCount: 18, feedCount: 10, returnCount: 6 },
    { seed: 17, loadCount: 14, feedCount: 10, returnCount: 8 },
    { seed: 18, loadCount: 24, feedCount: 8, returnCount: 3 },
  ];

  test.each(shapes)(
    "$loadCount loads, $feedCount shared feeds, $returnCount shared returns",
    async (shape) => {
      const problem = twoTrees(shape);
      const own = cheapestSizes(problem);
      expect(own.exact).toBe(true);
      const highs = await highsLoader();
      const solved = highs.solve(asProgramme(problem, own.unmet), { mip_rel_gap: 0 });
      expect(solved.Status).toBe("Optimal");
      expect(Math.abs(own.cost / solved.ObjectiveValue - 1)).toBeLessThan(TOLERANCE_RATIO);
    },
  );
});

/** Every choice, tried. */
function everyChoice({ wires, budgets }: SizeProblem): number | null {
  const names = [...wires.keys()];
  let least: number | null = null;
  const drops = new Map<string, number>();
  const descend = (depth: number, cost: number): void => {
    const wire = names[depth];
    if (wire === undefined) {
      const fits = budgets.every(
        (one) =>
          [...new Set(one.wires)].reduce((sum, name) => sum + drops.get(name)!, 0) <=
          one.budgetV + 1e-12,
      );
      if (fits && (least === null || cost < least)) least = cost;
      return;
    }
    for (const option of wires.get(wire)!) {
      drops.set(wire, option.dropV);
      descend(depth + 1, cost + option.cost);
    }
  };
  descend(0, 0);
  return least;
}

test("law: as good as trying every choice, whatever budgets count whatever wires", () => {
  const names = ["a", "b", "c", "d", "e", "f"];
  const size = fc.record({
    cost: fc.integer({ min: 1, max: 9 }),
    dropV: fc.integer({ min: 0, max: 9 }).map((n) => n / 10),
  });
  const wires = fc.tuple(...names.map(() => fc.array(size, { minLength: 1, maxLength: 3 })));
  const budget = fc.record({
    wires: fc.subarray(names, { minLength: 1 }),
    budgetV: fc.integer({ min: 2, max: 30 }).map((n) => n / 10),
  });
  fc.assert(
    fc.property(wires, fc.array(budget, { maxLength: 5 }), (options, budgets) => {
      const problem: SizeProblem = {
        wires: new Map(names.map((name, i) => [name, options[i]!])),
        budgets: budgets.map((one, i) => ({ ...one, id: `${i}` })),
      };
      const own = cheapestSizes(problem);
      const kept = problem.budgets.filter(({ id }) => !own.unmet.includes(id));
      expect(own.exact).toBe(true);
      expect(own.cost).toBe(everyChoice({ ...problem, budgets: kept }));
      for (const { id } of problem.budgets.filter((one) => own.unmet.includes(one.id))) {
        const only = problem.budgets.filter((one) => one.id === id);
        expect(everyChoice({ ...problem, budgets: only })).toBeNull();
      }
    }),
    { numRuns: 300 },
  );
});

test("a shared feed is thickened once instead of every twig", () => {
  const sizes = [1, 2, 3].map((areaMm2) => ({ cost: areaMm2, dropV: 0.3 / areaMm2 }));
  const problem: SizeProblem = {
    wires: new Map(["feed", "x", "y"].map((name) => [name, sizes])),
    budgets: ["x", "y"].map((twig) => ({ id: twig, wires: ["feed", twig], budgetV: 0.45 })),
  };
  const { chosen, cost } = cheapestSizes(problem);
  expect(cost).toBe(4);
  expect(Object.fromEntries(chosen)).toEqual({ feed: 1, x: 0, y: 0 });
});

test("cut short, it says so and still meets every budget", () => {
  const problem = {
    ...twoTrees({ seed: 2, loadCount: 30, feedCount: 15, returnCount: 5 }),
    maxStepCount: 3,
  };
  const own = cheapestSizes(problem);
  expect(own.exact).toBe(false);
  expect(own.lowerBound).toBeLessThan(own.cost);
  for (const budget of problem.budgets.filter(({ id }) => !own.unmet.includes(id))) {
    const dropV = budget.wires.reduce(
      (sum, wire) => sum + problem.wires.get(wire)![own.chosen.get(wire)!]!.dropV,
      0,
    );
    expect(dropV).toBeLessThanOrEqual(budget.budgetV + 1e-9);
  }
});
