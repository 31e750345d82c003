import { printParseErrorCode, visit } from "jsonc-parser";
import { quoted, type Refusal, refusal } from "../../messages/index.ts";
import { type JsonPath, jsonPointer } from "./jsonPointer.ts";
import type { ContainerLines, LinesOf } from "./placesInText.ts";
import { isReservedName } from "./reservedNames.ts";
import { syntaxFault } from "./syntaxFault.ts";

export const LONGEST_LIST_COUNT = 20_000;
export const MOST_VALUES_COUNT = 1_000_000;
const MOST_SYNTAX_REFUSALS = 20;
const MOST_REFUSALS = 1000;

export type JsonRead =
  | { readonly ok: true; readonly value: unknown; readonly lines: LinesOf }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

interface Open {
  readonly value: Record<string, unknown> | unknown[];
  readonly lines: ContainerLines;
  key: string;
  isSkipped: boolean;
}

/**
 * Strict JSON (RFC 8259) with the line of every value. Refused besides bad syntax: the same name twice in an object, numbers no double
 * can hold, half surrogate pairs, names that objects of the language answer to, and more values than any job has.
 * The text must have passed `scanText`: the parser recurses as deep as the brackets go.
 */
export function readJson(text: string): JsonRead {
  const syntax: Refusal[] = [];
  const content: Refusal[] = [];
  const lines: LinesOf = new WeakMap();
  const stack: Open[] = [];
  let root: unknown;
  let valueCount = 0;

  const refuse = (refused: () => Refusal): void => {
    if (syntax.length === 0 && content.length < MOST_REFUSALS) content.push(refused());
  };
  const path = (): JsonPath =>
    stack.map((open) => (Array.isArray(open.value) ? open.value.length : open.key));

  const put = (value: unknown, line: number): void => {
    valueCount++;
    if (valueCount === MOST_VALUES_COUNT + 1) {
      const limitCount = MOST_VALUES_COUNT;
      const place = { pointer: "", line, found: "more values" };
      refuse(() => refusal("json-too-many-values", place, { limitCount }));
    }
    const open = stack.at(-1);
    if (open === undefined) root = value;
    else if (valueCount <= MOST_VALUES_COUNT) putInto(open, value, line, refuse, path);
  };
  const begin = (value: Open["value"], startLine: number): void => {
    put(value, startLine + 1);
    const itemLines: ContainerLines = { line: startLine + 1, items: new Map() };
    lines.set(value, itemLines);
    stack.push({ value, lines: itemLines, key: "", isSkipped: false });
  };

  visit(
    text,
    {
      onObjectBegin: (_offset, _length, startLine) => begin({}, startLine),
      onArrayBegin: (_offset, _length, startLine) => begin([], startLine),
      onObjectEnd: () => void stack.pop(),
      onArrayEnd: () => void stack.pop(),
      onObjectProperty: (key, _offset, _length, startLine) => {
        const open = stack.at(-1)!;
        open.key = key;
        const fault = faultOfKey(open, key, startLine + 1, path);
        open.isSkipped = fault !== null;
        if (fault !== null) refuse(() => fault);
      },
      onLiteralValue: (value: unknown, offset, length, startLine) => {
        const source = text.slice(offset, offset + Math.min(length, 80));
        const fault = faultOfLiteral(value, source, startLine + 1, path);
        if (fault !== null) refuse(() => fault);
        put(Object.is(value, -0) ? 0 : value, startLine + 1);
      },
      onError: (error, _offset, _length, startLine, startCharacter) => {
        const line = startLine + 1;
        if (syntax.length >= MOST_SYNTAX_REFUSALS || syntax.at(-1)?.line === line) return;
        syntax.push(badSyntax(printParseErrorCode(error), path(), line, startCharacter + 1));
      },
    },
    { disallowComments: true, allowTrailingComma: false, allowEmptyContent: false },
  );
  if (syntax.length > 0) return { ok: false, refusals: syntax };
  if (content.length > 0) return { ok: false, refusals: content };
  return { ok: true, value: root, lines };
}

function putInto(
  open: Open,
  value: unknown,
  line: number,
  refuse: (refused: () => Refusal) => void,
  path: () => JsonPath,
): void {
  if (!Array.isArray(open.value)) {
    if (open.isSkipped) return;
    open.value[open.key] = value;
    open.lines.items.set(open.key, line);
    return;
  }
  if (open.value.length < LONGEST_LIST_COUNT) {
    open.lines.items.set(open.value.length, line);
    open.value.push(value);
  } else if (!open.isSkipped) {
    open.isSkipped = true;
    const place = { pointer: jsonPointer(path().slice(0, -1)), line, found: "a longer list" };
    refuse(() => refusal("json-list-too-long", place, { limitCount: LONGEST_LIST_COUNT }));
  }
}

function faultOfKey(open: Open, key: string, line: number, path: () => JsonPath): Refusal | null {
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
  path: () => JsonPath,
): Refusal | null {
  const at = (found: string) => ({ pointer: jsonPointer(path()), line, found });
  if (typeof value === "string") {
    return hasHalfPair(value) ? refusal("json-broken-character", at(quoted(value)), {}) : null;
  }
  if (typeof value !== "number") return null;
  if (!Number.isFinite(value)) return refusal("json-number-too-big", at(source), {});
  const isLostInRounding = value === 0 && /^[^eE]*[1-9]/.test(source);
  return isLostInRounding ? refusal("json-number-too-small", at(source), {}) : null;
}

function badSyntax(name: string, path: JsonPath, line: number, column: number): Refusal {
  const words = syntaxFault(name);
  const place = { pointer: jsonPointer(path), line, found: words.fault };
  return refusal("json-syntax", place, { column, ...words });
}

/** A key as it may stand between the quotes of a message. */
const shown = (key: string): string => quoted(key).slice(1, -1);

/** True when a text holds a surrogate without its partner. */
const hasHalfPair = (text: string): boolean => /\p{Surrogate}/u.test(text);
