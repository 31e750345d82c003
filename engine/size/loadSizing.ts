import type { Job } from "../job/index.ts";
import type { Conductors, MakeFields } from "../route/index.ts";
import { figure } from "../tables/index.ts";
import type { DesignCurrents, DesignWay } from "./designCurrents.ts";
import { dropClassOf, dropLimitOf } from "./dropLimit.ts";
import type { LoadSizing } from "./sizedJob.ts";

/** A way with the limit it is held to, before sizes are chosen. */
export type Limited = Omit<LoadSizing, "feedV" | "backV" | "unmet">;

/** Finds the limit of a load's way: of its duty, else of the circuits of the wires on the load's own pins. */
export function limitedWay(job: Job, conductors: Conductors, way: DesignWay): Limited {
  const ends = [way.feed[0], way.back[0]].flatMap((id) => conductors.get(id ?? "")?.circuit ?? []);
  const limit = dropLimitOf(job, classOf(job, way.duty, ends));
  return { ...way, limit, contactsExceed: way.contactV > limit.limitV - limit.wireShareV };
}

function classOf(job: Job, duty: DesignWay["duty"], circuits: readonly string[]) {
  if (duty === "cranking") return "starter";
  return duty === "charging" ? "charge" : dropClassOf(job, circuits);
}

/** The way with the volts its wires take in the sizes chosen. */
export function withChosen(
  load: Limited,
  from: {
    readonly conductors: Conductors;
    readonly currents: DesignCurrents;
    readonly unmet: boolean;
  },
): LoadSizing {
  const amps = load.duty === "cranking" ? from.currents.cranking : from.currents.calm;
  const sum = (wires: readonly string[]): number | null => {
    let sumV = 0;
    for (const id of wires) {
      const conductor = from.conductors.get(id)!;
      if (conductor.lengthMm === null) return null;
      sumV += wireDropV(conductor, conductor, amps.get(id)?.currentA ?? 0);
    }
    return sumV;
  };
  return { ...load, feedV: sum(load.feed), backV: sum(load.back), unmet: from.unmet };
}

/**
 * Drop of a wire as hot as its surroundings: R20 · (1 + α · (air − 20)) · length · current, V.
 * A length nobody knows counts as nothing here; budgets with such a wire are not formed.
 */
export function wireDropV(
  make: Pick<MakeFields, "ohmPerM20Max">,
  wire: { readonly lengthMm: number | null; readonly ambientC: number },
  currentA: number,
): number {
  const perK = figure("copper", "tempco-20", "value").value;
  const hotRatio = 1 + perK * (wire.ambientC - 20);
  return (make.ohmPerM20Max * hotRatio * (wire.lengthMm ?? 0) * currentA) / 1000;
}
