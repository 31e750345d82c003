import { type JobIndex, suggestionFor } from "./jobIndex.ts";
import { type Problem, problem } from "./problem.ts";

/** Regulators that serve a generator the job does not have, and readings taken in a state it does not have. */
export function namedGenerators(index: JobIndex): readonly Problem[] {
  const { parts, tests, states } = index.job;
  const generators = new Set(
    parts.filter((part) => part.kind === "generator").map((part) => part.id),
  );
  const stateIds = new Set(states.map((state) => state.id));
  return [
    ...parts.flatMap((part, i) => {
      const id = part.kind === "regulator" ? part.generator : undefined;
      const path = ["parts", i, "generator"];
      if (id === undefined || generators.has(id)) return [];
      const suggestion = () => suggestionFor(id, generators, "a generator");
      const words = () => ({ place: index.place(path), id, suggestion: suggestion() });
      return [problem("unknown-generator", path, id, words)];
    }),
    ...tests.flatMap(({ state: id }, i) => {
      const path = ["tests", i, "state"];
      if (id === undefined || stateIds.has(id)) return [];
      const suggestion = () => suggestionFor(id, stateIds, "a state");
      const words = () => ({ place: index.place(path), id, suggestion: suggestion() });
      return [problem("unknown-state", path, id, words)];
    }),
  ];
}
