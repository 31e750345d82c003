import { bestKnownRimRatio } from "../../cases/handbook/bundle/bestKnown.ts";
import { packCircles, packingStepCount, seededRandom } from "../../engine/geometry/index.ts";

interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly target?: number;
}

const SEEDS = [1, 2, 3];
/** Sizes drawn from for the mixed bundles, mm: our own spread from thin signal wire to a main feed. */
const SIZES_MM = [1.6, 1.9, 2.1, 2.4, 2.8, 3.3, 4, 5];

/** Excess over the best known for 2 to 60 equal circles, at a multiple of the suggested steps. */
function equal(times: number, targetMeanPercent: number): readonly Figure[] {
  const excesses: number[] = [];
  const from = performance.now();
  for (const seed of SEEDS) {
    for (let count = 2; count <= 60; count++) {
      const stepCount = times * packingStepCount(count);
      const diametersMm = Array.from({ length: count }, () => 2);
      const { tightestMm } = packCircles({ diametersMm, seed, stepCount });
      excesses.push(100 * (tightestMm / 2 / bestKnownRimRatio.get(count)! - 1));
    }
  }
  const spentMs = (performance.now() - from) / excesses.length;
  const mean = excesses.reduce((sum, excess) => sum + excess, 0) / excesses.length;
  const label = `equal, 2 to 60, ${times} x steps:`;
  return [
    { name: `${label} mean excess`, value: mean, unit: "%", target: targetMeanPercent },
    { name: `${label} worst excess`, value: Math.max(...excesses), unit: "%", target: 2.5 },
    { name: `${label} time a bundle`, value: spentMs, unit: "ms", target: times === 1 ? 20 : 100 },
  ];
}

/** Mixed bundles: diameter over √Σd², and how far seeds differ. */
function mixed(times: number): readonly Figure[] {
  const factors: number[] = [];
  const spreads: number[] = [];
  const from = performance.now();
  for (const count of [8, 10, 12, 14, 16, 20, 25, 30]) {
    const random = seededRandom(count);
    const diametersMm = Array.from({ length: count }, () => SIZES_MM[Math.floor(8 * random())]!);
    const stepCount = Math.ceil(times * packingStepCount(count));
    const found = [1, 2, 3, 4].map((seed) => packCircles({ diametersMm, seed, stepCount }));
    const rims = found.map(({ tightestMm }) => tightestMm);
    factors.push(...found.map(({ tightestMm, areaBoundMm }) => tightestMm / areaBoundMm));
    spreads.push(100 * (Math.max(...rims) / Math.min(...rims) - 1));
  }
  const spentMs = (performance.now() - from) / factors.length;
  const mean = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0) / list.length;
  const label = `mixed, 8 to 30, ${times} x steps:`;
  return [
    { name: `${label} mean diameter over root of squares`, value: mean(factors), unit: "" },
    { name: `${label} mean spread over seeds`, value: mean(spreads), unit: "%", target: 0.5 },
    { name: `${label} worst spread over seeds`, value: Math.max(...spreads), unit: "%" },
    { name: `${label} time a bundle`, value: spentMs, unit: "ms", target: 50 },
  ];
}

/** Radii 1, 2, 3, …, n: as unlike as they come. The best radius over four seeds, and how far the others lie from it. */
function ladder(count: number): readonly Figure[] {
  const diametersMm = Array.from({ length: count }, (_, i) => 2 * (i + 1));
  const stepCount = 5 * packingStepCount(count);
  const rims = [1, 2, 3, 4].map(
    (seed) => packCircles({ diametersMm, seed, stepCount }).tightestMm / 2,
  );
  const least = Math.min(...rims);
  return [
    { name: `radii 1 to ${count}, 5 x steps: best radius of four seeds`, value: least, unit: "" },
    {
      name: `radii 1 to ${count}, 5 x steps: worst seed over best`,
      value: 100 * (Math.max(...rims) / least - 1),
      unit: "%",
    },
  ];
}

/** How tight circles are packed, and what it costs. Steps are counted; only this page looks at a clock. */
export async function run(): Promise<Figure[]> {
  return [
    ...equal(1, 0.5),
    ...equal(5, 0.3),
    ...mixed(1),
    ...mixed(5),
    ...ladder(10),
    ...ladder(20),
    ...ladder(30),
  ];
}
