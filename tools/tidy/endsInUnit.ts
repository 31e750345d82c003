/** Units and dimensionless endings a numeric name may close with. */
const ENDINGS = [
  "V",
  "A",
  "W",
  "C",
  "K",
  "S",
  "N",
  "J",
  "Ohm",
  "Mm",
  "Mm2",
  "Mm3",
  "M",
  "M2",
  "Rpm",
  "Ah",
  "Wh",
  "Lm",
  "Kg",
  "G",
  "Hz",
  "A2s",
  "MinS",
  "MaxS",
  "Uf",
  "MvPerC",
  "MPerS",
  "PerK",
  "PerM",
  "PerKm",
  "Deg",
  "Rad",
  "rad",
  "Px",
  "Pt",
  "Em",
  "Count",
  "Ratio",
  "Index",
  "Percent",
  "Exponent",
  "Factor",
  "Order",
  "Seed",
  "Id",
  "Year",
  "Revision",
  "Level",
  "Bits",
  "Pa",
  /** An amount of money in the currency that stands beside it. */
  "Price",
] as const;

/** Whole names that are a unit, a mathematical symbol beside its equation, or a count by nature. */
const WHOLE = new Set([
  "v",
  /** What was read, in the unit its row names. */
  "readValue",
  "i",
  "j",
  "k",
  "n",
  "a",
  "b",
  "x",
  "y",
  "t",
  "u",
  "d",
  "r",
  "ohm",
  "mm",
  "eps",
  "seed",
  "count",
  "index",
  "value",
  "line",
  "min",
  "max",
  "total",
  "price",
  "path",
  "strip",
  "retermination",
  "flex",
  "trim",
  "rounding",
  "width",
  "height",
  "awg",
  "page",
  "pages",
  "passes",
  "paths",
  "stop",
  "mend",
  "advise",
  "notProven",
  "exponent",
  "left",
  "right",
  "read",
  "code",
  "offset",
  "revision",
  "year",
  "node",
]);

/** Numbers that point into a list of a graph or of choices, and weights an optimiser compares: no unit to name. */
const GRAPH = new Set(
  (
    "node edge from to root vertex block entry exit element without feedNode " +
    "load start option group first last low high bound lowerBound cost gap weight sum ratio factor " +
    "before segment ref rank best nth cross most mostOver size g piece component bothFrom place mark contact column output exciter cutOut fieldWinding positive negative at of mostSplits"
  ).split(" "),
);

/** Names the contract fixes. */
const CONTRACT = new Set(
  (
    "relativeLight relativeLightLow statesSolved opens samples shareOfRatedPower positions relayTwiceSettled " +
    "shortsToEarth shortsToNeighbour resistancesPerShort batteryCases temperatureCases faultStatesCovered screened " +
    "solvedInFull fixed least moving volts bundle"
  ).split(" "),
);

/** Whether a numeric name says its unit. */
export function endsInUnit(name: string): boolean {
  if (WHOLE.has(name) || GRAPH.has(name) || CONTRACT.has(name)) return true;
  const stem = name.replace(/(Min|Max|Nominal|Cold|Hot|20)+$/, "");
  return ENDINGS.some((ending) => name.endsWith(ending) || stem.endsWith(ending));
}
