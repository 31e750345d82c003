import type { LoadChange } from "@copperwright/engine";
import { create } from "zustand";
import type { SupplyView } from "./supplyAnswers.ts";

export const TOPICS = ["charge", "ride", "start", "stand", "lamps", "heat", "convert"] as const;
export type Topic = (typeof TOPICS)[number];

/** What is looked at, and what somebody thinks of changing. Nothing of it is part of the job. */
export interface SupplyState {
  readonly jobKey: string;
  /** Null on a phone until a question is opened. */
  readonly topic: Topic | null;
  /** Lighting state looked at; null: the first. */
  readonly lighting: string | null;
  readonly changes: readonly LoadChange[];
  readonly trace: { readonly name: string; readonly text: string } | null;
  readonly view: SupplyView | null;
  readonly isStale: boolean;
  readonly fault: string | null;
}

const NONE = {
  topic: null,
  lighting: null,
  changes: [],
  trace: null,
  view: null,
  isStale: true,
  fault: null,
} satisfies Omit<SupplyState, "jobKey">;

export const useSupply = create<SupplyState>()(() => ({ jobKey: "", ...NONE }));

/** Another job: what was thought of about the last one is let go. */
export function supplyOf(jobKey: string): void {
  if (useSupply.getState().jobKey !== jobKey) useSupply.setState({ jobKey, ...NONE });
}

export const openTopic = (topic: Topic | null): void => useSupply.setState({ topic });

export const think = (change: LoadChange): void =>
  useSupply.setState(({ changes }) => ({
    changes: [...changes.filter((one) => !isSame(one, change)), change],
  }));

export const unthink = (change: LoadChange): void =>
  useSupply.setState(({ changes }) => ({ changes: changes.filter((one) => one !== change) }));

/** A lamp is swapped once; of things added there may be two alike, told apart by their names. */
const isSame = (a: LoadChange, b: LoadChange): boolean =>
  a.kind === "led" && b.kind === "led" ? a.part === b.part : false;
