import type { Job, Wire } from "../job/index.ts";
import { type DropLimit, dropClassOf, dropLimitOf } from "../size/index.ts";
import type { CheckLoadRow } from "./checkResult.ts";
import { commandWriter } from "./stateArguments.ts";
import type { LoadSeen, WorstCase } from "./worstCase.ts";

/** The volt drop of every load in its worst state, with the limit it is held to, by id. */
export function loadRowsOf(
  job: Job,
  worst: WorstCase,
  wiresAt: ReadonlyMap<string, readonly Wire[]>,
  isMeasured: (elementIndex: number) => boolean,
): readonly CheckLoadRow[] {
  const commandOf = commandWriter(job);
  return [...worst.loads.values()]
    .map((seen): CheckLoadRow => {
      const { limitV, limit } = loadDropLimit(job, seen.load.pins, wiresAt);
      const fixed = { load: seen.load.ref, limitV, limit };
      const unknown = { worstDropV: null, feedV: null, returnV: null, contactV: null, state: [] };
      const why = whyUnknown(seen, isMeasured);
      if (why !== null || seen.drop === null || seen.dropState === null) {
        return { ...fixed, ...unknown, why: why ?? "never works" };
      }
      const { feedV, returnV, contactV } = seen.drop;
      const state = commandOf(seen.dropState);
      return { ...fixed, worstDropV: feedV + returnV, feedV, returnV, contactV, state };
    })
    .sort((a, b) => (a.load < b.load ? -1 : 1));
}

function whyUnknown(seen: LoadSeen, isMeasured: (elementIndex: number) => boolean): string | null {
  if (seen.load.ac) return "alternating current: judged by watts";
  if (seen.litCount === 0) return "worked in no state that was solved";
  if (seen.drop === null) return "in series with another load";
  const places = [...seen.drop.feed, ...seen.drop.back];
  return places.every(isMeasured) ? null : "a length on its way is not known";
}

/** The limit of the circuits that end at the load's own pins; the job's own decision is cited as such. */
export function loadDropLimit(
  job: Job,
  pins: readonly string[],
  wiresAt: ReadonlyMap<string, readonly Wire[]>,
): DropLimit {
  const circuits = pins.flatMap((pin) => wiresAt.get(pin) ?? []).map(({ circuit }) => circuit);
  const found = dropLimitOf(job, dropClassOf(job, circuits));
  if (!found.decided)
    return { ...found, limit: { ...found.limit, value: found.limitV, unit: "V" } };
  const limit = {
    value: found.limitV,
    unit: "V",
    table: "job",
    row: `decisions/dropLimits/${found.dropClass}`,
    source: "the person's own limit",
    place: "decisions",
    confidence: "own" as const,
  };
  return { ...found, limit };
}
