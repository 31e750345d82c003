import { create } from "zustand";
import type {
  Chosen,
  DocumentState,
  SavedMark,
  SumSentence,
  VerdictState,
} from "./documentState.ts";

export type StepName =
  | "jobs"
  | "survey"
  | "circuits"
  | "try"
  | "proof"
  | "loom"
  | "loomBoard"
  | "parts"
  | "build"
  | "test"
  | "papers";

export type PaletteChoice = "auto" | "paper" | "night" | "sun";

/** Who is at this screen, and what they may do. */
export interface Visitor {
  readonly who: string;
  readonly role: "owner" | "edit" | "view";
  readonly device: string;
  readonly whyLimited: string | null;
}

export interface BenchState {
  readonly step: StepName;
  readonly visitor: Visitor | null;
  readonly document: DocumentState | null;
  /** Grows with every edit of the job on the bench; answers and verdicts say which edit they belong to. */
  readonly editCount: number;
  readonly verdict: VerdictState;
  /** Outcome of the last full proof, and the edit it belongs to. */
  readonly proof: { readonly verdict: string; readonly ofEdit: number } | null;
  readonly chosen: Chosen | null;
  readonly sum: SumSentence | null;
  /** One sentence about what just happened or why something cannot be done. */
  readonly said: string | null;
  readonly saved: { readonly mark: SavedMark; readonly at: string | null };
  readonly palette: PaletteChoice;
  /** Counts beside the steps on the card, set by the steps themselves. */
  readonly stepNotes: Readonly<Partial<Record<StepName, StepNote>>>;
  /** An experiment is set up in Try; the stamp says so instead of the plan's verdict. */
  readonly onTheBench: string | null;
}

export interface StepNote {
  readonly text: string;
  readonly box: "empty" | "half" | "ticked";
}

export const useBench = create<BenchState>()(() => ({
  step: "jobs",
  visitor: null,
  document: null,
  editCount: 0,
  verdict: { result: null, ofEdit: -1 },
  proof: null,
  chosen: null,
  sum: null,
  said: null,
  saved: { mark: "saved", at: null },
  palette: "auto",
  stepNotes: {},
  onTheBench: null,
}));

/** Chooses a thing everywhere at once; null lets go. */
export function choose(chosen: Chosen | null): void {
  useBench.setState({ chosen, sum: null });
}

export function say(said: string | null): void {
  useBench.setState({ said });
}

/** Puts the working of a number on the sum line. */
export function showSum(sum: SumSentence | null): void {
  useBench.setState({ sum, said: null });
}

export function noteStep(step: StepName, note: StepNote): void {
  useBench.setState(({ stepNotes }) => ({ stepNotes: { ...stepNotes, [step]: note } }));
}
