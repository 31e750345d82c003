import type { Conductors, MakeFields } from "../route/index.ts";
import { figure } from "../tables/index.ts";
import { cheapestSizes, unmetBudgets } from "./cheapestSizes.ts";
import type { DesignCurrents } from "./designCurrents.ts";
import { type Limited, wireDropV } from "./loadSizing.ts";
import type { SizeProblem } from "./sizeProblem.ts";

/** "cranking": the starter's own cables at its current. "calm": every other load in its calmest state. */
export type Duty = "cranking" | "calm";

export interface ForDrop {
  readonly chosen: ReadonlyMap<string, MakeFields>;
  /** Places of the loads whose wires no choice brings within their share. */
  readonly unmet: ReadonlySet<number>;
  readonly exact: boolean;
  /** Copper of the wires of the loom, g; a wire of unknown length weighs nothing. */
  readonly copperG: number;
  readonly leastCopperG: number;
}

/**
 * Least copper that keeps the wires of every load within their share of its limit. A load whose share no choice meets is
 * held to the whole limit instead, and if that fails too to nothing; it is reported either way.
 *
 * @param from.makes  makes each wire may have, by rising copper.
 */
export function sizesForDrop(from: {
  readonly trial: Conductors;
  readonly currents: DesignCurrents;
  readonly loads: readonly Limited[];
  readonly makes: ReadonlyMap<string, readonly MakeFields[]>;
  readonly duty: Duty;
}): ForDrop {
  const { trial, makes, duty } = from;
  const amps = duty === "cranking" ? from.currents.cranking : from.currents.calm;
  const makesOf = (id: string): readonly MakeFields[] => makes.get(id) ?? [trial.get(id)!];
  const wires: SizeProblem["wires"] = new Map(
    [...trial.values()].map((wire) => [
      wire.id,
      makesOf(wire.id).map((make) => ({
        cost: wire.kind === "flyLead" ? 0 : copperG(make.areaMm2, wire.lengthMm),
        dropV: wireDropV(make, wire, amps.get(wire.id)?.currentA ?? 0),
      })),
    ]),
  );
  const counted = from.loads.flatMap((load, place) => {
    const isOfDuty = (load.duty === "cranking") === (duty === "cranking");
    const way = [...load.feed, ...load.back];
    const isMeasured = way.every((id) => trial.get(id)?.lengthMm !== null);
    return isOfDuty && isMeasured ? [{ id: `${place}`, wires: way, load }] : [];
  });
  const shareOf = ({ limit }: Limited): number => limit.wireShareV;
  const first = counted.map(({ load, ...one }) => ({ ...one, budgetV: shareOf(load) }));
  const unmet = new Set(unmetBudgets({ wires, budgets: first }));
  const budgets = counted.map(({ load, ...one }) => ({
    ...one,
    budgetV: unmet.has(one.id) ? load.limit.limitV : shareOf(load),
  }));
  const solved = cheapestSizes({ wires, budgets });
  return {
    chosen: new Map([...solved.chosen].map(([id, option]) => [id, makesOf(id)[option]!])),
    unmet: new Set([...unmet].map(Number)),
    exact: solved.exact,
    copperG: solved.cost,
    leastCopperG: solved.lowerBound,
  };
}

function copperG(areaMm2: number, lengthMm: number | null): number {
  const densityKgPerM3 = figure("copper", "density", "value").value;
  return (areaMm2 * (lengthMm ?? 0) * densityKgPerM3) / 1e6;
}
