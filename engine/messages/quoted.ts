const LONGEST_COUNT = 60;

/** Text from a document as it may stand in a message: in quotes, control characters written out, cut at 60 characters. */
export function quoted(text: string): string {
  const cut = text.length > LONGEST_COUNT ? `${text.slice(0, LONGEST_COUNT)}…` : text;
  return JSON.stringify(cut);
}

/** Any value of a document in a few words. */
export function valueInWords(value: unknown): string {
  if (value === undefined) return "nothing";
  if (value === null) return "null";
  if (typeof value === "string") return quoted(value);
  if (typeof value === "number" || typeof value === "boolean") return String(value);
  if (Array.isArray(value)) return `a list of ${value.length}`;
  return "a group of fields in braces";
}
