import type { JsonPath } from "../read/jsonPointer.ts";
import { type JobIndex, suggestionFor } from "./jobIndex.ts";
import { type Problem, problem } from "./problem.ts";

/** Loads named by intents and states that no part has; loads a state wants both on and off. */
export function namedLoads(index: JobIndex): readonly Problem[] {
  const { intents, states } = index.job;
  return [
    ...intents.flatMap((intent, i) => unknown(index, ["intents", i, "load"], intent.load)),
    ...states.flatMap((state, i) => {
      const on = new Set(state.on ?? []);
      return [
        ...(state.on ?? []).flatMap((load, k) => unknown(index, ["states", i, "on", k], load)),
        ...(state.off ?? []).flatMap((load, k) => unknown(index, ["states", i, "off", k], load)),
        ...(state.off ?? []).flatMap((id, k) => {
          const path = ["states", i, "off", k];
          const words = () => ({ place: index.place(path), id });
          return on.has(id) ? [problem("on-and-off", path, id, words)] : [];
        }),
      ];
    }),
  ];
}

function unknown(index: JobIndex, path: JsonPath, id: string): readonly Problem[] {
  if (index.loads.has(id)) return [];
  const words = () => ({
    place: index.place(path),
    id,
    suggestion: suggestionFor(id, index.loads.keys(), "a load"),
  });
  return [problem("unknown-load", path, id, words)];
}
