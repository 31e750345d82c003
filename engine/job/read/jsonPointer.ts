export type JsonPath = readonly (string | number)[];

/** Longest name kept whole in a pointer; a hostile file may hold names of megabytes. */
const LONGEST_STEP_COUNT = 100;

/** RFC 6901: `/wires/12/to`; "~" and "/" inside a name are written ~0 and ~1. */
export function jsonPointer(path: JsonPath): string {
  return path
    .map((step) => String(step).slice(0, LONGEST_STEP_COUNT))
    .map((step) => `/${step.replaceAll("~", "~0").replaceAll("/", "~1")}`)
    .join("");
}
