/** Papers: what stands on each sheet of a build pack. */

export type { PackPaper } from "./packPaper.ts";
export { packPapers } from "./packPapers.ts";
export { type PaperInput, paperInput } from "./paperInput.ts";
