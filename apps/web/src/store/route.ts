import { type StepName, useBench } from "./benchStore.ts";
import { closeDocument, openDocument } from "./openDocument.ts";

/** The steps in the order a machine is worked through, with the words on the card. */
export const STEPS: readonly { readonly name: StepName; readonly word: string }[] = [
  { name: "jobs", word: "Jobs" },
  { name: "survey", word: "Survey" },
  { name: "circuits", word: "Circuits" },
  { name: "try", word: "Try" },
  { name: "proof", word: "Proof" },
  { name: "loom", word: "Loom" },
  { name: "loomBoard", word: "Loom board" },
  { name: "parts", word: "Parts" },
  { name: "build", word: "Build" },
  { name: "test", word: "Test" },
  { name: "papers", word: "Papers" },
];

/** `#/jobs` or `#/job/KEY/STEP`: an address that can be kept and gone back to. */
export function goTo(step: StepName, key?: string): void {
  const job = key ?? useBench.getState().document?.key;
  location.hash = step === "jobs" || job === undefined ? "#/jobs" : `#/job/${job}/${step}`;
}

/** The step before or after; stays at the ends. */
export function stepBy(offsetCount: 1 | -1): void {
  const { step, document } = useBench.getState();
  if (document === null) return;
  const next = STEPS[STEPS.findIndex(({ name }) => name === step) + offsetCount];
  if (next !== undefined) goTo(next.name);
}

export async function followAddress(): Promise<void> {
  // The address of a new start of the server, opened over the old one: begin anew with its key.
  if (/[#&]token=/.test(location.hash)) {
    location.reload();
    return;
  }
  const [, job, key, word] = location.hash.split("/");
  const step = STEPS.find(({ name }) => name === word)?.name;
  if (location.hash.startsWith("#/job/") && job !== undefined && key && step) {
    if (useBench.getState().document?.key !== key) await openDocument(key);
    useBench.setState({ step, sum: null, said: useBench.getState().said });
    return;
  }
  if (useBench.getState().step !== "jobs") useBench.setState({ step: "jobs", sum: null });
  if (location.hash !== "#/jobs") history.replaceState(null, "", "#/jobs");
  if (useBench.getState().document !== null && word === "closed") closeDocument();
}
