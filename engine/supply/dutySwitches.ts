import type { Load, PartOf } from "../job/index.ts";
import { presentParts } from "../job/index.ts";
import type { CompiledJob } from "../operate/index.ts";
import { type PlacedLoad, placedLoads, readingOf, workingRefs } from "./workingLoads.ts";

type Positions = Readonly<Record<string, string>>;

/** One switch in one position. */
export interface Setting {
  readonly part: string;
  readonly position: string;
}

/** Switches that are worked while riding and the loads they work: found by trying, not by their names. */
export interface DutySwitches {
  readonly stop: readonly Setting[];
  readonly turn: readonly Setting[];
  readonly stopRefs: ReadonlySet<string>;
  readonly flashRefs: ReadonlySet<string>;
  /** Contact breakers, closed. */
  readonly points: readonly Setting[];
}

const STOP_WORD = /stop|brake/i;

/** A brake filament: its pins or its lamp category say so, or it is the one filament of a part named so. */
function isStopLamp({ part, index, ref }: Load): boolean {
  if (part.kind !== "lamp") return false;
  const pins = ref.slice(ref.indexOf(":") + 1);
  const category = part.filaments[index]?.category ?? "";
  const isOnly = part.filaments.length === 1 && STOP_WORD.test(part.name);
  return STOP_WORD.test(pins) || STOP_WORD.test(category) || isOnly;
}

/** Tries every switch from the given positions and sees what it works. */
export function dutySwitches(compiled: CompiledJob, from: readonly Positions[]): DutySwitches {
  const loads = placedLoads(compiled);
  const switches = presentParts(compiled.job).filter((part) => part.kind === "switch");
  const points = switches.flatMap((part) => pointsSetting(compiled, loads, part, from));
  const stopRefs = new Set(
    loads.filter(({ load }) => isStopLamp(load)).map(({ load }) => load.ref),
  );
  const flashRefs = new Set<string>();
  const hand = switches.filter((part) => part.driven === "hand" && part.momentary !== true);
  const settings = hand.flatMap((part) =>
    part.positions.filter(({ id }) => id !== part.rest).map(({ id }) => ({ part, id })),
  );
  const worked = settings.map(({ part, id }) => {
    const tries = from.map((base) => tried(compiled, loads, base, part, id));
    const steady = tries.flatMap((one) => one.steady);
    const flashing = tries.flatMap((one) => one.flashing);
    const isSteadyOnly = steady.length > 0 && steady.every((ref) => stopRefs.has(ref));
    const isFlashOnly = steady.length === 0 && flashing.length > 0;
    if (isFlashOnly) for (const ref of flashing) flashRefs.add(ref);
    return { part: part.id, position: id, isStop: isSteadyOnly, isTurn: isFlashOnly };
  });
  const plain = ({ part, position }: Setting): Setting => ({ part, position });
  const stop = worked.filter(({ isStop }) => isStop).map(plain);
  const turn = worked.filter(({ isTurn }) => isTurn).map(plain);
  return { stop, turn, stopRefs, flashRefs, points };
}

/** Loads whose state changes when one switch leaves its rest: at once, and only while the flasher is lit. */
function tried(
  compiled: CompiledJob,
  loads: readonly PlacedLoad[],
  base: Positions,
  part: PartOf<"switch">,
  position: string,
): { readonly steady: readonly string[]; readonly flashing: readonly string[] } {
  const at = (id: string, flash: "on" | "off") =>
    lit(compiled, loads, { ...base, [part.id]: id }, flash);
  const steady = differing(at(part.rest, "off"), at(position, "off"));
  const flashing = differing(at(part.rest, "on"), at(position, "on"));
  return { steady, flashing: flashing.filter((ref) => !steady.includes(ref)) };
}

const differing = (a: ReadonlySet<string>, b: ReadonlySet<string>): readonly string[] =>
  [...new Set([...a, ...b])].filter((ref) => a.has(ref) !== b.has(ref));

function lit(
  compiled: CompiledJob,
  loads: readonly PlacedLoad[],
  positions: Positions,
  flash: "on" | "off",
): ReadonlySet<string> {
  const solution = compiled.solve({ positions, flash });
  return workingRefs(compiled, loads, solution);
}

/** A switch that follows the engine and makes or breaks an ignition coil, in the position that feeds it. */
function pointsSetting(
  compiled: CompiledJob,
  loads: readonly PlacedLoad[],
  part: PartOf<"switch">,
  from: readonly Positions[],
): readonly Setting[] {
  if (part.driven !== "engine" || part.follows !== undefined) return [];
  const coils = loads.filter(({ load }) => load.part.kind === "coil");
  for (const base of from) {
    const powers = part.positions.map(({ id }) => {
      const solution = compiled.solve({ positions: { ...base, [part.id]: id } });
      return coils.map(({ place }) => readingOf(compiled, solution, place).powerW);
    });
    const sums = powers.map((list) => list.reduce((sumW, powerW) => sumW + powerW, 0));
    const most = Math.max(...sums);
    if (most <= 2 * Math.min(...sums) && most - Math.min(...sums) < 1) continue;
    return [{ part: part.id, position: part.positions[sums.indexOf(most)]!.id }];
  }
  return [];
}
