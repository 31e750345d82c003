import { ambientFactor } from "../heat/index.ts";
import type { WorkingStep } from "../messages/index.ts";
import { makeFields } from "../route/index.ts";
import { type Figure, figure, leansOnMemory, type WiresRow, wires } from "../tables/index.ts";
import { type BundleCount, bundleTableRatio, type TableRatio } from "./bundleTableRatio.ts";
import { modelCurrentA } from "./modelCurrentA.ts";
import { type RatingParts, ratingWorking } from "./ratingWorking.ts";

export interface RatingQuestion {
  /** Row of tables/wires. */
  readonly makeId: string;
  readonly ambientC: number;
  /** The wires it lies with; one alone is { wireCount: 1, loadedCount: 1 }. */
  readonly bundle: BundleCount;
  /** True inside sleeve or tape: no loom factor above the table's largest is then used. */
  readonly sleeved?: boolean;
}

export interface Rating {
  /** What the wire may carry for ever in this place, A: the lower of the two below. */
  readonly currentA: number;
  readonly governedBy: "table" | "model";
  /** The trade's figure for one wire; null where the make has none, or one for cranking only. */
  readonly tableA: number | null;
  readonly tableBasis: string | null;
  /** The trade's figure carried over to this place; null as above. */
  readonly deratedTableA: number | null;
  /** The heat model, bundle included. */
  readonly modelA: number;
  readonly ambientRatio: number;
  readonly bundleRatio: number;
  /** The published figures it rests on. The heat model's own are `heatMaterialFigures`. */
  readonly figures: readonly Figure[];
  /** True where the list or the bundle curve is only remembered. */
  readonly leansOnMemory: boolean;
  readonly working: readonly WorkingStep[];
}

/**
 * What a wire may carry without end.
 *
 *   table · ambient factor · bundle factor   against   heat model (alone) · bundle factor   and   heat model (bundle)
 *
 * A thermal list is carried to the place asked about, never above the list itself. A list that is a rule of volts or
 * custom (8.8 A/mm², half an amp a strand) holds as it stands, because the wire is far from its heat limit there. A
 * figure for cranking says nothing about this question.
 */
export function ratingOf(question: RatingQuestion): Rating {
  const row = wires.find((one) => one.id === question.makeId);
  if (row === undefined) throw new Error(`no make of wire "${question.makeId}" in tables/wires`);
  const wire = makeFields(question.makeId);
  const bundled = bundleRatioOf(question);
  const aloneA = modelCurrentA(wire, question.ambientC, ALONE);
  const togetherA = modelCurrentA(wire, question.ambientC, question.bundle);
  const modelA = Math.min(aloneA * bundled.ratio, togetherA);
  const isContinuous = row.ratedUse === "thermal" || row.ratedUse === "rule";
  const rated = isContinuous ? figure("wires", row.id, "ratedA") : null;
  const ambientRatio = ambientRatioOf(row, question.ambientC);
  const carriedRatio = row.ratedUse === "thermal" ? ambientRatio * bundled.ratio : 1;
  const deratedTableA = rated === null ? null : rated.value * carriedRatio;
  const figures = rated === null ? bundled.figures : [rated, ...bundled.figures];
  const parts: RatingParts = {
    currentA: Math.min(deratedTableA ?? Number.POSITIVE_INFINITY, modelA),
    governedBy: deratedTableA !== null && deratedTableA <= modelA ? "table" : "model",
    tableA: rated?.value ?? null,
    tableBasis: rated === null ? null : row.ratedBasis,
    deratedTableA,
    modelA,
    ambientRatio,
    bundleRatio: bundled.ratio,
    figures,
    leansOnMemory: leansOnMemory(figures),
    question,
    row,
    rated,
    bundleFigures: bundled.figures,
    bundleBeyondTable: bundled.beyondTable,
    aloneA,
    togetherA,
  };
  return { ...answerOf(parts), working: ratingWorking(parts) };
}

const ALONE: BundleCount = { wireCount: 1, loadedCount: 1 };

function answerOf(parts: RatingParts): Omit<Rating, "working"> {
  return {
    currentA: parts.currentA,
    governedBy: parts.governedBy,
    tableA: parts.tableA,
    tableBasis: parts.tableBasis,
    deratedTableA: parts.deratedTableA,
    modelA: parts.modelA,
    ambientRatio: parts.ambientRatio,
    bundleRatio: parts.bundleRatio,
    figures: parts.figures,
    leansOnMemory: parts.leansOnMemory,
  };
}

/** Never above 1: a cooler place does not raise a trade list. */
function ambientRatioOf(row: WiresRow, ambientC: number): number {
  const { ratedUse, ratedConductorC: limitC, ratedAmbientC } = row;
  if (ratedUse !== "thermal" || limitC === null || ratedAmbientC === null) return 1;
  return Math.min(1, ambientFactor({ limitC, ambientC, ratedAmbientC }));
}

function bundleRatioOf({ bundle, sleeved }: RatingQuestion): TableRatio {
  const table = bundleTableRatio(bundle);
  if (sleeved !== true || bundle.wireCount < 2) return table;
  const most: Figure = figure("sleeveDerating", "in-sleeve-largest", "value");
  return table.ratio <= most.value
    ? table
    : { ...table, ratio: most.value, figures: [...table.figures, most] };
}
