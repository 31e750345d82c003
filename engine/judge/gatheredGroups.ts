import type { CompiledJob, JobElement } from "../operate/index.ts";
import { type CurrentTally, newTally } from "./currentTally.ts";
import type { GroupSearch, Met } from "./groupSearch.ts";
import type { SearchedGroup } from "./joinedGroups.ts";
import type { LoadSeen } from "./worstCase.ts";

/** What was found of every group, by the elements of the whole machine; of what several have the largest. */
export function gatheredGroups(
  { jobNetwork: { elements } }: CompiledJob,
  groups: readonly SearchedGroup[],
): GroupSearch {
  const whole = {
    lasting: newTally(elements.length),
    cranking: newTally(elements.length),
    met: [] as Met[],
    fullA: new Float64Array(elements.length),
    chargedA: new Float64Array(elements.length),
    loads: new Map<string, LoadSeen>(),
  };
  const placeByName = new Map(names(elements).map((name, place) => [name, place]));
  for (const { compiled, found } of groups) {
    const own = names(compiled.jobNetwork.elements);
    const places = Int32Array.from(own, (name) => placeByName.get(name)!);
    const before = whole.met.length;
    for (const one of found.met) whole.met.push(one);
    gather(whole.lasting, found.lasting, places, before);
    gather(whole.cranking, found.cranking, places, before);
    for (const [k, place] of places.entries()) {
      whole.fullA[place] = Math.max(whole.fullA[place]!, found.fullA[k]!);
      whole.chargedA[place] = Math.max(whole.chargedA[place]!, found.chargedA[k]!);
    }
    for (const [ref, seen] of found.loads) whole.loads.set(ref, placed(seen, places));
  }
  return {
    ...whole,
    shorted: groups.flatMap(({ found }) => found.shorted),
    complete: groups.every(({ found }) => found.complete),
  };
}

function gather(
  whole: CurrentTally,
  own: CurrentTally,
  places: Int32Array,
  metCount: number,
): void {
  for (const [k, place] of places.entries()) {
    if (own.mostA[k]! <= whole.mostA[place]!) continue;
    whole.mostA[place] = own.mostA[k]!;
    whole.at[place] = metCount + own.at[k]!;
  }
}

/** A name for each element that it has in every network it is part of. */
function names(elements: readonly JobElement[]): readonly string[] {
  const counts = new Map<string, number>();
  return elements.map(({ kind, of, from, to }) => {
    const name = `${kind} ${of} ${from} ${to}`;
    const count = counts.get(name) ?? 0;
    counts.set(name, count + 1);
    return `${name} ${count}`;
  });
}

function placed(seen: LoadSeen, places: Int32Array): LoadSeen {
  if (seen.drop === null) return seen;
  const onWhole = (way: readonly number[]): readonly number[] => way.map((k) => places[k]!);
  const { feed, back } = seen.drop;
  return { ...seen, drop: { ...seen.drop, feed: onWhole(feed), back: onWhole(back) } };
}
