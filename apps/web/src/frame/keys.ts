import { useBench } from "../store/benchStore.ts";
import { redo, undo } from "../store/editing.ts";
import { stepBy } from "../store/route.ts";
import { openFinder } from "./finderState.ts";
import { speak } from "./speak.ts";

/** Keys of the whole bench. Single letters act only while no field has the focus, and can be switched off. */
export function installKeys(): void {
  addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey) return withControl(event);
    if (event.altKey || isTyping(event.target)) return;
    if (localStorage.getItem("copperwright-keys") === "off") return;
    const act = SINGLE[event.key];
    if (act === undefined) return;
    event.preventDefault();
    act();
  });
}

const SINGLE: Readonly<Record<string, () => void>> = {
  "[": () => stepBy(-1),
  "]": () => stepBy(1),
  "/": () => openFinder(),
  w: () => speak(),
  Escape: () => useBench.setState({ chosen: null, sum: null, said: null }),
};

function withControl(event: KeyboardEvent): void {
  if (event.key.toLowerCase() !== "z" || isTyping(event.target)) return;
  event.preventDefault();
  void (event.shiftKey ? redo() : undo());
}

function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && target.closest("input, select, textarea") !== null;
}
