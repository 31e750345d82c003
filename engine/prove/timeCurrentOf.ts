import type { Job, PartOf } from "../job/index.ts";
import type { CompiledJob, QuickState } from "../operate/index.ts";
import { fuseBand } from "../operate/index.ts";
import type { Protection } from "../protect/index.ts";
import type { Conductors, Routed } from "../route/index.ts";
import { allTables, figure } from "../tables/index.ts";
import { fusesOf } from "./allWires.ts";
import { fuseBandCurve } from "./fuseBandCurve.ts";
import { fuseDanger, type LimitedPlace } from "./fuseDanger.ts";
import {
  type FedWire,
  prospectiveCurrents,
  type ShortBench,
  shortBench,
} from "./prospectiveCurrents.ts";
import type { TimeCurrent, WireLimitCurve } from "./timeCurrent.ts";
import { type Exposure, wireExposures } from "./wireExposures.ts";
import { foreverCurrentA, lowestLimit, spacedCurrentsA } from "./wireLimitCurve.ts";
import { wireLumps } from "./wireLumps.ts";

/** A checked job as far as a plot needs it; a `CheckedJob` is one. */
export interface PlottedJob {
  readonly design: {
    readonly job: Job;
    readonly routed: Routed;
    readonly conductors: Conductors;
    readonly compiled: CompiledJob;
    readonly protection: Protection;
    readonly worst: WorstMet;
  };
}

/** The largest current the check met in each conductor and fuse. */
export interface WorstMet {
  readonly conductors: ReadonlyMap<string, Met>;
  readonly fuses: ReadonlyMap<string, Met>;
}

interface Met {
  readonly currentA: number;
  readonly state: QuickState | null;
}

/** The time axis begins at a hundredth of a second and ends above the longest limit that is not for ever, s. */
const TIME_FROM_S = 0.01;
const TIME_TO_S = 1e5;

/**
 * One fuse against the wires it alone guards, for a plot on logarithmic paper: its band, how long each make of wire may carry how much, where
 * the two cross, and the currents that can really flow. Null where the job has no such fuse.
 */
export function timeCurrentOf(checked: PlottedJob, fuse: string): TimeCurrent | null {
  return timeCurrents(checked, [fuse])[0] ?? null;
}

/** The same for every fuse on the machine, by id. */
export function timeCurrentsOf(checked: PlottedJob): readonly TimeCurrent[] {
  return timeCurrents(checked, [...fusesOf(checked.design.job).keys()].sort());
}

interface Guarded {
  readonly wire: string;
  readonly exposures: readonly Exposure[];
}

function timeCurrents({ design }: PlottedJob, wanted: readonly string[]): readonly TimeCurrent[] {
  const { job, routed, conductors, compiled, protection, worst } = design;
  const lastingA = (id: string): number => worst.conductors.get(id)?.currentA ?? 0;
  const fuses = fusesOf(job);
  const exposuresOf = wireExposures(compiled, routed, protection);
  const all = [...conductors.keys()].sort().map((wire) => ({ wire, exposures: exposuresOf(wire) }));
  const lumpsOf = wireLumps(conductors, routed, lastingA);
  const bench = shortBench(job, conductors);
  return wanted.flatMap((id) => {
    const fuse = fuses.get(id);
    if (fuse === undefined) return [];
    const guarded = all.flatMap(({ wire, exposures }): Guarded[] => {
      const own = exposures.filter(({ cut }) => cut.length === 1 && cut[0] === id);
      return own.length === 0 ? [] : [{ wire, exposures: own }];
    });
    return [plotted({ design, fuse, guarded, lastingA, lumpsOf, bench })];
  });
}

interface FuseFrame {
  readonly design: PlottedJob["design"];
  readonly fuse: PartOf<"fuse">;
  readonly guarded: readonly Guarded[];
  readonly lastingA: (wire: string) => number;
  readonly lumpsOf: ReturnType<typeof wireLumps>;
  readonly bench: ShortBench;
}

function plotted(frame: FuseFrame): TimeCurrent {
  const { design, fuse, guarded, bench } = frame;
  const { family, largestA, smallestA } = fuseBand(fuse);
  const met = design.worst.fuses.get(fuse.id);
  const currents = prospectiveCurrents(bench, fuse, fedWires(frame), met?.currentA ?? 0);
  const sourceA = Math.max(
    0,
    ...guarded.flatMap(({ exposures }) => exposures.map((one) => one.largestA)),
  );
  const axes = {
    currentFromA: decade(
      Math.min(
        smallestA,
        ...currents.map((one) => one.currentA).filter((a) => a > smallestA / 10),
      ) / 2,
      "below",
    ),
    currentToA: decade(Math.max(10 * largestA, ...currents.map((one) => one.currentA)), "above"),
    timeFromS: TIME_FROM_S,
    timeToS: TIME_TO_S,
  };
  const drawn = wiresOf(frame, axes.currentToA);
  return {
    fuse: fuse.id,
    name: fuse.name,
    ratingA: largestA,
    type: fuse.type,
    marking: fuse.marking,
    band: fuseBandCurve(fuse, axes.currentToA),
    wires: drawn.map(({ curve }) => curve),
    danger: drawn.flatMap(({ curve, places }) => {
      const within = dangerCurrentsA(fuse, Math.max(curve.foreverA, largestA), sourceA);
      const points = lowestLimit(places, within);
      return fuseDanger(fuse, { makeId: curve.makeId, places }, points, axes.timeToS);
    }),
    currents,
    axes,
    limits: [...new Set(drawn.map(({ curve }) => curve.insulation))]
      .sort()
      .map((insulation) => figure("insulations", insulation, "adiabaticEndC"))
      .concat([
        figure("heatLimits", "hours-rise", "value"),
        figure("heatLimits", "endless-rise", "value"),
      ]),
    bandSource: sourcesOf(family),
  };
}

