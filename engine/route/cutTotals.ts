import type { Colour, Job } from "../job/index.ts";
import type { Conductors } from "./conductor.ts";
import { allowancesOf, cutLength } from "./cutLength.ts";
import type { Routed } from "./routed.ts";

/** One make in one colour: what is cut from it and what to buy. */
export interface CutTotal {
  readonly makeId: string;
  /** Null: no colour stated. */
  readonly colour: Colour | null;
  readonly wireCount: number;
  readonly cutMm: number;
  /** cut · (1 + waste), metres; a lower bound while lengths are missing. */
  readonly buyM: number;
  /** Wires of this make and colour nobody knows the length of; they are in no sum. */
  readonly unknownWires: readonly string[];
  readonly basis: "complete" | "incomplete";
}

/** Totals over the wires that are `new`, by make and colour; sorted. A wire to be kept is not cut again. */
export function cutTotals(job: Job, routed: Routed, conductors: Conductors): readonly CutTotal[] {
  const allowances = allowancesOf(job);
  const groups = new Map<
    string,
    { makeId: string; colour: Colour | null; cutMm: number[]; unknown: string[] }
  >();
  for (const wire of job.wires) {
    const route = routed.wires.get(wire.id);
    const makeId = conductors.get(wire.id)?.makeId;
    if (wire.status !== "new" || route === undefined || makeId === undefined) continue;
    const key = [makeId, ...colourWords(wire.colour)].join(" ");
    const group = groups.get(key) ?? {
      makeId,
      colour: wire.colour ?? null,
      cutMm: [],
      unknown: [],
    };
    groups.set(key, group);
    const cut = cutLength(route, allowances);
    if (cut === null) group.unknown.push(wire.id);
    else group.cutMm.push(cut.total);
  }
  return [...groups.keys()].sort().map((key) => {
    const { makeId, colour, cutMm, unknown } = groups.get(key)!;
    const sumMm = cutMm.reduce((sum, one) => sum + one, 0);
    return {
      makeId,
      colour,
      wireCount: cutMm.length + unknown.length,
      cutMm: sumMm,
      buyM: (sumMm / 1000) * (1 + allowances.wastePercent / 100),
      unknownWires: [...unknown].sort(),
      basis: unknown.length === 0 ? "complete" : "incomplete",
    };
  });
}

const colourWords = (colour: Colour | undefined): readonly string[] =>
  colour === undefined ? [""] : [colour.main, colour.tracer ?? "", colour.secondTracer ?? ""];
