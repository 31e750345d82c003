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
