import {
  type Conversion,
  type ConvertTo,
  conversionCost,
  conversionOf,
  type Job,
  type LoadChange,
  type Operation,
  type PricedShopping,
  type Refusal,
  readStockList,
  readTrace,
  type SupplyAnswer,
  writeJob,
} from "@copperwright/engine";
import { placeNames, supplyAnswer, withLedLamps } from "@copperwright/engine/scenes";
import type { Held } from "../../../engine/held.ts";

export interface SupplyQuestion {
  readonly changes: readonly LoadChange[];
  /** The rider's own ride as the text of a CSV file; null: the table's rides. */
  readonly traceText: string | null;
}

export type SupplyView =
  | {
      readonly ok: true;
      readonly answer: SupplyAnswer;
      /** The same machine without what somebody thinks of; null: nothing is thought of. */
      readonly before: SupplyAnswer | null;
      /** What each step of a current's way is called. */
      readonly names: Readonly<Record<string, string>>;
    }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

export type ConversionView =
  | {
      readonly ok: true;
      readonly plan: Omit<Conversion, "job">;
      /** The converted job as a document. */
      readonly text: string;
      readonly cost: PricedShopping | null;
    }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** The answer for the job as it is, kept beside that job: what is thought of changes with every tap, the job does not. */
const plainAnswers = new WeakMap<Job, SupplyAnswer>();

/** Moments of a ride that a screen can show apart. */
const MOST_MOMENTS_COUNT = 240;

export const supplyAnswers = {
  /** Will it charge, will it start, will it last: as it is, and with what somebody thinks of. */
  supplyView(held: Held, { changes, traceText }: SupplyQuestion): SupplyView {
    const { job, conductors } = held.checked().design;
    const plain = plainAnswers.get(job) ?? supplyAnswer(job, conductors);
    plainAnswers.set(job, plain);
    const read = traceText === null ? null : traceOf(plain, traceText);
    if (read?.ok === false) return read;
    const trace = read?.steps;
    const isPlain = changes.length === 0 && trace === undefined;
    const asked = trace === undefined ? { changes } : { changes, trace };
    const answer = isPlain ? plain : supplyAnswer(job, conductors, asked);
    return {
      ok: true,
      answer: thinned(answer),
      before: changes.length === 0 ? null : thinned(plain),
      names: namesOf(held, answer),
    };
  },

  /** The job on other volts or the other earth: part by part, proved, and priced where a shop's list is given. */
  supplyConversion(
    held: Held,
    { to, stockText }: { readonly to: ConvertTo; readonly stockText: string | null },
  ): ConversionView {
    const stock = stockText === null ? null : readStockList(stockText);
    if (stock?.ok === false) return stock;
    const conversion = conversionOf(held.job, to);
    const { job, ...plan } = conversion;
    const cost = stock === null ? null : conversionCost(conversion, stock.stock);
    return { ok: true, plan, text: writeJob(job), cost };
  },

  /** Lamps swapped for light-emitting diodes as one act on the job; null: no lamp is among what is thought of. */
  supplyLedAct(held: Held, { changes }: { readonly changes: readonly LoadChange[] }): Operation {
    const swapped = new Map(withLedLamps(held.job, changes).parts.map((part) => [part.id, part]));
    const operations = changes.flatMap((change): Operation[] => {
      const part = change.kind === "led" ? swapped.get(change.part) : undefined;
      if (part?.kind !== "lamp") return [];
      const set = (name: string, value: unknown): Operation => ({
        op: "set",
        list: "parts",
        id: part.id,
        path: [name],
        value,
      });
      return [set("source", part.source), set("filaments", part.filaments)];
    });
    return { op: "batch", name: "Lamps swapped for LED", operations };
  },
};

/** Where the trace names no lights, the machine is ridden in the state it is usually ridden in. */
function traceOf({ balances }: SupplyAnswer, text: string) {
  const states = balances.map(({ state }) => state);
  return readTrace(text, states, states[0] ?? "off");
}

function thinned(answer: SupplyAnswer): SupplyAnswer {
  const rides = answer.rides.map((ride) => {
    const every = Math.max(1, Math.ceil(ride.rows.length / MOST_MOMENTS_COUNT));
    const last = ride.rows.length - 1;
    return { ...ride, rows: ride.rows.filter((_, k) => k % every === 0 || k === last) };
  });
  return { ...answer, rides };
}

function namesOf(
  { job }: Held,
  { cranking, lampFall, coilsLeftOn }: SupplyAnswer,
): Record<string, string> {
  const nameOf = placeNames(job);
  const falls = [...(cranking?.rows ?? []).map(({ fall }) => fall), lampFall?.fall ?? []];
  const coils = coilsLeftOn?.coils ?? [];
  const all = [...falls.flat().map(({ of }) => of), ...coils.map(({ load }) => load)];
  return Object.fromEntries(all.map((of) => [of, nameOf(of)]));
}
