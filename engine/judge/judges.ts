import type { Judge } from "./judge.ts";

/** Every question asked of a finished design, in the order people ask them. */
export const judges: readonly Judge[] = [];
