import type { Law } from "../network/index.ts";
import type { ElementKind } from "./operateResult.ts";

/** What decides the law of an element in a state. */
export type ElementRole =
  | { readonly role: "fixed" }
  | { readonly role: "switch"; readonly part: string; readonly closedIn: readonly string[] }
  | { readonly role: "relay"; readonly part: string; readonly closedWhen: "pulled" | "released" }
  | { readonly role: "flasher" }
  | { readonly role: "cutOut"; readonly regulator: string }
  | { readonly role: "supply"; readonly generator: string }
  | { readonly role: "exciter"; readonly generator: string }
  /** Alternating source and clamp: idle but when their own net is solved. */
  | { readonly role: "acSource"; readonly generator: string; readonly windingIndex: number }
  | { readonly role: "acClamp"; readonly regulator: string };

/** An element before it is numbered; `from` and `to` are names of nodes. `law` is that of the closed contact. */
export interface ElementDraft {
  readonly kind: ElementKind;
  readonly of: string;
  readonly from: string;
  readonly to: string;
  readonly law: Law;
  readonly role: ElementRole;
  /** What else `open` and `extraOhm` may call it by, beside `of`. */
  readonly controlledBy?: readonly string[];
  /** Part of what it works, as a box's output is: volts lost in it are no loss of the loom. */
  readonly ofLoad?: true;
}

/** One element of the network, numbered. */
export interface JobElement extends ElementDraft {
  /** Letter of the simulator's device and a number no other element has: R17. */
  readonly id: string;
  readonly nodes: readonly [number, number];
}

export const FIXED: ElementRole = { role: "fixed" };

/** An open contact or a broken wire, Ω; the same leak as from every node to the reference. */
export const OPEN_OHM = 1e9;
export const OPEN: Law = { kind: "ohm", ohm: OPEN_OHM };

/** A source that gives nothing: the leak of an open contact, written as a curve. */
export const IDLE_CURVE: Law = {
  kind: "curve",
  points: [
    [-1, -1 / OPEN_OHM],
    [1, 1 / OPEN_OHM],
  ],
};

const LETTERS = { ohm: "R", emf: "V", filament: "B", curve: "B", diode: "D" } as const;

/** The letter a circuit simulator wants its device named by. */
export const letterOf = (law: Law): string => LETTERS[law.kind];
