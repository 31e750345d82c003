import { loadsOfPart } from "../loadsOf.ts";
import type { JobIndex } from "./jobIndex.ts";
import { type Problem, problem } from "./problem.ts";

/** Two loads of one part between the same pins: `PART:A-B` would mean either. */
export function duplicateLoads(index: JobIndex): readonly Problem[] {
  return index.job.parts.flatMap((part, i) => {
    const seen = new Set<string>();
    return loadsOfPart(part).flatMap(({ ref, kind, index: k }) => {
      const path = ["parts", i, kind === "filament" ? "filaments" : "elements", k];
      const isSecond = seen.has(ref);
      seen.add(ref);
      const words = () => ({ place: index.place(path), ref });
      return isSecond ? [problem("duplicate-load", path, ref, words)] : [];
    });
  });
}
