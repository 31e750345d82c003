import type { Holder } from "@copperwright/engine";
import { ask } from "../../engine/engineClient.ts";
import { say } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";
import type { WiringChange } from "./wiringChange.ts";

export type Edited =
  | { readonly isDone: false }
  | { readonly isDone: true; readonly id: string | null };

/** One change of what joins, earths or bundles wires: the engine says how it is done, the bench does it. */
export async function wiringEdit(what: string, change: WiringChange): Promise<Edited> {
  const { operation, id, leftOut } = await ask("wiringMade", change);
  if (!(await edit(what, operation))) return { isDone: false };
  if (leftOut.length > 0) {
    say(`Not cut, because they come and go on the same side there: ${leftOut.join(", ")}.`);
  }
  return { isDone: true, id };
}

/** Takes a thing away that nothing hangs on; where something does, says what. */
export async function takeAway(what: string, holder: Holder, id: string): Promise<boolean> {
  const taken = await ask("wiringTakeAway", { holder, id });
  if (taken.ok) return edit(what, taken.operation);
  const [first] = taken.refusals;
  say(`${first?.message ?? ""} ${first?.remedy ?? ""}`.trim());
  return false;
}
