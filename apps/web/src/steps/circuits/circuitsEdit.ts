import { ask } from "../../engine/engineClient.ts";
import { edit } from "../../store/editing.ts";
import type { CircuitsChange } from "./circuitsOperation.ts";

/** One change of the wiring: the engine says how it is done, the bench does it. */
export async function circuitsEdit(what: string, change: CircuitsChange): Promise<boolean> {
  return edit(what, await ask("circuitsChange", change));
}
