import { printParseErrorCode, visit } from "jsonc-parser";
import { type Refusal, refusal } from "../../messages/index.ts";
import { type JsonPath, jsonPointer } from "./jsonPointer.ts";
import { openJsonTree } from "./jsonTree.ts";
import type { LinesOf } from "./placesInText.ts";
import { syntaxFault } from "./syntaxFault.ts";

const MOST_SYNTAX_REFUSALS = 20;

export type JsonRead =
  | { readonly ok: true; readonly value: unknown; readonly lines: LinesOf }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/**
 * Strict JSON (RFC 8259) with the line of every value. Refused besides bad syntax: the same name twice in an object, numbers no double
 * can hold, half surrogate pairs, names that objects of the language answer to, and more values than any job has.
 * The text must have passed `scanText`: the parser recurses as deep as the brackets go.
 */
export function readJson(text: string): JsonRead {
  const syntax: Refusal[] = [];
  const tree = openJsonTree();
  visit(
    text,
    {
      onObjectBegin: (_offset, _length, startLine) => tree.begin({}, startLine + 1),
      onArrayBegin: (_offset, _length, startLine) => tree.begin([], startLine + 1),
      onObjectEnd: tree.end,
      onArrayEnd: tree.end,
      onObjectProperty: (key, _offset, _length, startLine) => tree.key(key, startLine + 1),
      onLiteralValue: (value: unknown, offset, length, startLine) =>
        tree.literal(value, text.slice(offset, offset + length), startLine + 1),
      onError: (error, _offset, _length, startLine, startCharacter) => {
        const line = startLine + 1;
        if (syntax.length >= MOST_SYNTAX_REFUSALS || syntax.at(-1)?.line === line) return;
        syntax.push(badSyntax(printParseErrorCode(error), tree.path(), line, startCharacter + 1));
      },
    },
    { disallowComments: true, allowTrailingComma: false, allowEmptyContent: false },
  );
  const refusals = syntax.length > 0 ? syntax : tree.refusals;
  if (refusals.length > 0) return { ok: false, refusals };
  return { ok: true, value: tree.root(), lines: tree.lines };
}

function badSyntax(name: string, path: JsonPath, line: number, columnIndex: number): Refusal {
  const words = syntaxFault(name);
  const place = { pointer: jsonPointer(path), line, found: words.fault };
  return refusal("json-syntax", place, { column: columnIndex, ...words });
}
