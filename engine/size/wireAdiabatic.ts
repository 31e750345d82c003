import type { WorkingStep } from "../messages/index.ts";
import { figure, type WiresRow } from "../tables/index.ts";

const rowOf: Readonly<Record<string, "pvc-70-160" | "xlpe-90-250">> = {
  pvc: "pvc-70-160",
  xlpe: "xlpe-90-250",
};

/**
 * I²t a short may let through before the insulation is hurt: (k · S)², A²s, from the hottest healthy state.
 * Of several insulations the weakest; of an unknown one PVC.
 *
 * @param leastMm2  least copper among what the wire can be, mm²; null: not known.
 */
export function adiabaticOf(
  candidates: readonly WiresRow[],
  leastMm2: number | null,
): { readonly value: number; readonly working: readonly WorkingStep[] } | null {
  if (leastMm2 === null) return null;
  const rows = candidates.map(({ insulation }) => rowOf[insulation] ?? "pvc-70-160");
  const figures = (rows.length === 0 ? (["pvc-70-160"] as const) : rows).map((row) =>
    figure("kFactors", row, "value"),
  );
  const k = figures.reduce((least, one) => (one.value < least.value ? one : least));
  const value = (k.value * leastMm2) ** 2;
  const step: WorkingStep = {
    name: "I2t the wire takes in a short",
    equation: "(k x S)^2",
    inputs: [
      { name: "k", value: k.value, unit: k.unit, from: `${k.source}, ${k.place}` },
      { name: "S", value: leastMm2, unit: "mm2", from: "least copper it can hold" },
    ],
    value,
    unit: "A2s",
  };
  return { value, working: [step] };
}
