import { keepDocument, keptDocument } from "../device/deviceStore.ts";
import { front } from "../engine/engineClient.ts";
import { rebase, sendSoon } from "../server/sending.ts";
import { server } from "../server/serverApi.ts";
import { say, useBench } from "./benchStore.ts";
import type { DocumentState } from "./documentState.ts";
import { inTurn, refreshVerdict } from "./editing.ts";

interface ServedJob {
  readonly key: string;
  readonly revision: number;
  readonly text: string;
  readonly savedAt: string;
}

/**
 * Puts a job on the bench. What this device kept of it comes first (with what still waits to be sent), so that it opens without the server; then the
 * server's newer revision is taken over and the waiting changes are done to it again.
 */
export function openDocument(key: string): Promise<void> {
  return inTurn(async () => {
    const kept = await keptDocument(key);
    const served = await server<ServedJob>("GET", `/jobs/${key}`);
    const isAway = served.kind === "away";
    if (served.kind === "refused" && (kept === null || kept.pending.length === 0)) {
      say(served.refusal.message);
      return;
    }
    const text = kept?.text ?? (served.kind === "ok" ? served.value.text : null);
    if (text === null) {
      say(
        "The server cannot be reached, and this device has not kept that job. Open it once while connected.",
      );
      return;
    }
    const opened = await front.open(text);
    if (!opened.ok) {
      say(
        `This job cannot be read: ${opened.refusals[0]?.message ?? ""} ${opened.refusals[0]?.remedy ?? ""}`,
      );
      return;
    }
    const base = kept?.baseRevision ?? (served.kind === "ok" ? served.value.revision : 0);
    const at = served.kind === "ok" ? served.value.savedAt : null;
    const isServers = served.kind === "ok" && served.value.revision === base;
    const document: DocumentState = {
      key,
      baseRevision: base,
      baseSavedAt: kept?.baseSavedAt ?? (at !== null && isServers ? at : null),
      job: opened.job,
      pending: kept?.pending ?? [],
      undo: kept?.undo ?? [],
      redo: kept?.redo ?? [],
      isReadOnly: readOnlyReason(),
    };
    const mark = isAway ? "offline" : document.pending.length > 0 ? "waiting" : "saved";
    useBench.setState(({ editCount }) => ({
      document,
      editCount: editCount + 1,
      verdict: { result: null, ofEdit: -1 },
      proof: null,
      chosen: null,
      sum: null,
      onTheBench: null,
      stepNotes: {},
      saved: { mark, at },
    }));
    if (served.kind === "ok" && served.value.revision > base) {
      const { revision, savedAt, text: newer } = served.value;
      await rebase({ ...document, baseRevision: revision, baseSavedAt: savedAt }, newer);
    }
    await keepDocument(useBench.getState().document ?? document, await front.text());
    void refreshVerdict();
    sendSoon();
  });
}

export function closeDocument(): void {
  useBench.setState({ document: null, verdict: { result: null, ofEdit: -1 }, chosen: null });
}

function readOnlyReason(): string | null {
  const { visitor } = useBench.getState();
  return visitor?.role === "view"
    ? "This device may look, not change. Ask at the workshop's machine for the right to edit."
    : null;
}