/** Danger often ends at a gate, where the fuse is first promised to open: just under each gate is asked as well. */
const UNDER_GATE_RATIO = 1 - 1e-9;

function dangerCurrentsA(fuse: PartOf<"fuse">, fromA: number, toA: number): readonly number[] {
  const { points, largestA } = fuseBand(fuse);
  const gates = points
    .map(({ loadPercent }) => (loadPercent / 100) * largestA * UNDER_GATE_RATIO)
    .filter((currentA) => currentA > fromA && currentA < toA);
  return [...spacedCurrentsA(fromA, toA), ...gates].sort((a, b) => a - b);
}

/** Wires by make, those that are fed apart from those only a touch would feed; the lowest limit first. */
function wiresOf(
  { design, guarded, lumpsOf, lastingA }: FuseFrame,
  toA: number,
): readonly { readonly curve: WireLimitCurve; readonly places: readonly LimitedPlace[] }[] {
  const groups = new Map<string, Guarded[]>();
  for (const one of guarded) {
    const key = `${design.conductors.get(one.wire)!.makeId} ${isTouched(one)}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  const made = [...groups.values()].map((list) => {
    const placed = list.flatMap((one) => {
      const loadA = isTouched(one) ? lastingA(one.wire) : 0;
      const besideA = loadA + Math.max(...one.exposures.map((exposure) => exposure.besideA));
      return lumpsOf(one.wire).map((place) => ({ wire: one.wire, besideA, placed: place }));
    });
    const distinct = distinctPlaces(placed);
    const tightest = distinct.reduce((low, one) => (one.foreverA < low.foreverA ? one : low));
    const { makeId, areaMm2, insulation } = design.conductors.get(tightest.wire)!;
    const { stretch, ambientC, startC } = tightest.placed;
    const fromA = Math.max(tightest.foreverA, 0.1) * (1 + 1e-9);
    const curve: WireLimitCurve = {
      makeId,
      areaMm2,
      insulation,
      wire: tightest.wire,
      stretch,
      ambientC,
      startC,
      wires: list.map(({ wire }) => wire),
      onlyTouched: isTouched(list[0]!),
      foreverA: tightest.foreverA,
      points: lowestLimit(distinct, spacedCurrentsA(fromA, toA)),
    };
    return { curve, places: distinct };
  });
  return made.sort(
    (a, b) => a.curve.foreverA - b.curve.foreverA || (a.curve.makeId < b.curve.makeId ? -1 : 1),
  );
}

const isTouched = ({ exposures }: Guarded): boolean =>
  exposures.every(({ through }) => through !== null);

/** Places in which the heat comes out differently, each with what may be carried there for ever. */
function distinctPlaces<T extends LimitedPlace>(
  placed: readonly T[],
): readonly (T & { readonly foreverA: number })[] {
  const keyOf = ({ placed: { stretch, startC, ambientC }, besideA }: T): string =>
    `${stretch} ${startC} ${ambientC} ${besideA}`;
  const distinct = new Map(placed.map((one) => [keyOf(one), one]));
  return [...distinct.values()].map((one) => ({
    ...one,
    foreverA: foreverCurrentA(one.placed, one.besideA),
  }));
}

/** A state that feeds each wire: the one it carries most in, else the positions in which the least stands before it. */
function fedWires({ design, guarded }: FuseFrame): readonly FedWire[] {
  return guarded.flatMap(({ wire, exposures }): FedWire[] => {
    const own = exposures.find(({ through, via }) => through === null && via === null);
    if (own === undefined) return [];
    const met = design.worst.conductors.get(wire);
    const isBattery = met?.state?.engine?.mode !== "running";
    const state =
      met?.state && met.currentA > 0 && isBattery ? met.state : { positions: own.positions };
    return [{ wire, state }];
  });
}

function sourcesOf(family: string): TimeCurrent["bandSource"] {
  const rows = allTables.fuseTimeCurrent.rows.filter((row) => row.family === family);
  const once = new Map(
    rows.map(({ source, confidence }) => [`${source} ${confidence}`, { source, confidence }]),
  );
  return [...once.values()];
}

/** The next 1, 2 or 5 of a decade below or above, A. */
function decade(currentA: number, side: "below" | "above"): number {
  const power = 10 ** Math.floor(Math.log10(currentA));
  const steps = [1, 2, 5, 10].map((one) => one * power);
  return side === "below"
    ? steps.findLast((step) => step <= currentA * (1 + 1e-9))!
    : steps.find((step) => step >= currentA * (1 - 1e-9))!;
}
