import { type BundleFactorsRow, bundleFactors, type Figure, figure } from "../tables/index.ts";

const columns = [
  { loadedPercent: 20, column: "loaded20Ratio" },
  { loadedPercent: 40, column: "loaded40Ratio" },
  { loadedPercent: 60, column: "loaded60Ratio" },
  { loadedPercent: 80, column: "loaded80Ratio" },
  { loadedPercent: 100, column: "loaded100Ratio" },
] as const;
type Column = (typeof columns)[number];

/** How many wires lie together and how many of them are really loaded, this one among them. */
export interface BundleCount {
  readonly wireCount: number;
  readonly loadedCount: number;
}

export interface TableRatio {
  readonly ratio: number;
  /** True where the published curve stops short of so many wires: the ratio is then that of its last row, too kind. */
  readonly beyondTable: boolean;
  readonly figures: readonly Figure[];
}

/**
 * Share of its single-wire rating a wire keeps in a bundle, from the published curves: straight lines between the loaded
 * shares of 20, 40, 60, 80 and 100 % and between the counts of wires. Under 20 % the 20 % curve holds.
 *
 * @param bundle  wireCount ≥ 1, 1 ≤ loadedCount ≤ wireCount.
 * @source tables/bundleFactors.
 */
export function bundleTableRatio(bundle: BundleCount): TableRatio {
  const { wireCount, loadedCount } = bundle;
  if (!(wireCount >= 1 && loadedCount >= 1 && loadedCount <= wireCount)) {
    throw new Error(`bundle of ${wireCount} wires, ${loadedCount} loaded`);
  }
  const percent = Math.max(columns[0].loadedPercent, (100 * loadedCount) / wireCount);
  const above = columns.findIndex(({ loadedPercent }) => loadedPercent >= percent);
  const high = columns[above]!;
  const low = columns[above - 1] ?? high;
  const highEnd = ratioAtCount(high, wireCount);
  const lowEnd = ratioAtCount(low, wireCount);
  const spanPercent = high.loadedPercent - low.loadedPercent;
  const weight = spanPercent === 0 ? 0 : (percent - low.loadedPercent) / spanPercent;
  return {
    ratio: lowEnd.ratio + (highEnd.ratio - lowEnd.ratio) * weight,
    beyondTable: lowEnd.beyondTable || highEnd.beyondTable,
    figures: low === high ? highEnd.figures : [...lowEnd.figures, ...highEnd.figures],
  };
}

function ratioAtCount({ column }: Column, wireCount: number): TableRatio {
  const rows = bundleFactors.filter((row: BundleFactorsRow) => row[column] !== null);
  const above = rows.findIndex((row) => row.wireCount >= wireCount);
  const high = rows[above] ?? rows.at(-1)!;
  const low = high.wireCount > wireCount ? rows[above - 1]! : high;
  const span = high.wireCount - low.wireCount;
  const weight = span === 0 ? 0 : (wireCount - low.wireCount) / span;
  const [lowRatio, highRatio] = [low[column] as number, high[column] as number];
  const rowIds = low === high ? [high.id] : [low.id, high.id];
  return {
    ratio: lowRatio + (highRatio - lowRatio) * weight,
    beyondTable: above < 0,
    figures: rowIds.map((id) => figure("bundleFactors", id, column)),
  };
}
