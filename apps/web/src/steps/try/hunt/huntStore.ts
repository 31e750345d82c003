import type { MeterReading } from "@copperwright/engine";
import { create } from "zustand";
import type { Exercise } from "./huntApi.ts";

/** What a person at the machine sees, hears and reads; nothing else comes from the server. */
export interface HuntRead {
  readonly lamps: readonly {
    readonly part: string;
    readonly filament: string;
    readonly lit: boolean;
    readonly relativeLight: number;
  }[];
  readonly loads: readonly {
    readonly part: string;
    readonly element: string;
    readonly works: boolean;
  }[];
  readonly relays: readonly { readonly part: string; readonly pulled: boolean }[];
  readonly fusesGone: readonly string[];
  readonly reading: MeterReading;
  readonly minutes: number;
}

export interface Guessed {
  readonly isRight: boolean;
  readonly isNear: boolean;
  readonly minutes: number;
  readonly words: string;
}

export interface Hunt {
  readonly exercise: Exercise | null;
  readonly read: HuntRead | null;
  readonly trouble: string | null;
  readonly guesses: readonly Guessed[];
  /** Fuses that have gone in this hunt and were not replaced. */
  readonly pulled: readonly string[];
}

export const useHunt = create<Hunt>()(() => ({
  exercise: null,
  read: null,
  trouble: null,
  guesses: [],
  pulled: [],
}));

export function endHunt(): void {
  useHunt.setState({ exercise: null, read: null, trouble: null, guesses: [], pulled: [] });
}
