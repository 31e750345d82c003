import type { CurveLaw, DiodeLaw, FilamentLaw, Law } from "../network/index.ts";
import { nodeLabel } from "./jobNodes.ts";

/** A number in full double precision, as a circuit simulator reads it. */
export const spiceNumber = (value: number): string => String(value);

/**
 * Lines of one element for a general circuit simulator. The device is named by the element's id; the inner node of a source is
 * x and its number, the model of a diode d and its number.
 */
export function spiceElement(id: string, nodes: readonly [number, number], law: Law): string[] {
  const [a, b] = nodes.map(nodeLabel) as [string, string];
  const n = id.slice(1);
  switch (law.kind) {
    case "ohm":
      return [`${id} ${a} ${b} ${spiceNumber(law.ohm)}`];
    case "emf":
      return [
        `${id} x${n} ${b} ${spiceNumber(law.emfV)}`,
        `R${n} x${n} ${a} ${spiceNumber(law.internalOhm)}`,
      ];
    case "filament":
      return [`${id} ${a} ${b} I=${filamentExpression(law, a, b)}`];
    case "curve":
      return [`${id} ${a} ${b} I=${curveExpression(law, voltage(a, b))}`];
    case "diode":
      return [`${id} ${a} ${b} d${n}`, diodeModel(`d${n}`, law)];
  }
}

/** Voltage between two nodes as an expression; node 0 needs no name. */
export function voltage(a: string, b: string): string {
  if (a === b) return "(0)";
  if (b === "0") return `v(${a})`;
  return a === "0" ? `(-v(${b}))` : `v(${a},${b})`;
}

function filamentExpression(law: FilamentLaw, a: string, b: string): string {
  const u = `(${voltage(a, b)}/${spiceNumber(law.ratedV)})`;
  const half = spiceNumber((law.exponent - 1) / 2);
  return `${spiceNumber(law.ratedA)}*${u}*(${u}^2+${spiceNumber(law.eps ** 2)})^(${half})`;
}

/** i0 + s0 (v − v0) + Σ (s_k − s_{k−1}) · ramp(v − v_k): the same straight lines, going on beyond both ends. */
function curveExpression({ points }: CurveLaw, v: string): string {
  const slopes = points.slice(1).map(([v1, i1], k) => (i1 - points[k]![1]) / (v1 - points[k]![0]));
  const [v0, i0] = points[0]!;
  const terms = slopes.map((slope, k) =>
    k === 0
      ? `(${spiceNumber(slope)})*(${v}-(${spiceNumber(v0)}))`
      : `(${spiceNumber(slope - slopes[k - 1]!)})*uramp(${v}-(${spiceNumber(points[k]![0])}))`,
  );
  return [`(${spiceNumber(i0)})`, ...terms].join("+");
}

function diodeModel(name: string, { isA, n, seriesOhm }: DiodeLaw): string {
  return `.model ${name} d is=${spiceNumber(isA)} n=${spiceNumber(n)} rs=${spiceNumber(seriesOhm)}`;
}
