import {
  awgAreaMm2,
  circleAreaMm2,
  MM_PER_INCH,
  printAwg,
  readWireName,
  strandAreaMm2,
  type WallWord,
  type WireName,
} from "../units/index.ts";
import { awgGauges, swgGauges, type WiresRow } from "./allTables.generated.ts";
import { figure } from "./figure.ts";
import * as makes from "./wireCandidates.ts";
import { askWords, readAsWords, refusalWords, warnWords } from "./wireWords.ts";

/** How the name of a wire was read, and which makes it can be. */
export type WireReading = {
  readonly input: string;
  /** In words; empty where refused. */
  readonly readAs: string;
  /** Copper, mm²; null where only a range is known. Where both are given, prove with the least. */
  readonly areaMm2: number | null;
  readonly areaRangeMm2: readonly [number, number] | null;
  readonly strandCount: number | null;
  readonly strandDiameterMm: number | null;
  readonly candidates: readonly WiresRow[];
  /** The question to put to the person; null where the reading stands. */
  readonly ask: string | null;
  readonly warning: string | null;
  readonly refusal: WireRefusal | null;
};

export type WireRefusal = {
  readonly code: keyof typeof refusalWords;
  readonly found: string;
  readonly message: string;
  readonly remedy: string;
};

type Found = Partial<Omit<WireReading, "input" | "refusal">> | { readonly refuse: RefusalCode };
type RefusalCode = keyof typeof refusalWords;

/** Longest piece of what was typed that a refusal repeats. */
const SHOWN_COUNT = 40;

/**
 * Finds what a person means by the name of a wire, in any of the trade's ways.
 *
 * @param text  as typed; see `readWireName`.
 * @returns copper area or its range, the makes it can be, and a question where the name leaves
 *          one open. Never throws, never guesses: what could mean two things asks or is refused.
 */
export function resolveWire(text: string): WireReading {
  const reading = readWireName(text);
  if (!reading.ok) return asReading(text, { refuse: reading.reason });
  return asReading(text, resolveName(reading.name, reading.wall));
}

function asReading(input: string, found: Found): WireReading {
  const refused = "refuse" in found ? found.refuse : null;
  const code = refused === null ? null : { code: refused, found: input.slice(0, SHOWN_COUNT) };
  return {
    input: input.slice(0, SHOWN_COUNT * 2),
    readAs: "",
    areaMm2: null,
    areaRangeMm2: null,
    strandCount: null,
    strandDiameterMm: null,
    candidates: [],
    ask: null,
    warning: null,
    ...("refuse" in found ? {} : found),
    refusal: code === null ? null : { ...code, ...refusalWords[code.code] },
  };
}

function resolveName(name: WireName, wall: WallWord | null): Found {
  switch (name.kind) {
    case "strands":
      return byStrands(name.strandCount, name.strandDiameterMm, wall);
    case "strands-swg":
      return byStrandGauge(name.strandCount, name.gauge, wall);
    case "area":
      return byArea(name.areaMm2, wall);
    case "awg":
    case "gauge":
      return byAmericanGauge(name);
    case "swg":
      return byBritishGauge(name.gauge);
    case "auto":
      return byAutoSize(name.sizeMm);
    case "copper":
      return byCopper(name.diameterMm, wall);
    case "insulation": {
      const candidates = makes.withWall(makes.makesOfOutside(name.diameterMm), wall);
      const readAs = readAsWords.insulation(name.diameterMm);
      const areaRangeMm2 = makes.copperRangeMm2(candidates);
      return { readAs, areaRangeMm2, candidates, ask: askWords.underInsulation(candidates) };
    }
    case "make":
      return byMake(name.family, name.size);
  }
}

function byStrands(strandCount: number, strandDiameterMm: number, wall: WallWord | null): Found {
  const areaMm2 = strandAreaMm2({ strandCount, strandDiameterMm });
  const candidates = makes.withWall(makes.makesOfStranding(strandCount, strandDiameterMm), wall);
  const readAs = readAsWords.strands(strandCount, strandDiameterMm, areaMm2, candidates);
  return { readAs, areaMm2, strandCount, strandDiameterMm, candidates };
}

function byStrandGauge(strandCount: number, gauge: string, wall: WallWord | null): Found {
  const row = swgGauges.find((one) => one.id === gauge);
  if (row === undefined) return { refuse: "no-such-gauge" };
  const strandDiameterMm = row.diameterIn * MM_PER_INCH;
  const areaMm2 = strandAreaMm2({ strandCount, strandDiameterMm });
  const readAs = readAsWords.strandsSwg(strandCount, gauge, strandDiameterMm, areaMm2);
  const metric = makes.makesOfStranding(strandCount, Number(gauge) / 100);
  if (metric.length === 0) return { ...byStrands(strandCount, strandDiameterMm, wall), readAs };
  const other = strandAreaMm2({ strandCount, strandDiameterMm: Number(gauge) / 100 });
  return {
    readAs,
    areaRangeMm2: [Math.min(areaMm2, other), Math.max(areaMm2, other)],
    strandCount,
    candidates: metric,
    ask: askWords.strandsOrShorthand(strandCount, gauge),
  };
}

