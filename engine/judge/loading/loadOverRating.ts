import type { Finding } from "../../messages/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Judge } from "../judge.ts";
import { largerMake } from "../protection/largerMake.ts";
import { operateCommand, stateOf } from "../stateArguments.ts";
import { placeFigure } from "../wireLimit.ts";

const ROUNDING_RATIO = 1e-9;

/** Wires that carry for long more than they may where they lie. Wires with the same worst state are one finding. */
export const loadOverRating: Judge = (design) => {
  const { worst, ratings, conductors, job } = design;
  const over = [...worst.conductors]
    .filter(([id, { currentA }]) => currentA > ratings.get(id)!.currentA * (1 + ROUNDING_RATIO))
    // Insulation that the air alone is too hot for is a finding of its own.
    .filter(([id]) => ratings.get(id)!.listA > 0)
    .map(([id, most]) => ({ id, ...most, overRatio: most.currentA / ratings.get(id)!.currentA }))
    .sort((a, b) => b.overRatio - a.overRatio || (a.id < b.id ? -1 : 1));
  const groups = new Map<string, typeof over>();
  for (const one of over) {
    const key = `${conductors.get(one.id)!.circuit} ${Math.round(one.currentA)}`;
    groups.set(key, [...(groups.get(key) ?? []), one]);
  }
  return [...groups.values()].map((group): Finding => {
    const { id, currentA, state, batteryV } = group[0]!;
    const rating = ratings.get(id)!;
    const ids = group.map((one) => one.id);
    const larger = largerMake(design, ids, (currentA * (rating.tableA ?? 1)) / rating.currentA);
    return findingOf({
      code: "load-over-rating",
      severity: "stop",
      subject: { kind: conductors.get(id)!.kind, id },
      also: ids.slice(1),
      state: state && stateOf(job, state),
      limit: placeFigure(design, id),
      figures: rating.figures,
      // The heat model is a ground of its own, and rests on nothing remembered.
      restsOnFigures: currentA <= rating.modelA,
      numbers: {
        currentA,
        areaMm2: conductors.get(id)!.areaMm2,
        ambientC: rating.place.ambientC,
        bundleCount: rating.place.bundle.wireCount,
        loadedCount: rating.place.bundle.loadedCount,
        wireCount: ids.length,
      },
      working: rating.working,
      remedies: larger === null ? [] : [larger],
      reproduce: state && operateCommand(job, state, batteryV),
    });
  });
};
