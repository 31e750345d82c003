import { keepDocument } from "../device/deviceStore.ts";
import { front } from "../engine/engineClient.ts";
import { useBench } from "../store/benchStore.ts";
import { inTurn } from "../store/editing.ts";
import { sendPhotographs } from "./photographSending.ts";
import { rebase, sendSoon } from "./sending.ts";
import { server } from "./serverApi.ts";

interface Changes {
  readonly cursor: number | string;
  readonly jobs: readonly { readonly key: string; readonly revision: number }[];
}

const POLL_MS = 2000;
let cursor: number | string = 0;

/** Asks every two seconds what others have saved, and takes over what concerns the job on the bench. A hidden page does not ask. */
export function watchServer(): void {
  setInterval(() => {
    if (document.visibilityState === "visible") void look();
  }, POLL_MS);
  addEventListener("online", () => sendSoon());
}

async function look(): Promise<void> {
  const answer = await server<Changes>("GET", `/changes?since=${cursor}`);
  const { saved } = useBench.getState();
  if (answer.kind !== "ok") {
    if (answer.kind === "away" && saved.mark === "saved") markSaved("offline");
    return;
  }
  void sendPhotographs();
  if (saved.mark === "offline") {
    markSaved((useBench.getState().document?.pending.length ?? 0) > 0 ? "waiting" : "saved");
    sendSoon();
  }
  cursor = answer.value.cursor;
  const on = useBench.getState().document;
  const newer = answer.value.jobs.find(({ key }) => key === on?.key);
  if (on === null || newer === undefined || newer.revision <= on.baseRevision) return;
  if (on.pending.length > 0) return sendSoon();
  await inTurn(() => takeServerRevision(on.key));
}

/** Puts the server's newest revision of the job on the bench, where it is newer. */
export async function takeServerRevision(key: string): Promise<void> {
  const answer = await server<{ revision: number; text: string; savedAt: string }>(
    "GET",
    `/jobs/${key}`,
  );
  const now = useBench.getState().document;
  if (answer.kind !== "ok" || now === null || now.key !== key) return;
  if (answer.value.revision <= now.baseRevision) return;
  const { revision, savedAt, text } = answer.value;
  await rebase({ ...now, baseRevision: revision, baseSavedAt: savedAt }, text);
  const kept = useBench.getState().document;
  if (kept !== null) await keepDocument(kept, await front.text());
}

function markSaved(mark: "saved" | "waiting" | "offline"): void {
  useBench.setState(({ saved }) => ({ saved: { mark, at: saved.at } }));
}
