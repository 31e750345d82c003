/** A text by what it shares with the one before it: so many signs at its beginning and end, and what stands between them. */
export interface TextDelta {
  readonly head: number;
  readonly tail: number;
  readonly middle: string;
}

/** Two revisions of a job differ in a few lines: a backup holds those, not the whole text each time. */
export function textDelta(before: string, text: string): TextDelta {
  const shorter = Math.min(before.length, text.length);
  let head = 0;
  while (head < shorter && before.charCodeAt(head) === text.charCodeAt(head)) head++;
  let tail = 0;
  const last = (of: string): number => of.charCodeAt(of.length - 1 - tail);
  while (tail < shorter - head && last(before) === last(text)) tail++;
  return { head, tail, middle: text.slice(head, text.length - tail) };
}

/** The text again; null where the text before is too short to have been shared from. */
export function textFromDelta(before: string, { head, tail, middle }: TextDelta): string | null {
  if (head + tail > before.length) return null;
  return before.slice(0, head) + middle + before.slice(before.length - tail);
}
