import { quoted, type Refusal, refusal } from "../../messages/index.ts";
import { type JsonPath, jsonPointer } from "./jsonPointer.ts";
import type { ContainerLines, LinesOf } from "./placesInText.ts";
import { isReservedName } from "./reservedNames.ts";

export const LONGEST_LIST_COUNT = 20_000;
export const MOST_VALUES_COUNT = 1_000_000;
const MOST_REFUSALS = 1000;

interface Open {
  readonly value: Record<string, unknown> | unknown[];
  readonly lines: ContainerLines;
  key: string;
  isSkipped: boolean;
}

type Refuse = (refused: Refusal) => void;
type PathNow = () => JsonPath;

/** A JSON text being read: what has come so far, and what of it cannot stand. */
export interface JsonTree {
  readonly root: () => unknown;
  readonly lines: LinesOf;
  readonly refusals: readonly Refusal[];
  readonly path: PathNow;
  /** An object or list begins. False: there are too many values already, and what is in it need not be read. */
  readonly begin: (value: Record<string, unknown> | unknown[], line: number) => boolean;
  readonly end: () => void;
  readonly key: (key: string, line: number) => void;
  readonly literal: (value: unknown, source: string, line: number) => void;
}

/** An empty tree to put the values of one text into, in the order in which they stand. */
export function openJsonTree(): JsonTree {
  const refusals: Refusal[] = [];
  const lines: LinesOf = new WeakMap();
  const stack: Open[] = [];
  let root: unknown;
  let valueCount = 0;

  const refuse: Refuse = (refused) => {
    if (refusals.length < MOST_REFUSALS) refusals.push(refused);
  };
  // A list that holds an open container already counts it; the innermost one does not yet count what is being read.
  const path: PathNow = () =>
    stack.map((open, k) => {
      if (!Array.isArray(open.value)) return open.key;
      return k === stack.length - 1 ? open.value.length : open.value.length - 1;
    });
  const put = (value: unknown, line: number): void => {
    valueCount++;
    if (valueCount === MOST_VALUES_COUNT + 1) {
      const place = { pointer: "", line, found: "more values" };
      refuse(refusal("json-too-many-values", place, { limitCount: MOST_VALUES_COUNT }));
    }
    const open = stack.at(-1);
    if (open === undefined) root = value;
    else if (valueCount <= MOST_VALUES_COUNT) putInto(open, value, line, refuse, path);
  };
  const begin: JsonTree["begin"] = (value, line) => {
    put(value, line);
    const open = { value, lines: { line, items: new Map() }, key: "", isSkipped: false };
    stack.push(open);
    if (valueCount > MOST_VALUES_COUNT) return false;
    lines.set(value, open.lines);
    return true;
  };
  const key: JsonTree["key"] = (name, line) => {
    const open = stack.at(-1)!;
    open.key = name;
    const fault = faultOfKey(open, name, line, path);
    const isFull = open.lines.items.size >= LONGEST_LIST_COUNT && open.isSkipped;
    open.isSkipped = fault !== null || isFull;
    if (fault !== null) refuse(fault);
  };
  const literal: JsonTree["literal"] = (value, source, line) => {
    const fault = faultOfLiteral(value, source, line, path);
    if (fault !== null) refuse(fault);
    put(Object.is(value, -0) ? 0 : value, line);
  };
  const end = (): void => void stack.pop();
  return { root: () => root, lines, refusals, path, begin, end, key, literal };
}

function putInto(open: Open, value: unknown, line: number, refuse: Refuse, path: PathNow): void {
  if (open.isSkipped) return;
  const { value: holder, lines } = open;
  if (lines.items.size >= LONGEST_LIST_COUNT) {
    open.isSkipped = true;
    const place = { pointer: jsonPointer(path().slice(0, -1)), line, found: "more items" };
    refuse(refusal("json-list-too-long", place, { limitCount: LONGEST_LIST_COUNT }));
  } else if (Array.isArray(holder)) {
    lines.items.set(holder.length, line);
    holder.push(value);
  } else {
    lines.items.set(open.key, line);
    holder[open.key] = value;
  }
}

function faultOfKey(open: Open, key: string, line: number, path: PathNow): Refusal | null {
  const at = () => ({ pointer: jsonPointer(path()), line, found: quoted(key) });
  if (isReservedName(key)) return refusal("json-reserved-name", at(), { key });
  if (Object.hasOwn(open.value, key)) {
    const firstLine = open.lines.items.get(key) ?? open.lines.line;
    return refusal("json-duplicate-key", at(), { key: shown(key), firstLine });
  }
  return hasHalfPair(key) ? refusal("json-broken-character", at(), {}) : null;
}

function faultOfLiteral(
  value: unknown,
  source: string,
  line: number,
  path: PathNow,
): Refusal | null {
  const at = (found: string) => ({ pointer: jsonPointer(path()), line, found: found.slice(0, 80) });
  if (typeof value === "string") {
    return hasHalfPair(value) ? refusal("json-broken-character", at(quoted(value)), {}) : null;
  }
  if (typeof value !== "number") return null;
  if (!Number.isFinite(value)) return refusal("json-number-too-big", at(source), {});
  const isLostInRounding = value === 0 && /^[^eE]*[1-9]/.test(source);
  return isLostInRounding ? refusal("json-number-too-small", at(source), {}) : null;
}

/** A key as it may stand between the quotes of a message. */
const shown = (key: string): string => quoted(key).slice(1, -1);

/** True when a text holds a surrogate without its partner. */
const hasHalfPair = (text: string): boolean => /\p{Surrogate}/u.test(text);
