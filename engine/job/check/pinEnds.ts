import type { JsonPath } from "../read/jsonPointer.ts";
import { type JobIndex, suggestionFor } from "./jobIndex.ts";
import { type Problem, problem } from "./problem.ts";

/** Ends of wires and bonds, and cases of generators, that name no pin of the job; wires and bonds from a pin to itself. */
export function pinEnds(index: JobIndex): readonly Problem[] {
  const { wires, bonds, parts } = index.job;
  return [
    ...wires.flatMap(({ from, to }, i) => endsProblems(index, ["wires", i], from, to)),
    ...bonds.flatMap(({ from, to }, i) => endsProblems(index, ["bonds", i], from, to)),
    ...parts.flatMap((part, i) =>
      part.kind === "generator" && part.case !== undefined
        ? pinProblems(index, ["parts", i, "case"], part.case)
        : [],
    ),
  ];
}

function endsProblems(
  index: JobIndex,
  path: JsonPath,
  from: string,
  to: string,
): readonly Problem[] {
  const unknown = [
    ...pinProblems(index, [...path, "from"], from),
    ...pinProblems(index, [...path, "to"], to),
  ];
  if (from !== to) return unknown;
  const words = () => ({ place: index.place(path), ref: from });
  return [...unknown, problem("both-ends-one-pin", [...path, "to"], from, words)];
}

/** Problems of one pin reference: unknown owner, or an owner without that pin. */
function pinProblems(index: JobIndex, path: JsonPath, ref: string): readonly Problem[] {
  if (index.pins.has(ref)) return [];
  const dot = ref.indexOf(".");
  const owner = dot < 0 ? ref : ref.slice(0, dot);
  const pin = dot < 0 ? "" : ref.slice(dot + 1);
  const pins = index.pinsOfOwner.get(owner);
  if (pins === undefined) {
    const what = "a part, joint, connector or body";
    const suggestion = () => suggestionFor(owner, index.pinsOfOwner.keys(), what);
    return [
      problem("unknown-pin-owner", path, ref, () => ({
        place: index.place(path),
        ref,
        owner,
        suggestion: suggestion(),
      })),
    ];
  }
  return [
    problem("unknown-pin", path, ref, () => ({
      place: index.place(path),
      ref,
      owner,
      pin,
      suggestion: suggestionFor(pin, pins, `a pin of ${owner}`),
    })),
  ];
}
