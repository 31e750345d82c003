import {
  bundleConductorTemperaturesC,
  heatCapacityJPerMK,
  heatMaterials,
  loomMaterials,
  lossTable,
  steadyCurrentA,
  survives,
  wireInAirPath,
} from "../../engine/heat/index.ts";

const materials = heatMaterials("pvc");
const loom = loomMaterials();
const wire = { ohmPerM20: 0.0185, conductorDiameterMm: 1.3, outerDiameterMm: 2, areaMm2: 1.005 };

/** Times one call, µs, as the mean of many after a warm-up. */
function microsecondsOf(repeats: number, call: (n: number) => unknown): number {
  for (let n = 0; n < repeats / 4; n++) call(n);
  const from = performance.now();
  for (let n = 0; n < repeats; n++) call(n);
  return (1000 * (performance.now() - from)) / repeats;
}

function survivalOf(largestFaultA: number) {
  const loss = lossTable(wireInAirPath(wire, { ambientC: 40, materials }), {
    fromC: 40,
    toC: 400,
    stepK: 1,
  });
  const metalJPerMK = heatCapacityJPerMK({ ...wire, insulationShareRatio: 0 }, materials);
  return survives({
    lump: {
      ohmPerM20: wire.ohmPerM20,
      alphaPerK: materials.conductor.alphaPerK,
      capacityJPerMK: metalJPerMK,
      loss,
    },
    metalJPerMK,
    startC: 80,
    fuse: {
      reading: "interpolated",
      points: [
        { loadPercent: 140, minS: 1, maxS: 500 },
        { loadPercent: 200, minS: 0.2, maxS: 6 },
        { loadPercent: 400, minS: 0.05, maxS: 0.4 },
      ],
    },
    ratingA: 15,
    limits: { shortS: 5, shortC: 160, longS: 21_600, longC: 150, foreverC: 125 },
    largestFaultA,
    toleranceK: 0.5,
    cellCountMax: 4000,
  });
}

/** What the heat room costs. */
export async function run() {
  const bundle = {
    wires: Array.from({ length: 12 }, () => wire),
    bundleDiameterMm: null,
    packingRatio: loom.packingRatio,
    conductivityWPerMK: loom.conductivityWPerMK,
    sleeve: null,
    ambientC: 40,
    ceilingC: 1000,
    materials,
  };
  return [
    {
      name: "continuous current of one wire, both laws",
      value: microsecondsOf(2000, (n) =>
        steadyCurrentA({ ...wire, limitC: 105, ambientC: 30 + (n % 40), materials }),
      ),
      unit: "µs",
    },
    {
      name: "every conductor of a loom of twelve",
      value: microsecondsOf(2000, (n) =>
        bundleConductorTemperaturesC({
          ...bundle,
          currentsA: bundle.wires.map((_, i) => ((n + i) % 7) as number),
        }),
      ),
      unit: "µs",
    },
    {
      name: "one wire behind its fuse, every current, proven to 0.5 K",
      value: microsecondsOf(100, (n) => survivalOf(300 + n)),
      unit: "µs",
    },
  ];
}
