import { crimpPull, type Figure, figure } from "../tables/index.ts";

/**
 * Least force a sample crimp must hold, the commercial column of tables/crimpPull.
 *
 *   F = F1 + (F2 - F1) · (A - A1) / (A2 - A1)   between neighbouring rows
 *
 * @param areaMm2  copper of the wire, mm².
 * @returns null outside the table: nothing is extrapolated. `figure` is the row at or below the size.
 */
export function crimpPullOf(
  areaMm2: number,
): { readonly forceN: number; readonly figure: Figure } | null {
  const rows = crimpPull
    .filter((row) => row.standard === "commercial")
    .sort((a, b) => a.areaMm2 - b.areaMm2);
  const above = rows.findIndex((row) => row.areaMm2 >= areaMm2);
  const upper = rows[above];
  if (upper === undefined) return null;
  const lower = upper.areaMm2 === areaMm2 ? upper : rows[above - 1];
  if (lower === undefined) return null;
  const found = figure("crimpPull", lower.id, "minPullN");
  if (lower === upper) return { forceN: lower.minPullN, figure: found };
  const share = (areaMm2 - lower.areaMm2) / (upper.areaMm2 - lower.areaMm2);
  return { forceN: lower.minPullN + share * (upper.minPullN - lower.minPullN), figure: found };
}
