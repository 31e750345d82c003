import type { Job } from "../job.ts";
import { loadsOfPart } from "../loadsOf.ts";
import type { EditedList, Operation } from "./operation.ts";
import { removeWithPlaces } from "./wireEdits.ts";

type Owner = "parts" | "joints" | "connectors";

/**
 * A part, joint or connector taken away with all that hangs on it alone: the wires on its pins, bonds to it, and what intents, states and exclusions say of its
 * loads and positions. An intent of a load that is gone goes with it; a condition on a switch that is gone is left out of the others.
 */
export function removeWhole(job: Job, list: Owner, id: string): Operation {
  const isOwn = (pin: string): boolean => pin.startsWith(`${id}.`);
  const wires = job.wires.filter(({ from, to }) => isOwn(from) || isOwn(to));
  const bonds = job.bonds.filter(({ from, to }) => isOwn(from) || isOwn(to));
  const part = list === "parts" ? job.parts.find((one) => one.id === id) : undefined;
  const loads = new Set((part === undefined ? [] : loadsOfPart(part)).map(({ ref }) => ref));
  const remove = (from: EditedList, gone: string): Operation =>
    removeWithPlaces(job.layout, from, gone);
  return {
    op: "batch",
    name: `Remove ${id} and ${wires.length} wires on it`,
    operations: [
      ...wires.map((wire) => remove("wires", wire.id)),
      ...bonds.map((bond) => remove("bonds", bond.id)),
      ...job.intents
        .filter(({ load }) => loads.has(load))
        .map((intent): Operation => ({ op: "remove", list: "intents", id: intent.id })),
      ...withoutSwitch(job, id, loads),
      ...withoutName(job, id),
      remove(list, id),
    ],
  };
}

/** Conditions on a switch and expectations of a load, taken out of everything that stays. */
function withoutSwitch(job: Job, id: string, loads: ReadonlySet<string>): readonly Operation[] {
  const states = job.states.flatMap((state): Operation[] => {
    const { [id]: _, ...positions } = state.positions;
    const set = (path: string, value: unknown): Operation => ({
      op: "set",
      list: "states",
      id: state.id,
      path: [path],
      value,
    });
    const kept = (refs: readonly string[]) => refs.filter((ref) => !loads.has(ref));
    return [
      ...(id in state.positions ? [set("positions", positions)] : []),
      ...(state.on?.some((ref) => loads.has(ref)) ? [set("on", kept(state.on))] : []),
      ...(state.off?.some((ref) => loads.has(ref)) ? [set("off", kept(state.off))] : []),
    ];
  });
  const intents = job.intents
    .filter(({ load, when }) => !loads.has(load) && when.some(({ positions }) => id in positions))
    .map(({ id: intent, when }): Operation => {
      const value = when.map(({ positions: { [id]: _, ...positions }, ...same }) => ({
        ...same,
        positions,
      }));
      return { op: "set", list: "intents", id: intent, path: ["when"], value };
    });
  const exclusions = job.exclusions
    .filter(({ positions }) => id in positions)
    .map(({ id: gone }): Operation => ({ op: "remove", list: "exclusions", id: gone }));
  return [...states, ...intents, ...exclusions];
}

/** Regulators that served a generator that is gone, generators whose case was fastened to the thing. */
function withoutName(job: Job, id: string): readonly Operation[] {
  return job.parts.flatMap((part): Operation[] => {
    if (part.id === id) return [];
    const unset = (path: string): Operation => ({
      op: "set",
      list: "parts",
      id: part.id,
      path: [path],
    });
    return [
      ...(part.kind === "regulator" && part.generator === id ? [unset("generator")] : []),
      ...(part.kind === "generator" && part.case?.startsWith(`${id}.`) ? [unset("case")] : []),
    ];
  });
}
