import { create } from "zustand";
import { keepLasting, lasting } from "../../device/deviceStore.ts";
import { server } from "../../server/serverApi.ts";
import { say, useBench } from "../../store/benchStore.ts";

/** A shop's list as one entry of the bench's history; no text: from then on without prices. */
export interface PriceList {
  readonly id: string;
  readonly name: string;
  readonly text: string | null;
  /** Null until the server has it. */
  readonly savedAt: string | null;
  readonly savedBy: string | null;
}

export interface Prices {
  readonly list: PriceList | null;
  /** `waiting`: on this device, to be sent. `device`: the server did not take it from this device. */
  readonly mark: "saved" | "waiting" | "device";
  /** Id of the list that was in use on the server when this one was put in. */
  readonly basedOn: string | null;
  /** What somebody else put in meanwhile, where that is so. */
  readonly theirs: PriceList | null;
}

interface Served {
  readonly list: (Omit<PriceList, "text"> & { readonly text?: string | null }) | null;
}

const KEPT = "price list";
/** What earlier versions of the app kept: the text alone, on the device alone. */
const FORMER = "stock list";

export const usePrices = create<Prices>()(() => ({
  list: null,
  mark: "saved",
  basedOn: null,
  theirs: null,
}));

let isBusy = false;

/** Shows what this device knows at once, sends what waits, then takes over what the server has in use. */
export async function refreshPrices(): Promise<void> {
  if (isBusy || useBench.getState().visitor?.role === "view") return;
  isBusy = true;
  try {
    if (usePrices.getState().list === null) await showKept();
    if (usePrices.getState().mark === "waiting") await send();
    else if (usePrices.getState().mark === "saved") await takeServers();
  } finally {
    isBusy = false;
  }
}

async function showKept(): Promise<void> {
  const kept = await lasting<Prices>(KEPT);
  if (kept !== null) usePrices.setState(kept);
}

/** Puts a list in for the whole shop; on this device it is in use at once. */
export async function putPrices(name: string, text: string | null): Promise<void> {
  const { list, mark, basedOn } = usePrices.getState();
  await put({
    list: { id: crypto.randomUUID(), name, text, savedAt: null, savedBy: null },
    mark: "waiting",
    basedOn: mark === "saved" ? (list?.id ?? null) : basedOn,
    theirs: null,
  });
  await refreshPrices();
}

/** Settles two lists put in at the same time: theirs stays in use, or mine follows it. */
export async function settlePrices(take: "mine" | "theirs"): Promise<void> {
  const { list, theirs } = usePrices.getState();
  if (theirs === null || list === null) return;
  if (take === "theirs")
    return put({ list: theirs, mark: "saved", basedOn: theirs.id, theirs: null });
  await put({ list, mark: "waiting", basedOn: theirs.id, theirs: null });
  await refreshPrices();
}

async function put(prices: Prices): Promise<void> {
  usePrices.setState(prices);
  await keepLasting(KEPT, prices);
}

async function send(): Promise<void> {
  const { list, basedOn, theirs } = usePrices.getState();
  if (list === null || theirs !== null) return;
  const { id, name, text } = list;
  const answer = await server<Served>("POST", "/prices", { id, name, text, basedOn });
  if (answer.kind === "away" || usePrices.getState().list?.id !== id) return;
  if (answer.kind === "ok") {
    const { savedAt = null, savedBy = null } = answer.value.list ?? {};
    await put({ list: { ...list, savedAt, savedBy }, mark: "saved", basedOn: id, theirs: null });
    return;
  }
  if (answer.refusal.code === "price-list-moved") {
    const now = await servers(null);
    if (now !== undefined) await put({ list, mark: "waiting", basedOn, theirs: now });
    return;
  }
  await put({ list, mark: "device", basedOn, theirs: null });
  say(`${answer.refusal.message} The list is in use on this device only.`);
}

async function takeServers(): Promise<void> {
  const { list } = usePrices.getState();
  const now = await servers(list);
  if (now === undefined || usePrices.getState().list !== list) return;
  if (now !== null) return put({ list: now, mark: "saved", basedOn: now.id, theirs: null });
  const former = await lasting<string>(FORMER);
  if (former === null) return;
  await keepLasting(FORMER, null);
  isBusy = false;
  await putPrices("list of this device", former);
}

/** The list in use on the server; null: there is none; undefined: it could not be asked. */
async function servers(known: PriceList | null): Promise<PriceList | null | undefined> {
  const at = known === null ? "" : `?known=${known.id}`;
  const answer = await server<Served>("GET", `/prices${at}`);
  if (answer.kind !== "ok") return undefined;
  const { list } = answer.value;
  if (list === null) return null;
  const { id, name, savedAt, savedBy } = list;
  return { id, name, savedAt, savedBy, text: list.text ?? (known?.id === id ? known.text : null) };
}
