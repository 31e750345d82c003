import { HUB } from "../pinsOf.ts";
import type { JobIndex } from "./jobIndex.ts";
import { type Problem, problem } from "./problem.ts";

/** Joints without ways, connectors without cavities, exclusions that exclude everything, and body points that take the name of the mass. */
export function emptyThings(index: JobIndex): readonly Problem[] {
  const { joints, connectors, exclusions, bodies } = index.job;
  return [
    ...joints.flatMap(({ ways }, i) => {
      const words = () => ({ place: index.place(["joints", i]) });
      if (ways.length > 0) return [];
      return [problem("joint-without-ways", ["joints", i, "ways"], "no ways", words)];
    }),
    ...connectors.flatMap(({ cavities }, i) => {
      const path = ["connectors", i, "cavities"];
      const words = () => ({ place: index.place(["connectors", i]) });
      if (cavities.length > 0) return [];
      return [problem("connector-without-cavities", path, "no cavities", words)];
    }),
    ...exclusions.flatMap(({ positions, engine }, i) => {
      const words = () => ({ place: index.place(["exclusions", i]) });
      if (Object.keys(positions).length > 0 || (engine?.length ?? 0) > 0) return [];
      return [problem("exclusion-of-everything", ["exclusions", i], "no condition", words)];
    }),
    ...bodies.flatMap(({ points }, i) =>
      points.flatMap((point, k) => {
        const path = ["bodies", i, "points", k, "id"];
        const words = () => ({ place: index.place(path), id: HUB });
        return point.id === HUB ? [problem("reserved-id", path, HUB, words)] : [];
      }),
    ),
  ];
}
