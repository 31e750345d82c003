const MOST_LETTERS = 90;

/** One version of a value in a few words: a removal says so, a measured value shows its figure. */
export function versionText(value: unknown): string {
  if (value === undefined || value === null) return "taken away";
  if (typeof value !== "object") return String(value);
  const figure: unknown = Reflect.get(value, "value");
  const basis: unknown = Reflect.get(value, "basis");
  if (figure !== undefined)
    return basis === undefined ? String(figure) : `${String(figure)}, ${String(basis)}`;
  const text = JSON.stringify(value);
  return text.length > MOST_LETTERS ? `${text.slice(0, MOST_LETTERS)} …` : text;
}
