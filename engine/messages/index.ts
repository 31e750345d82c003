export type { Confidence, Figure } from "./figure.ts";
export type {
  Finding,
  Refusal,
  Remedy,
  Severity,
  Subject,
  WorkingInput,
  WorkingStep,
} from "./finding.ts";
export {
  type CatalogueEntry,
  explanationOf,
  findingCodes,
  messageOf,
  namesInWords,
  remedyMessageOf,
  severitiesOf,
} from "./messageOf.ts";
export { nearestWord } from "./nearestWord.ts";
export { quoted, valueInWords } from "./quoted.ts";
export {
  type RefusalCode,
  type RefusalPlace,
  type RefusalWords,
  refusal,
  refusalCatalogue,
} from "./refusals.ts";
export type { StateRefusalCode } from "./refusalsOfStates.ts";
