import type { Job } from "../job/index.ts";
import type { Conductors, Routed, Stretch } from "../route/index.ts";
import { figure } from "../tables/index.ts";
import type { BundleCount } from "./bundleTableRatio.ts";
import { bundleTableRatio } from "./bundleTableRatio.ts";
import { modelCurrentA } from "./modelCurrentA.ts";

/** One place on a wire's way as its rating sees it. */
export interface WirePlace {
  /** Stretch, station, or "alone". */
  readonly at: string;
  readonly ambientC: number;
  readonly bundle: BundleCount;
  readonly sleeved: boolean;
  readonly stretch: Stretch | null;
}

/**
 * Every place a wire passes with its air and its company. A wire counts as loaded in a bundle when it carries more than a
 * stated share of what the smallest wire of the trade may carry there with all loaded: from above, because larger
 * wires are loaded less. The stations on the way count with the fullest bundle that reaches them.
 *
 * @param currentA  largest lasting current of a conductor, A.
 */
export function wirePlacesOf(
  job: Job,
  routed: Routed,
  conductors: Conductors,
  currentA: (conductor: string) => number,
): (wire: string) => readonly WirePlace[] {
  const loaded = loadedByStretch(routed, conductors, currentA);
  const covered = new Set(
    job.looms.filter(({ covering }) => covering !== "open").map(({ id }) => id),
  );
  const runEnds = new Map(job.runs.map(({ id, from, to }) => [id, [from, to]]));
  const isSleeved = ({ loom }: Stretch): boolean => loom !== null && covered.has(loom);
  const placeIn = (stretch: Stretch, wire: string, ambientC: number, at: string): WirePlace => {
    const others = stretch.wires.filter((one) => one !== wire);
    const loadedCount = 1 + others.filter((one) => loaded.get(stretch.id)?.has(one)).length;
    const bundle = { wireCount: stretch.wires.length, loadedCount };
    return { at, ambientC, bundle, sleeved: isSleeved(stretch), stretch };
  };
  return (wire) => {
    const stretches = routed.stretchesOfWire.get(wire) ?? [];
    const hottest = routed.ambients.get(wire)!;
    const along = stretches.map((one) => placeIn(one, wire, one.ambientC, one.id));
    const reaching = stretches.filter(({ run }) => runEnds.get(run)?.includes(hottest.at));
    const ends = reaching.map((one) => placeIn(one, wire, hottest.ambientC, hottest.at));
    if (along.length > 0) return [...along, ...ends];
    const alone = { wireCount: 1, loadedCount: 1 };
    return [
      { at: "alone", ambientC: hottest.ambientC, bundle: alone, sleeved: false, stretch: null },
    ];
  };
}

function loadedByStretch(
  routed: Routed,
  conductors: Conductors,
  currentA: (conductor: string) => number,
): ReadonlyMap<string, ReadonlySet<string>> {
  const share = figure("sizeRules", "loaded-share", "value").value;
  const aloneA = new Map<string, number>();
  const allowedA = (wire: string, stretch: Stretch): number => {
    const conductor = conductors.get(wire)!;
    const key = `${conductor.makeId} ${stretch.ambientC}`;
    const known =
      aloneA.get(key) ??
      Math.min(
        conductor.rated?.value ?? Number.POSITIVE_INFINITY,
        modelCurrentA(conductor, stretch.ambientC, { wireCount: 1, loadedCount: 1 }),
      );
    aloneA.set(key, known);
    const count = stretch.wires.length;
    return known * bundleTableRatio({ wireCount: count, loadedCount: count }).ratio;
  };
  return new Map(
    routed.stretches.map((stretch) => [
      stretch.id,
      new Set(stretch.wires.filter((wire) => currentA(wire) > share * allowedA(wire, stretch))),
    ]),
  );
}
