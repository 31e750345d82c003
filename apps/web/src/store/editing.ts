import type { Operation } from "@copperwright/engine";
import { keepDocument } from "../device/deviceStore.ts";
import { front } from "../engine/engineClient.ts";
import { faultText } from "../engine/faultText.ts";
import { sendSoon } from "../server/sending.ts";
import { say, useBench } from "./benchStore.ts";
import type { DocumentState } from "./documentState.ts";

/** Acts follow one another: an edit begins when the one before it has been done. */
let queue: Promise<unknown> = Promise.resolve();

function inTurn<T>(work: () => Promise<T>): Promise<T> {
  const next = queue.then(work, work);
  queue = next.catch(() => undefined);
  return next;
}

export { inTurn };

/**
 * Does one act to the job on the bench: applied by the engine, kept on the device, sent to the server, checked. The act can be undone by its name.
 *
 * @returns whether it was done; where not, the reason stands on the sum line.
 */
export function edit(what: string, operation: Operation): Promise<boolean> {
  return inTurn(() => act(what, operation, "new"));
}

export function undo(): Promise<boolean> {
  return inTurn(async () => {
    const last = useBench.getState().document?.undo.at(-1);
    return last === undefined ? false : act(last.what, last.inverse, "undo");
  });
}

export function redo(): Promise<boolean> {
  return inTurn(async () => {
    const last = useBench.getState().document?.redo.at(-1);
    return last === undefined ? false : act(last.what, last.inverse, "redo");
  });
}

/** On the device's own disk before anything says so. A device that keeps nothing says that, and the server still gets the change. */
async function keep(document: DocumentState): Promise<void> {
  try {
    await keepDocument(document, await front.text());
  } catch (error) {
    say(
      `This device could not keep the change (${faultText(error)}). Leave the page open until it is saved on the server.`,
    );
    return;
  }
  useBench.setState(({ saved }) =>
    saved.mark === "keeping" ? { saved: { mark: "waiting", at: null } } : {},
  );
}

/** Whether it only adds, changes or takes away ticks and readings. */
function isTicks(operation: Operation): boolean {
  if (operation.op === "batch") return operation.operations.every(isTicks);
  return operation.list === "build" || operation.list === "tests";
}

type Way = "new" | "undo" | "redo";
const UNDO_KEPT = 200;

async function act(what: string, operation: Operation, way: Way): Promise<boolean> {
  const before = useBench.getState().document;
  if (before === null) return false;
  if (before.isReadOnly !== null) {
    say(before.isReadOnly);
    return false;
  }
  if (useBench.getState().visitor?.whyLimited && !isTicks(operation)) {
    say(
      `${what} was not done. This device may tick and read, not change the plan: it came by the plain address.`,
    );
    return false;
  }
  const done = await front.apply(operation);
  if (!done.ok) {
    const [first] = done.refusals;
    say(`${what} was not done. ${first?.message ?? ""} ${first?.remedy ?? ""}`.trim());
    return false;
  }
  const word = way === "undo" ? `undo: ${what}` : what;
  const change = { changeId: crypto.randomUUID(), what: word, operation };
  const document: DocumentState = {
    ...before,
    job: done.job,
    pending: [...before.pending, change],
    ...stacksAfter(before, way, { what, inverse: done.inverse }),
  };
  useBench.setState(({ editCount }) => ({
    document,
    editCount: editCount + 1,
    saved: { mark: "keeping", at: null },
    said: null,
  }));
  await keep(document);
  sendSoon();
  void refreshVerdict();
  return true;
}

function stacksAfter(
  { undo: undone, redo: redone }: DocumentState,
  way: Way,
  act: DocumentState["undo"][number],
): Pick<DocumentState, "undo" | "redo"> {
  if (way === "undo") return { undo: undone.slice(0, -1), redo: [...redone, act] };
  const grown = [...undone, act].slice(-UNDO_KEPT);
  return { undo: grown, redo: way === "redo" ? redone.slice(0, -1) : [] };
}

/** Asks for the verdict of the job as it stands; an answer to an older edit is dropped. */
export async function refreshVerdict(): Promise<void> {
  const { editCount } = useBench.getState();
  const result = await front.check();
  if (useBench.getState().editCount === editCount) {
    useBench.setState({ verdict: { result, ofEdit: editCount } });
  }
}
