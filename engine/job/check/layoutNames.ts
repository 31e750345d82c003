import { type JobIndex, suggestionFor } from "./jobIndex.ts";
import { type Problem, problem } from "./problem.ts";

/** Drawing places kept for things that are not there; an edit that removes a thing takes its place away too. */
export function layoutNames(index: JobIndex): readonly Problem[] {
  const { job } = index;
  const things = [...index.pinsOfOwner.keys(), ...index.runs, ...job.wires.map((wire) => wire.id)];
  const anything = new Set([...index.stations, ...things]);
  const sheets = [
    { sheet: "side", known: index.stations },
    { sheet: "diagram", known: anything },
    { sheet: "board", known: anything },
  ] as const;
  return sheets.flatMap(({ sheet, known }) =>
    Object.keys(job.layout[sheet] ?? {}).flatMap((id) => {
      if (known.has(id)) return [];
      const path = ["layout", sheet, id];
      const suggestion = () => suggestionFor(id, known, "a thing");
      const words = () => ({
        place: index.place(["layout", sheet]),
        id,
        suggestion: suggestion(),
      });
      return [problem("layout-of-nothing", path, id, words)];
    }),
  );
}
