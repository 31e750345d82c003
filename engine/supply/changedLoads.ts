import type { Job, Part } from "../job/index.ts";

/** A change somebody thinks about: watts added across the battery, or a lamp swapped for light-emitting diodes of some watts. */
export type LoadChange =
  | { readonly kind: "add"; readonly name: string; readonly powerW: number }
  | { readonly kind: "led"; readonly part: string; readonly powerW: number };

/** The job with its lamps swapped; added watts are no part of it, they are counted at the posts. */
export function withLedLamps(job: Job, changes: readonly LoadChange[]): Job {
  const wattsOf = new Map(
    changes.flatMap((one) => (one.kind === "led" ? [[one.part, one.powerW] as const] : [])),
  );
  const parts = job.parts.map((part): Part => {
    const powerW = wattsOf.get(part.id);
    if (powerW === undefined || part.kind !== "lamp") return part;
    const wholeW = Math.max(...part.filaments.map(({ ratedW }) => ratedW));
    const filaments = part.filaments.map(({ pins, ratedV, ratedW, supply }) => ({
      pins,
      ratedV,
      // A tail and brake lamp keeps the proportion of its two filaments.
      ratedW: (powerW * ratedW) / wholeW,
      ...(supply && { supply }),
    }));
    return { ...part, source: "led", filaments };
  });
  return { ...job, parts };
}

/** Added resistance across the posts, S: P / Vn². */
export const addedS = (changes: readonly LoadChange[], nominalV: number): number =>
  changes.reduce((sum, one) => (one.kind === "add" ? sum + one.powerW / nominalV ** 2 : sum), 0);
