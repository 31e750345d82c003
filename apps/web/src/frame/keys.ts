import { useBench } from "../store/benchStore.ts";
import { redo, undo } from "../store/editing.ts";
import { stepBy } from "../store/route.ts";
import { openFinder } from "./finderState.ts";
import { closeKeys, openKeys } from "./keysState.ts";
import { isTyping, type ShortcutName, shortcutOf } from "./shortcuts.ts";
import { speak } from "./speak.ts";

/** Keys of the whole bench. Single characters act only while no field has the focus, and can be changed and switched off. */
export function installKeys(): void {
  addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey) return withControl(event);
    if (event.key === "Escape" && !event.altKey && !isTyping(event.target)) {
      closeKeys();
      useBench.setState({ chosen: null, sum: null, said: null });
      return;
    }
    const name = shortcutOf(event);
    const act = name === null ? undefined : ACTS[name];
    if (act === undefined) return;
    event.preventDefault();
    act();
  });
}

/** Those of one step or one drawing are heard there. */
const ACTS: Readonly<Partial<Record<ShortcutName, () => void>>> = {
  "step-before": () => stepBy(-1),
  "step-after": () => stepBy(1),
  find: () => openFinder(),
  read: () => speak(),
  keys: () => openKeys(),
};

function withControl(event: KeyboardEvent): void {
  if (event.key.toLowerCase() !== "z" || isTyping(event.target)) return;
  event.preventDefault();
  void (event.shiftKey ? redo() : undo());
}
