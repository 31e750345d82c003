import type { CompiledJob } from "../operate/index.ts";

/** One step of the volts from the battery's EMF to nothing. */
export interface FallStep {
  /** Id of the wire, contact, fuse, bond or part. */
  readonly of: string;
  readonly kind: string;
  readonly currentA: number;
  readonly dropV: number;
  /** What is left behind it on the way out, or still to lose on the way back, V. */
  readonly leftV: number;
  readonly side: "battery" | "live" | "load" | "earth";
}

/** Share of the load's current from which an element is on its way. */
const ON_THE_WAY_RATIO = 0.5;
/** A step under this is not worth a line, V. */
const LEAST_V = 1e-4;

/**
 * The way of a large current as falling volts: battery, everything that carries at least half of it on the live side, the load, everything
 * on the earth side. Volts fall along the way, so the order is that of the volts.
 */
export function fallOf(
  { jobNetwork }: CompiledJob,
  { nodeV, elementA }: { readonly nodeV: Float64Array; readonly elementA: Float64Array },
  load: { readonly motor: string; readonly place: number },
): readonly FallStep[] {
  const { elements } = jobNetwork;
  const loadA = Math.abs(elementA[load.place]!);
  const [a, b] = elements[load.place]!.nodes;
  const loadEnds = [Math.abs(nodeV[a]!), Math.abs(nodeV[b]!)];
  const [liveV, earthV] = [Math.max(...loadEnds), Math.min(...loadEnds)];
  const steps: (FallStep & { readonly startV: number })[] = [];
  elements.forEach((element, k) => {
    const currentA = Math.abs(elementA[k]!);
    if (currentA < ON_THE_WAY_RATIO * loadA) return;
    const ends = element.nodes.map((node) => nodeV[node]!);
    const dropV = Math.abs(ends[0]! - ends[1]!);
    const startV = Math.max(...ends.map(Math.abs));
    const leftV = Math.min(...ends.map(Math.abs));
    const { of, kind, law } = element;
    if (law.kind === "emf") {
      const lostV = law.internalOhm * currentA;
      const left = Math.abs(law.emfV) - lostV;
      steps.push({
        of,
        kind,
        currentA,
        dropV: lostV,
        leftV: left,
        side: "battery",
        startV: Number.POSITIVE_INFINITY,
      });
    } else if (k === load.place) {
      steps.push({
        of,
        kind: "load",
        currentA,
        dropV: liveV - earthV,
        leftV: earthV,
        side: "load",
        startV: liveV,
      });
    } else if (dropV >= LEAST_V) {
      const side = startV > earthV + (liveV - earthV) / 2 ? "live" : "earth";
      steps.push({ of, kind, currentA, dropV, leftV, side, startV });
    }
  });
  return steps
    .sort((one, other) => other.startV - one.startV || (one.of < other.of ? -1 : 1))
    .map(({ startV: _, ...step }) => step);
}
