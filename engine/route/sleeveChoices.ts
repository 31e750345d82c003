import { figure, type SleeveSizesRow, sleeveSizes } from "../tables/index.ts";

/** One size of covering and whether it suits. */
export interface SleeveChoice {
  readonly kind: "pvc-sleeve" | "conduit" | "heat-shrink";
  /** Inside diameter as supplied, mm. */
  readonly sizeMm: number;
  /** Share of the inside the bundle takes by area, %. */
  readonly fillPercent: number;
  readonly ok: boolean;
}

/**
 * Coverings over a bundle: the sizes next to the limit on both sides, so that what just fits and what just does not can
 * be seen.
 *
 *   PVC sleeve: inside ≥ 1.15 × bundle; conduit: inside ≥ 1.25 × bundle, which is a fill of 64 %;
 *   heat-shrink: bundle ≤ 0.8 × supplied and ≥ 1.1 × recovered
 *
 * @param bundleMm  as laid, mm.
 */
export function sleeveChoices(bundleMm: number): readonly SleeveChoice[] {
  const kinds = ["pvc-sleeve", "conduit", "heat-shrink"] as const;
  return kinds.flatMap((kind) =>
    aroundTheLimit(
      sleeveSizes
        .filter((row) => row.kind === kind)
        .map((row) => ({
          kind,
          sizeMm: row.insideMm,
          fillPercent: 100 * (bundleMm / row.insideMm) ** 2,
          ok: suits(kind, row, bundleMm),
        })),
    ),
  );
}

function suits(kind: SleeveChoice["kind"], row: SleeveSizesRow, bundleMm: number): boolean {
  const rule = (id: RuleId): number => figure("loomRules", id, "value").value;
  const { insideMm, recoveredMm } = row;
  if (kind === "pvc-sleeve") return insideMm >= rule("pvc-sleeve-least") * bundleMm;
  if (kind === "conduit") return insideMm >= rule("sleeve-fit") * bundleMm;
  return (
    bundleMm <= rule("shrink-supplied") * insideMm &&
    bundleMm >= rule("shrink-recovered") * (recoveredMm ?? insideMm)
  );
}

type RuleId = "pvc-sleeve-least" | "sleeve-fit" | "shrink-supplied" | "shrink-recovered";

/** The smallest that suits, and the size before it, which does not. */
function aroundTheLimit(sizes: readonly SleeveChoice[]): readonly SleeveChoice[] {
  const first = sizes.findIndex(({ ok }) => ok);
  if (first < 0) return sizes.slice(-1);
  return sizes.slice(Math.max(0, first - 1), first + 1);
}
