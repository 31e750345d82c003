import type { Law, Network } from "./network.ts";

/** Throws, naming the branch and the value met, when a network breaks its own rules: that is a bug of whoever built it. */
export function checkNetwork(network: Network): void {
  const { nodeCount, branches, leakOhm } = network;
  if (!(Number.isInteger(nodeCount) && nodeCount >= 1)) throw new Error(`nodeCount ${nodeCount}`);
  if (!(leakOhm > 0)) throw new Error(`leakOhm ${leakOhm} is not above 0`);
  for (const { id, a, b, law } of branches) {
    for (const node of [a, b]) {
      if (!(Number.isInteger(node) && node >= 0 && node < nodeCount)) {
        throw new Error(`Branch ${id} ends on node ${node}; nodes are 0 to ${nodeCount - 1}`);
      }
    }
    checkLaw(law, id);
  }
}

/** Throws when a law has a number that is not finite, or would not rise with the volts. */
export function checkLaw(law: Law, name: string | number): void {
  const wrong = fault(law);
  if (wrong !== null) throw new Error(`Branch ${name}, ${law.kind}: ${wrong}`);
}

function fault(law: Law): string | null {
  switch (law.kind) {
    case "ohm":
      return above0("ohm", law.ohm);
    case "emf":
      return Number.isFinite(law.emfV)
        ? above0("internalOhm", law.internalOhm)
        : `emfV ${law.emfV} is not finite`;
    case "filament":
      return (
        above0("ratedV", law.ratedV) ??
        above0("ratedA", law.ratedA) ??
        above0("exponent", law.exponent) ??
        above0("eps", law.eps)
      );
    case "diode":
      return (
        above0("isA", law.isA) ??
        above0("n", law.n) ??
        above0("thermalV", law.thermalV) ??
        (law.seriesOhm === 0 ? null : above0("seriesOhm", law.seriesOhm))
      );
    case "curve":
      return curveFault(law.points);
  }
}

function above0(name: string, value: number): string | null {
  return value > 0 && Number.isFinite(value) ? null : `${name} ${value} is not above 0 and finite`;
}

function curveFault(points: readonly (readonly [number, number])[]): string | null {
  if (points.length < 2) return `${points.length} points, at least 2 wanted`;
  for (let k = 0; k < points.length; k++) {
    const [v, i] = points[k]!;
    if (!(Number.isFinite(v) && Number.isFinite(i))) return `point ${k} is not finite`;
    if (k > 0 && !(v > points[k - 1]![0] && i > points[k - 1]![1])) {
      return `point ${k} does not rise in both volts and amperes`;
    }
  }
  return null;
}
