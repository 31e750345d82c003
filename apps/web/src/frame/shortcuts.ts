import { create } from "zustand";

/** What a single key does. Keys with Control, Escape, Enter and the arrows are no single characters and stay as they are. */
export const SHORTCUTS = [
  { name: "step-before", key: "[", word: "the step before" },
  { name: "step-after", key: "]", word: "the step after" },
  { name: "find", key: "/", word: "find anything" },
  { name: "read", key: "w", word: "read the working aloud" },
  { name: "keys", key: "?", word: "show these keys" },
  { name: "zoom-in", key: "+", word: "larger, on a drawing" },
  { name: "zoom-out", key: "-", word: "smaller, on a drawing" },
  { name: "zoom-fit", key: "0", word: "all of it, on a drawing" },
  { name: "red-lead", key: "r", word: "red lead here, in Try" },
  { name: "black-lead", key: "b", word: "black lead here, in Try" },
  { name: "flasher", key: "f", word: "flasher stands or goes, in Try" },
  { name: "next-finding", key: ".", word: "next finding, in Proof" },
  { name: "former-finding", key: ",", word: "finding before, in Proof" },
] as const;

export type ShortcutName = (typeof SHORTCUTS)[number]["name"];

export interface Shortcuts {
  readonly isOn: boolean;
  /** Key of each; empty: none. */
  readonly keys: Readonly<Record<ShortcutName, string>>;
}

const KEPT = "copperwright-keys";

const FIRST = Object.fromEntries(
  SHORTCUTS.map(({ name, key }) => [name, key]),
) as Shortcuts["keys"];

/** Kept on the device: keys are of the hand at this keyboard, not of the job. */
export const useShortcuts = create<Shortcuts>()(() => keptShortcuts());

function keptShortcuts(): Shortcuts {
  const text = typeof localStorage === "undefined" ? null : localStorage.getItem(KEPT);
  if (text === null) return { isOn: true, keys: FIRST };
  return readShortcuts(text);
}

/** What was kept; what cannot be read is as it was at first. `off` is what earlier versions kept. */
export function readShortcuts(text: string): Shortcuts {
  if (text === "off") return { isOn: false, keys: FIRST };
  try {
    const kept: unknown = JSON.parse(text);
    const { isOn, keys } = kept as Shortcuts;
    const own = SHORTCUTS.map(({ name, key }) => {
      const now: unknown = keys[name];
      return [name, typeof now === "string" && now.length <= 1 ? now : key] as const;
    });
    return { isOn: isOn !== false, keys: Object.fromEntries(own) as Shortcuts["keys"] };
  } catch {
    return { isOn: true, keys: FIRST };
  }
}

function keep(next: Shortcuts): void {
  useShortcuts.setState(next);
  localStorage.setItem(KEPT, JSON.stringify(next));
}

export function turnShortcuts(isOn: boolean): void {
  keep({ ...useShortcuts.getState(), isOn });
}

export function firstShortcuts(): void {
  keep({ isOn: true, keys: FIRST });
}

/** Gives a shortcut another key, or none; what is in the way, in words, where it cannot be. */
export function putShortcut(name: ShortcutName, key: string): string | null {
  const now = useShortcuts.getState();
  const fault = faultOfKey(now, name, key);
  if (fault === null) keep({ ...now, keys: { ...now.keys, [name]: key.toLowerCase() } });
  return fault;
}

/** Why a key cannot be given to a shortcut; null: it can. */
export function faultOfKey({ keys }: Shortcuts, name: ShortcutName, key: string): string | null {
  if (key === "") return null;
  if ([...key].length !== 1) return `"${key}" is not one character. Press one key.`;
  if (key.trim() === "")
    return "The space bar ticks and operates what has the focus. Press another key.";
  const other = SHORTCUTS.find((one) => one.name !== name && keys[one.name] === key.toLowerCase());
  return other === undefined
    ? null
    : `"${key}" is taken: ${other.word}. Press another key, or empty that one first.`;
}

/** The shortcut a pressed key is; null: none, or single keys are off, or something is being typed. */
export function shortcutOf(event: KeyboardEvent): ShortcutName | null {
  if (event.ctrlKey || event.metaKey || event.altKey || isTyping(event.target)) return null;
  return nameOfKey(useShortcuts.getState(), event.key);
}

export function nameOfKey({ isOn, keys }: Shortcuts, key: string): ShortcutName | null {
  if (!isOn || key === "") return null;
  const pressed = key.toLowerCase();
  const own = SHORTCUTS.find(({ name }) => keys[name] === pressed)?.name ?? null;
  // The plus of a keyboard shares its key with the equals sign.
  return own ?? (pressed === "=" && keys["zoom-in"] === "+" ? "zoom-in" : null);
}

export function isTyping(target: EventTarget | null): boolean {
  return target instanceof HTMLElement && target.closest("input, select, textarea") !== null;
}
