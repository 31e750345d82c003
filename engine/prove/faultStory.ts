import { follow } from "../heat/index.ts";
import type { AfterFuse, FuseRow, OperateSolution, WireRow } from "../operate/index.ts";
import type { Conductors, Routed } from "../route/index.ts";
import { type PlacedLump, wireLumps } from "./wireLumps.ts";

/** What is told of a fault from the moment it is set. */
export interface FaultStory {
  /** From each moment on, until the next: which fuse has gone. The first is the fault itself, with every fuse whole. */
  readonly stages: readonly FaultStage[];
  /** The fuse that goes first, between its soonest and its latest (null: it may hold for ever); null: none even may. */
  readonly first: FuseRow | null;
  /** Wires the fault loads more than before: those it damages first, by how far, then those it warms most. */
  readonly wires: readonly WireHistory[];
  /** Decades of time that hold it all, s. */
  readonly fromS: number;
  readonly toS: number;
}

export interface FaultStage {
  readonly opened: string | null;
  /** Since the fault was set, s. Latest null: no fuse is promised to open; the stage may never come. */
  readonly soonestS: number;
  readonly latestS: number | null;
}

/** One wire through the fault, by the latest each fuse may open: the hottest it can get. */
export interface WireHistory {
  readonly wire: string;
  /** Where along its way it gets nearest to its limit; null: it lies alone. */
  readonly stretch: string | null;
  /** Before the fault, °C. */
  readonly startC: number;
  readonly peakC: number;
  readonly peakAtS: number;
  /** From here on it is hotter than the model was made for, s. */
  readonly beyondModelAtS: number | null;
  /** Least distance to the limit of the duration it was reached in, K; negative: it is damaged. */
  readonly marginK: number;
  /** First moment it is over its limit, s. */
  readonly overLimitAtS: number | null;
  readonly limits: PlacedLump["limits"];
  readonly points: readonly { readonly timeS: number; readonly temperatureC: number }[];
  /** Size of its current from each moment on, A. */
  readonly currents: readonly { readonly fromS: number; readonly currentA: number }[];
}

/** The story is told for an hour at most, and from a hundredth of a second or sooner. Our own bounds of the picture. */
const LONGEST_S = 3600;
const SHORTEST_S = 0.01;
const POINTS_A_DECADE = 24;
/** A wire counts as loaded by the fault from this much more current on, A. */
const MORE_A = 0.1;
const MOST_WIRES = 12;

type Solved = Pick<OperateSolution, "wires" | "fuses">;

/**
 * What follows from a fault in time: which fuse opens between which moments, and how hot each wire gets until it does.
 *
 * Each wire is one lump, C dT/dt = I² R20 (1 + α (T − 20)) − loss(T), from its steady temperature before the fault, with its neighbours' heat
 * left as it was then; the current steps down as fuses open, each at its latest.
 *
 * @param plan    lengths and copper of the job the fault is set in.
 * @param before  the same switches without the fault.
 * @param after   with it, and what the fuses do then.
 */
export function faultStory(
  plan: { readonly conductors: Conductors; readonly routed: Routed },
  before: Solved,
  after: Solved & { readonly afterFuses: readonly AfterFuse[] },
): FaultStory {
  const stages = stagesOf(after.afterFuses);
  const first = firstToGo(after);
  const beforeA = currentsOf(before.wires);
  const lumpsOf = wireLumps(plan.conductors, plan.routed, (id) => beforeA.get(id) ?? 0);
  const solved = [after.wires, ...after.afterFuses.map(({ solution }) => solution.wires)].map(
    currentsOf,
  );
  const [fromS, toS] = axisOf(stages);
  const loaded = [...solved[0]!]
    .filter(([wire, a]) => a > (beforeA.get(wire) ?? 0) + MORE_A && plan.conductors.has(wire))
    .map(([wire, a]) => ({ wire, heat: a * a * plan.conductors.get(wire)!.ohmPerM20Max }))
    .sort((a, b) => b.heat - a.heat || (a.wire < b.wire ? -1 : 1))
    .slice(0, MOST_WIRES);
  const wires = loaded.flatMap(({ wire }) => {
    const currents = stages
      .slice(0, solved.length)
      .flatMap(({ latestS }, k) =>
        latestS === null ? [] : [{ fromS: latestS, currentA: solved[k]!.get(wire) ?? 0 }],
      );
    return worstPlace(wire, lumpsOf(wire), currents, [fromS, toS]);
  });
  wires.sort(inOrderOfHarm);
  return { stages, first, wires, fromS, toS };
}

function inOrderOfHarm(a: WireHistory, b: WireHistory): number {
  const riseK = ({ peakC, startC }: WireHistory): number => peakC - startC;
  const byHarm = Math.min(0, a.marginK) - Math.min(0, b.marginK);
  return byHarm || riseK(b) - riseK(a) || (a.wire < b.wire ? -1 : 1);
}

