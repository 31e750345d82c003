import { spawnSync } from "node:child_process";
import type { BranchOverride, Law, Network, Short } from "../../engine/network/index.ts";

/**
 * A network written for a general circuit simulator, in the smooth filament form, so that it can be solved by
 * code that is not ours.
 */
export function ngspiceText(
  net: Network,
  overrides: readonly BranchOverride[],
  shorts: readonly Short[],
): string {
  const laws = net.branches.map((branch) => branch.law);
  for (const { branchIndex, law } of overrides) laws[branchIndex] = law;
  const lines = ["* network"];
  net.branches.forEach(({ a, b }, k) => {
    lines.push(...element(k, name(a), name(b), laws[k]!));
  });
  shorts.forEach(({ a, b, ohm }, k) => {
    // Both ends on one node: the simulator drops such a resistor with a warning; nothing flows.
    if (a !== b) lines.push(`Rshort${k} ${name(a)} ${name(b)} ${ohm}`);
  });
  for (let node = 1; node < net.nodeCount; node++) {
    lines.push(`Rleak${node} ${name(node)} 0 ${net.leakOhm}`);
  }
  return [...lines, ...CONTROL].join("\n");
}

const CONTROL = [
  ".options reltol=1e-10 abstol=1e-13 vntol=1e-10 gmin=1e-12 temp=27 tnom=27",
  ".control",
  "set numdgt=14",
  "op",
  "print all",
  "quit",
  ".endc",
  ".end",
  "",
];

/** kT/q at 27 °C with the constants of the SI (k = 1.380649e-23 J/K, q = 1.602176634e-19 C, both exact). */
const SIMULATOR_THERMAL_V = (1.380649e-23 * 300.15) / 1.602176634e-19;

function name(node: number): string {
  return node === 0 ? "0" : `n${node}`;
}

function element(k: number, a: string, b: string, law: Law): string[] {
  switch (law.kind) {
    case "ohm":
      return [`R${k} ${a} ${b} ${law.ohm}`];
    case "emf":
      return [`V${k} x${k} ${b} ${law.emfV}`, `RS${k} x${k} ${a} ${law.internalOhm}`];
    case "filament": {
      const u = `(v(${a},${b})/${law.ratedV})`;
      const half = (law.exponent - 1) / 2;
      const form = `${law.ratedA}*${u}*(${u}^2+${law.eps ** 2})^(${half})`;
      return [`B${k} ${a} ${b} I=${form}`];
    }
    case "diode": {
      // The simulator knows its own thermal volts only; n takes up the difference.
      const n = (law.n * law.thermalV) / SIMULATOR_THERMAL_V;
      return [`D${k} ${a} ${b} D${k}M`, `.model D${k}M d is=${law.isA} n=${n} rs=${law.seriesOhm}`];
    }
    case "curve": {
      const points = law.points.map(([v, i]) => `${v},${i}`).join(",");
      return [`B${k} ${a} ${b} I=pwl(v(${a},${b}),${points})`];
    }
  }
}

/** Runs the text and reads the volts of every node, by node number. Throws with the simulator's words when it fails. */
export function ngspiceVolts(net: Network, text: string): Float64Array {
  const run = spawnSync("ngspice", ["-b"], { input: text, encoding: "utf8" });
  if (run.error) throw new Error(`ngspice could not be run: ${run.error.message}`);
  const volts = new Float64Array(net.nodeCount).fill(Number.NaN);
  volts[0] = 0;
  for (const [, node, value] of run.stdout.matchAll(/^n(\d+) = (\S+)/gm)) {
    volts[Number(node)] = Number(value);
  }
  if (volts.some(Number.isNaN)) throw new Error(`No operating point:\n${run.stdout}${run.stderr}`);
  return volts;
}
