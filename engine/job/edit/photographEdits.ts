import type { Job } from "../job.ts";
import type { Operation } from "./operation.ts";

type Photograph = NonNullable<Job["layout"]["photograph"]>;

/** The photograph under the side view set, moved, or taken away where none is given. */
export function setPhotograph(photograph?: Photograph): Operation {
  return {
    op: "set",
    list: "job",
    path: ["layout", "photograph"],
    ...(photograph === undefined ? {} : { value: photograph }),
  };
}

/**
 * A photograph scaled so that two points on it lie as far apart as they do on the machine: w' = w × d / d₀. The first point stays where it is.
 *
 * @param a,b     the two points, mm of the side view as it is now
 * @param apartMm how far apart they really are, d
 * @returns null where the two points are the same
 */
export function scaledPhotograph(
  photograph: Photograph,
  a: { readonly xMm: number; readonly yMm: number },
  b: { readonly xMm: number; readonly yMm: number },
  apartMm: number,
): Photograph | null {
  const nowMm = Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm);
  if (nowMm === 0) return null;
  const grownRatio = apartMm / nowMm;
  return {
    ...photograph,
    xMm: a.xMm + (photograph.xMm - a.xMm) * grownRatio,
    yMm: a.yMm + (photograph.yMm - a.yMm) * grownRatio,
    widthMm: photograph.widthMm * grownRatio,
  };
}
