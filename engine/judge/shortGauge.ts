import { loadsOf } from "../job/index.ts";
import type { CompiledJob } from "../operate/index.ts";
import type { FullState } from "./searchStates.ts";
import type { ShortedState } from "./worstCase.ts";

/** A battery that gives this many times what all loads together are rated for, and a margin, with no starter turning, is shorted. */
const SHORTED_RATIO = 1.5;
const SHORTED_A = 10;

/** Answers what is known of a short where the battery gives what no loads could draw; else null. */
export function shortGauge({
  job,
  jobNetwork,
}: CompiledJob): (state: FullState, elementA: Float64Array) => ShortedState | null {
  const { elements } = jobNetwork;
  const { nominalV } = job.supply;
  const coilsA = elements.map(({ kind, law }) =>
    kind === "coil" && law.kind === "ohm" ? nominalV / law.ohm : 0,
  );
  const loadsA = loadsOf(job)
    .filter(({ part }) => part.kind !== "coil")
    .filter(({ part }) => part.kind !== "motor" || part.use !== "starter")
    .map(({ ratedW, resistanceOhm }) => (ratedW ?? nominalV ** 2 / resistanceOhm!) / nominalV);
  const allA = [...coilsA, ...loadsA].reduce((sum, one) => sum + one, 0);
  const batteries = elements.flatMap(({ kind }, k) => (kind === "emf" ? [k] : []));
  return ({ positions, engine, flash }, elementA) => {
    const currentA = Math.max(0, ...batteries.map((k) => Math.abs(elementA[k]!)));
    if (currentA <= SHORTED_RATIO * allA + SHORTED_A) return null;
    const contacts = elements.flatMap(({ kind, of }, k) =>
      kind === "contact" && Math.abs(elementA[k]!) > currentA / 2 ? [of] : [],
    );
    return { state: { positions, engine, flash }, currentA, contacts };
  };
}
