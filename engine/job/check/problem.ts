import {
  type Refusal,
  type RefusalCode,
  type RefusalWords,
  refusal,
} from "../../messages/index.ts";
import { type JsonPath, jsonPointer } from "../read/jsonPointer.ts";

/** Something wrong at a place of the document. Its sentence is made only when it is shown, for a file may hold thousands. */
export interface Problem {
  readonly path: JsonPath;
  readonly refusal: (line: number | null) => Refusal;
}

export function problem<Code extends RefusalCode>(
  code: Code,
  path: JsonPath,
  found: string,
  words: () => RefusalWords<Code>,
): Problem {
  const pointer = jsonPointer(path);
  return { path, refusal: (line) => refusal(code, { pointer, line, found }, words()) };
}
