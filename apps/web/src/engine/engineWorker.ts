import {
  applyOperation,
  type CheckedJob,
  checkedJob,
  consequenceOf,
  type Job,
  type PricedShopping,
  pricedShopping,
  readJob,
  readStockList,
  recheckedJob,
  type StockList,
  writeJob,
} from "@copperwright/engine";
import { type SceneSource, sceneSource } from "@copperwright/engine/scenes";
import * as Comlink from "comlink";
import { ANSWERS } from "./answers.ts";
import type { EngineApi } from "./engineApi.ts";
import type { Held } from "./held.ts";

interface OnTheBench {
  readonly job: Job;
  checked: CheckedJob | null;
  scenes: SceneSource | null;
  /** Of exactly this job, by the list it was priced from. */
  priced?: { readonly stock: StockList; readonly shopping: PricedShopping };
  /** Of the job as it was before the last edit: what that edit left alone is taken over. */
  readonly checkedBefore: CheckedJob | null;
  readonly scenesBefore: SceneSource | null;
}

/** The last list read: a list is long, and the same for many questions. */
let listRead: { readonly text: string; readonly stock: StockList | null } | null = null;

/** Null where there is no list, or one that cannot be read: Parts says why. */
function stockOf(text: string | null): StockList | null {
  if (text === null) return null;
  if (listRead?.text !== text) {
    const read = readStockList(text);
    listRead = { text, stock: read.ok ? read.stock : null };
  }
  return listRead.stock;
}

let held: OnTheBench | null = null;

function present(): OnTheBench {
  if (held === null) throw new Error("no job is on the bench");
  return held;
}

function checkedOf(now: OnTheBench): CheckedJob {
  const { job, checkedBefore } = now;
  now.checked ??= checkedBefore === null ? checkedJob(job) : recheckedJob(checkedBefore, job);
  return now.checked;
}

function scenesOf(now: OnTheBench): SceneSource {
  now.scenes ??= sceneSource(checkedOf(now), now.scenesBefore);
  return now.scenes;
}

/** Of the job as it is now, whatever is opened or edited while a long answer is still being made. */
function view(): Held {
  const now = present();
  return { job: now.job, checked: () => checkedOf(now), scenes: () => scenesOf(now) };
}

const api: EngineApi = {
  open(text) {
    const read = readJob(text);
    if (!read.ok) return read;
    const before = { checkedBefore: null, scenesBefore: null };
    held = { job: read.job, checked: null, scenes: null, ...before };
    return { ok: true, job: read.job, text: writeJob(read.job) };
  },
  apply(operation) {
    const now = present();
    const done = applyOperation(now.job, operation);
    if (!done.ok) return done;
    const before = {
      checkedBefore: now.checked ?? now.checkedBefore,
      scenesBefore: now.scenes ?? now.scenesBefore,
    };
    held = { job: done.job, checked: null, scenes: null, ...before };
    return done;
  },
  check: () => checkedOf(present()).result,
  consequence(operation, priceList) {
    const now = present();
    const before = checkedOf(now);
    const done = applyOperation(now.job, operation);
    if (!done.ok) return done;
    const after = recheckedJob(before, done.job);
    const stock = stockOf(priceList);
    if (stock === null) return { ok: true, ...consequenceOf(before, after, null) };
    if (now.priced?.stock !== stock) {
      now.priced = { stock, shopping: pricedShopping(before, stock) };
    }
    const priced = { before: now.priced.shopping, after: pricedShopping(after, stock) };
    return { ok: true, ...consequenceOf(before, after, priced) };
  },
  text: () => writeJob(present().job),
  answer(name, question, progress = () => {}) {
    const answer = ANSWERS[name] as (held: Held, question: unknown, progress: unknown) => unknown;
    return answer(view(), question, progress);
  },
};

Comlink.expose(api);