function byArea(areaMm2: number, wall: WallWord | null): Found {
  const candidates = makes.withWall(makes.makesOfArea(areaMm2), wall);
  const areaRangeMm2 = makes.copperRangeMm2(candidates);
  const readAs = readAsWords.area(areaMm2);
  const [only] = candidates;
  if (candidates.length === 1 && only !== undefined)
    return { ...stranding(only), readAs, areaRangeMm2, candidates };
  const ask = candidates.length > 1 ? askWords.whichMake(candidates) : null;
  return { readAs, areaMm2, areaRangeMm2, candidates, ask };
}

const stranding = (row: WiresRow): Found => ({
  areaMm2: strandAreaMm2(row),
  strandCount: row.strandCount,
  strandDiameterMm: row.strandDiameterMm,
});

function byAmericanGauge(name: WireName & { kind: "awg" | "gauge" }): Found {
  const { gaugeIndex, isVehicleCable } = name;
  const definedMm2 = awgAreaMm2(gaugeIndex);
  const leastMm2 = awgGauges.find((row) => row.gaugeIndex === gaugeIndex)?.saeMinMm2 ?? null;
  const saeFamilies = ["gpt", "hdt", "twp", "sxl", "gxl", "txl"];
  const size = printAwg(gaugeIndex);
  const candidates = saeFamilies.flatMap((family) => makes.makesOfFamily(family, size));
  const rangeMm2 = (fromMm2: number): readonly [number, number] => [fromMm2, definedMm2];
  const areaRangeMm2 = leastMm2 === null ? null : rangeMm2(leastMm2);
  if (isVehicleCable && leastMm2 !== null) {
    const readAs = readAsWords.vehicleGauge(gaugeIndex, leastMm2);
    const warning = warnWords.vehicleCable;
    const ask = candidates.length > 0 ? askWords.whichMake(candidates) : null;
    return { readAs, areaMm2: leastMm2, areaRangeMm2, candidates, ask, warning };
  }
  if (name.kind === "awg") {
    const readAs = readAsWords.awg(gaugeIndex, definedMm2);
    const ask = leastMm2 === null ? null : askWords.vehicleOrDefinition(leastMm2);
    const warning = leastMm2 === null ? null : warnWords.vehicleCable;
    return { readAs, areaMm2: definedMm2, areaRangeMm2, candidates, ask, warning };
  }
  const britishMm2 = swgGauges.find((row) => row.id === swgName(gaugeIndex))?.areaMm2 ?? null;
  const all = [definedMm2, leastMm2 ?? definedMm2, britishMm2 ?? definedMm2];
  return {
    readAs: readAsWords.gauge(gaugeIndex),
    areaRangeMm2: [Math.min(...all), Math.max(...all)],
    candidates,
    ask: askWords.whoseGauge(definedMm2, leastMm2, britishMm2),
  };
}

const swgName = (gaugeIndex: number): string =>
  gaugeIndex >= 0 ? String(gaugeIndex) : `${1 - gaugeIndex}/0`;

function byBritishGauge(gauge: string): Found {
  const row = swgGauges.find((one) => one.id === gauge);
  if (row === undefined) return { refuse: "no-such-gauge" };
  const strandDiameterMm = row.diameterIn * MM_PER_INCH;
  const areaMm2 = circleAreaMm2(strandDiameterMm);
  return {
    readAs: readAsWords.swg(gauge, strandDiameterMm, areaMm2),
    areaMm2,
    strandCount: 1,
    strandDiameterMm,
    warning: warnWords.solid,
  };
}

function byAutoSize(sizeMm: number): Found {
  const candidates = makes.makesOfFamily("auto", String(sizeMm));
  const [row] = candidates;
  if (row === undefined) return { refuse: "no-such-make" };
  const readAs = readAsWords.auto(sizeMm);
  const warning = warnWords.auto;
  if (row.id !== "auto-3") return { ...stranding(row), readAs, candidates, warning };
  const other = figure("wireReading", "auto-3-other", "value").value;
  const areaRangeMm2 = [other, strandAreaMm2(row)] as const;
  return { readAs, areaRangeMm2, candidates, ask: askWords.autoDiffers(areaRangeMm2), warning };
}

function byCopper(diameterMm: number, wall: WallWord | null): Found {
  const circleMm2 = circleAreaMm2(diameterMm);
  const least = figure("wireReading", "fill-least", "value").value * circleMm2;
  const most = figure("wireReading", "fill-most", "value").value * circleMm2;
  const candidates = makes.withWall(makes.makesInAreaRange(least, most), wall);
  return {
    readAs: readAsWords.copper(diameterMm, [least, most]),
    areaRangeMm2: [least, most],
    candidates,
    ask: askWords.countStrands(candidates),
  };
}

function byMake(family: string, size: string | null): Found {
  const candidates = makes.makesOfFamily(family, size);
  const [only] = candidates;
  if (only === undefined) return { refuse: "no-such-make" };
  const readAs = readAsWords.make(candidates);
  if (candidates.length === 1) return { ...stranding(only), readAs, candidates };
  const areaRangeMm2 = makes.copperRangeMm2(candidates);
  return { readAs, areaRangeMm2, candidates, ask: askWords.whichSize(candidates) };
}
