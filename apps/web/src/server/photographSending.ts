import { create } from "zustand";
import { base64Of } from "../device/base64Of.ts";
import {
  type KeptPhotograph,
  keepPhotograph,
  keptPhotograph,
  waitingPhotographs,
} from "../device/photographStore.ts";
import { say } from "../store/benchStore.ts";
import { server } from "./serverApi.ts";

/** Photographs that are on this device only: id → why the server did not take it; null: it has not been asked or was away. */
export const useWaitingPhotographs = create<{
  readonly waiting: Readonly<
    Record<string, { readonly key: string; readonly refusal: string | null }>
  >;
}>()(() => ({ waiting: {} }));

let isSending = false;
/** What a former page left behind is looked for once. */
let isLookedFor = false;

/** Sends what waits, one after the other. Sent twice it is known by its id. Asked often; nothing waits: nothing is done. */
export async function sendPhotographs(): Promise<void> {
  if (isSending) return;
  isSending = true;
  try {
    if (!isLookedFor) {
      for (const one of await waitingPhotographs()) note(one, null);
      isLookedFor = true;
    }
    for (const [id, { refusal }] of Object.entries(useWaitingPhotographs.getState().waiting)) {
      const kept = refusal === null ? await keptPhotograph(id) : null;
      if (kept !== null && !(await send(kept))) return;
    }
  } finally {
    isSending = false;
  }
}

/** Keeps a new photograph on the device, to be sent. */
export async function putPhotograph(photograph: KeptPhotograph): Promise<void> {
  await keepPhotograph(photograph);
  note(photograph, null);
}

export function forgetWaiting(id: string): void {
  const { [id]: _, ...waiting } = useWaitingPhotographs.getState().waiting;
  useWaitingPhotographs.setState({ waiting });
}

function note({ id, key }: KeptPhotograph, refusal: string | null): void {
  useWaitingPhotographs.setState(({ waiting }) => ({
    waiting: { ...waiting, [id]: { key, refusal } },
  }));
}

/** @returns whether the server could be asked */
async function send(kept: KeptPhotograph): Promise<boolean> {
  const { id, key, name, picture } = kept;
  const base64 = await base64Of(picture);
  const answer = await server("POST", `/jobs/${key}/photographs`, { id, name, base64 });
  if (answer.kind === "away") return false;
  if (answer.kind === "refused") {
    // Shut out for now, like everything else that waits.
    if (answer.status === 401) return false;
    note(kept, answer.refusal.message);
    say(`The photograph stays on this device: ${answer.refusal.message}`);
    return true;
  }
  await keepPhotograph({ ...kept, isWaiting: false });
  forgetWaiting(id);
  return true;
}
