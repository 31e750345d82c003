import { preparedProof, proveJob } from "../../engine/prove/index.ts";
import { conductorsOf, routeJob } from "../../engine/route/index.ts";
import { largeVehicle } from "./largeVehicle.ts";

interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
}

const SEED = 20;
const WIRE_COUNTS = (process.env.PROVE_WIRES ?? "150,500,1500,5000").split(",").map(Number);

const seconds = (work: () => unknown): number => {
  const start = performance.now();
  work();
  return (performance.now() - start) / 1000;
};

/** Zones of some fifty wires on a spine, each behind its own fuse; sizes are chosen there, so nothing is sized. */
export async function run(): Promise<readonly Figure[]> {
  return WIRE_COUNTS.flatMap((wireCount) => {
    const job = largeVehicle(wireCount, SEED);
    const routed = routeJob(job);
    const input = preparedProof({ job, routed, conductors: conductorsOf(job, routed) });
    let solvedCount = 0;
    const value = seconds(() => {
      solvedCount = proveJob(input, { tryRemedies: false }).coverage.solvedInFull;
    });
    const name = `proof of ${job.wires.length} wires, one thread`;
    process.stderr.write(`    ${name}: ${value} s, ${solvedCount} solved\n`);
    return [
      { name, value, unit: "s" },
      { name: "    states solved in full for it", value: solvedCount, unit: "" },
    ];
  });
}
