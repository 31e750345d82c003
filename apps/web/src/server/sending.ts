import { keepDocument } from "../device/deviceStore.ts";
import { front } from "../engine/engineClient.ts";
import { say, useBench } from "../store/benchStore.ts";
import type { DocumentState, PendingChange } from "../store/documentState.ts";
import { inTurn, refreshVerdict } from "../store/editing.ts";
import { server } from "./serverApi.ts";

interface Saved {
  readonly revision: number;
  readonly text: string;
  readonly savedAt?: string;
  readonly conflicts: readonly unknown[];
}

const RETRY_MS = 3000;
let isSending = false;
let timer: ReturnType<typeof setTimeout> | null = null;

/** Sends what waits, one change a request, until the server has it all: a change sent twice is known by its id and done once. */
export function sendSoon(): void {
  if (timer !== null) clearTimeout(timer);
  timer = setTimeout(() => void send(), 0);
}

async function send(): Promise<void> {
  if (isSending) return;
  isSending = true;
  try {
    for (;;) {
      const document = useBench.getState().document;
      if (document === null || document.pending.length === 0) return;
      if (!(await sendFirst(document))) return;
    }
  } finally {
    isSending = false;
  }
}

/** @returns whether the server took it. */
async function sendFirst(document: DocumentState): Promise<boolean> {
  const change = document.pending[0]!;
  const answer = await server<Saved>("POST", `/jobs/${document.key}/changes`, {
    changeId: change.changeId,
    baseRevision: document.baseRevision,
    jobVersion: document.job.copperwrightJob,
    operations: [change.operation],
    what: change.what.slice(0, 400),
  });
  if (answer.kind === "away") {
    useBench.setState({ saved: { mark: "offline", at: null } });
    timer = setTimeout(() => void send(), RETRY_MS);
    return false;
  }
  if (answer.kind === "refused" && answer.status === 401) {
    useBench.setState({ saved: { mark: "offline", at: null } });
    say(`${answer.refusal.message} All changes are kept on this device.`);
    return false;
  }
  if (answer.kind === "refused") {
    say(`Not saved on the server: ${answer.refusal.message} The change is kept on this device.`);
    return false;
  }
  await inTurn(() => settle(document, change, answer.value));
  return true;
}

/** The server's revision becomes the base; where somebody else's work came between, what still waits is done to it again. */
async function settle(
  sentFrom: DocumentState,
  sent: PendingChange,
  { revision, text, savedAt, conflicts }: Saved,
): Promise<void> {
  const now = useBench.getState().document;
  if (now === null || now.key !== sentFrom.key) return;
  const waiting = now.pending.filter(({ changeId }) => changeId !== sent.changeId);
  const at = savedAt ?? new Date().toISOString();
  const document: DocumentState = {
    ...now,
    baseRevision: revision,
    baseSavedAt: at,
    pending: waiting,
  };
  const isMerged = revision !== sentFrom.baseRevision + 1 || conflicts.length > 0;
  if (isMerged) await rebase(document, text);
  else useBench.setState({ document });
  const mark = conflicts.length > 0 ? "two-versions" : waiting.length > 0 ? "waiting" : "saved";
  useBench.setState({ saved: { mark, at } });
  const kept = useBench.getState().document;
  if (kept !== null) await keepDocument(kept, await front.text());
}

/** Takes a newer document and does again to it what still waits. What no longer fits is said, never dropped in silence. */
export async function rebase(document: DocumentState, text: string): Promise<void> {
  const opened = await front.open(text);
  if (!opened.ok) {
    const isReadOnly = `This app cannot read the newer document: ${opened.refusals[0]?.message ?? ""} Load the page again.`;
    useBench.setState({ document: { ...document, isReadOnly } });
    return;
  }
  let { job } = opened;
  const still: PendingChange[] = [];
  for (const change of document.pending) {
    const done = await front.apply(change.operation);
    if (!done.ok) {
      say(`"${change.what}" no longer fits the job as others have changed it.`);
      continue;
    }
    job = done.job;
    still.push(change);
  }
  useBench.setState(({ editCount }) => ({
    document: { ...document, job, pending: still },
    editCount: editCount + 1,
  }));
  void refreshVerdict();
}
