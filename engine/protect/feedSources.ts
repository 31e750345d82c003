import { batteriesOf, type Job, type PartOf, pinRef, presentParts } from "../job/index.ts";

/** Somewhere current can come from: the pin it leaves by, and the most it can ever give. */
export interface FeedSource {
  /** Part id, with the pin where a part has several: ALT.Y1. */
  readonly id: string;
  readonly part: string;
  readonly kind: "battery" | "generator" | "capacitor";
  readonly pin: string;
  /** Largest steady current, A; null where a battery (or an unknown machine) sets no limit of its own. */
  readonly ceilingA: number | null;
}

const FEEDING_WINDINGS = new Set(["armature", "phase", "output", "lighting", "charge"]);

/** Every battery's live post, every generator winding and rectified output, every capacitor. Ignition and pick-up coils feed sparks, not faults. */
export function feedSources(job: Job): readonly FeedSource[] {
  const positive = job.supply.earthPolarity === "positive";
  const sources: FeedSource[] = batteriesOf(job).map(({ battery, livePost }) => ({
    id: battery.id,
    part: battery.id,
    kind: "battery",
    pin: livePost,
    ceilingA: null,
  }));
  for (const part of presentParts(job)) {
    if (part.kind === "generator") sources.push(...windingSources(part));
    if (part.kind === "regulator") {
      const pin = positive ? part.negativePin : part.positivePin;
      if (pin !== undefined) sources.push(outputSource(job, part, pin));
    }
    if (part.kind === "capacitor") {
      const pin = positive ? part.negativePin : part.positivePin;
      sources.push({
        id: part.id,
        part: part.id,
        kind: "capacitor",
        pin: pinRef(part.id, pin),
        ceilingA: null,
      });
    }
  }
  return sources.sort((left, right) => (left.id < right.id ? -1 : 1));
}

function windingSources(part: PartOf<"generator">): readonly FeedSource[] {
  return part.windings
    .filter((winding) => FEEDING_WINDINGS.has(winding.use))
    .flatMap((winding) =>
      winding.pins.map((pin) => ({
        id: pinRef(part.id, pin),
        part: part.id,
        kind: "generator" as const,
        pin: pinRef(part.id, pin),
        ceilingA: largestA(winding.points),
      })),
    );
}

function outputSource(job: Job, part: PartOf<"regulator">, pin: string): FeedSource {
  const generator = presentParts(job).find((one) => one.id === part.generator);
  const points =
    generator?.kind === "generator"
      ? generator.windings.flatMap((winding) => winding.points ?? [])
      : [];
  return {
    id: pinRef(part.id, pin),
    part: part.id,
    kind: "generator",
    pin: pinRef(part.id, pin),
    ceilingA: largestA(points),
  };
}

/** The largest output anybody has stated. The ceiling a machine tends to lies somewhat above it: see supply. */
function largestA(points: readonly { readonly currentA: number }[] | undefined): number | null {
  if (points === undefined || points.length === 0) return null;
  return Math.max(...points.map((point) => point.currentA));
}