/** The one that must go, by its latest; where none must, the one that may go soonest. */
function firstToGo({ fuses, afterFuses }: Parameters<typeof faultStory>[2]): FuseRow | null {
  const opening = afterFuses[0]?.opened[0];
  const must = fuses.find(({ part }) => part === opening);
  const may = fuses
    .filter(({ opensMinS }) => opensMinS !== null)
    .sort((a, b) => a.opensMinS! - b.opensMinS! || (a.part < b.part ? -1 : 1));
  return must ?? may[0] ?? null;
}

function stagesOf(steps: readonly AfterFuse[]): readonly FaultStage[] {
  const whole: FaultStage = { opened: null, soonestS: 0, latestS: 0 };
  return [
    whole,
    ...steps.map(({ opened, atS: [soonestS, latestS] }) => ({
      opened: opened[0] ?? null,
      soonestS: soonestS ?? 0,
      latestS,
    })),
  ];
}

const currentsOf = (rows: readonly WireRow[]): ReadonlyMap<string, number> =>
  new Map(
    rows.map(({ wire, currentA, acA = 0 }) => [wire, Math.sqrt(currentA * currentA + acA * acA)]),
  );

function axisOf(stages: readonly FaultStage[]): readonly [number, number] {
  const moments = stages.flatMap(({ soonestS, latestS }) => [soonestS, latestS ?? 0]);
  const least = Math.min(SHORTEST_S, ...moments.filter((atS) => atS > 0).map((atS) => atS / 2));
  const isEndless = stages.some(({ latestS }) => latestS === null) || stages.length === 1;
  const most = isEndless ? LONGEST_S : Math.min(LONGEST_S, 10 * Math.max(1, ...moments));
  const decade = (timeS: number): number => 10 ** Math.floor(Math.log10(timeS) + 1e-9);
  return [Math.max(1e-4, decade(least)), decade(most * 9.99)];
}

function worstPlace(
  wire: string,
  lumps: readonly PlacedLump[],
  currents: WireHistory["currents"],
  axis: readonly [number, number],
): readonly WireHistory[] {
  const told = lumps.flatMap((placed) => {
    const { startC } = placed;
    return startC === null ? [] : [historyOf(wire, { ...placed, startC }, currents, axis)];
  });
  const [worst] = told.sort((a, b) => a.marginK - b.marginK);
  return worst === undefined ? [] : [worst];
}

function historyOf(
  wire: string,
  placed: PlacedLump & { readonly startC: number },
  currents: WireHistory["currents"],
  [fromS, toS]: readonly [number, number],
): WireHistory {
  const { startC, limits, stretch } = placed;
  const steps = currents.map(({ fromS: at }) => at);
  const count = Math.ceil(Math.log10(toS / fromS) * POINTS_A_DECADE);
  const times = Array.from({ length: count + 1 }, (_, k) => fromS * (toS / fromS) ** (k / count));
  const moments = [...new Set([...times, ...steps.filter((atS) => atS > 0 && atS <= toS)])].sort(
    (a, b) => a - b,
  );
  const points: { timeS: number; temperatureC: number }[] = [];
  let [nowS, nowC] = [0, startC];
  let beyondModelAtS: number | null = null;
  for (const timeS of moments) {
    const { currentA } = currents.findLast(({ fromS: at }) => at <= nowS)!;
    const moment = follow(placed.lump, { startC: nowC, currentA }, { timeS: timeS - nowS });
    if (moment.stoppedBy === "ceiling") {
      beyondModelAtS = nowS + moment.timeS;
      points.push({ timeS: beyondModelAtS, temperatureC: moment.temperatureC });
      break;
    }
    [nowS, nowC] = [timeS, moment.temperatureC];
    points.push({ timeS, temperatureC: nowC });
  }
  const marginOf = (p: (typeof points)[number]): number =>
    limitAtC(limits, p.timeS) - p.temperatureC;
  const peak = points.reduce((high, one) => (one.temperatureC > high.temperatureC ? one : high));
  const over = points.find((one) => marginOf(one) < 0);
  return {
    wire,
    stretch,
    startC,
    peakC: peak.temperatureC,
    peakAtS: peak.timeS,
    beyondModelAtS,
    marginK: Math.min(...points.map(marginOf)),
    overLimitAtS: over?.timeS ?? null,
    limits,
    points,
    currents,
  };
}

/** What the insulation stands that long, °C. */
export function limitAtC(limits: PlacedLump["limits"], timeS: number): number {
  if (timeS <= limits.shortS) return limits.shortC;
  return timeS <= limits.longS ? limits.longC : limits.foreverC;
}
