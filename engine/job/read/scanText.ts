import { type Refusal, refusal } from "../../messages/index.ts";

export const LARGEST_BYTES = 20_000_000;
export const DEEPEST_COUNT = 32;

const QUOTE = 34;
const BACKSLASH = 92;
const NEWLINE = 10;
const RETURN = 13;

/**
 * First look at a text, before anything parses it: its size in UTF-8 bytes and how deep its brackets go.
 * Linear in the text and without recursion, so that no text can exhaust the stack or the memory.
 */
export function scanText(text: string): Refusal | null {
  let byteCount = 0;
  let depthCount = 0;
  let line = 1;
  let isInString = false;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    byteCount += utf8Bytes(code);
    if (byteCount > LARGEST_BYTES) return tooLarge();
    if (code === NEWLINE || (code === RETURN && text.charCodeAt(i + 1) !== NEWLINE)) line++;
    if (isInString) {
      if (code === BACKSLASH) i++;
      else if (code === QUOTE || code === NEWLINE) isInString = false;
    } else if (code === QUOTE) isInString = true;
    else if (code === 0x7b || code === 0x5b) depthCount++;
    else if (code === 0x7d || code === 0x5d) depthCount--;
    if (depthCount > DEEPEST_COUNT) return tooDeep(line);
  }
  return null;
}

/** Bytes one UTF-16 unit adds to the text as UTF-8; each half of a surrogate pair counts two of the four. */
function utf8Bytes(code: number): number {
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code >= 0xd800 && code <= 0xdfff ? 2 : 3;
}

function tooLarge(): Refusal {
  const place = { pointer: "", line: null, found: "a longer text" };
  return refusal("text-too-large", place, { limitMB: LARGEST_BYTES / 1_000_000 });
}

function tooDeep(line: number): Refusal {
  const place = { pointer: "", line, found: `bracket ${DEEPEST_COUNT + 1}` };
  return refusal("text-too-deep", place, { limitCount: DEEPEST_COUNT });
}
