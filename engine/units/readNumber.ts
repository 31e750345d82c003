/**
 * Reads a plain number as people write it: `1.5`, `1,5`, `.012`, `+3`, `−2`.
 *
 * @returns the number, or null where the text is anything else. `1,600` is null: it is 1.6 to
 *          some readers and 1600 to others.
 */
export function readNumber(text: string): number | null {
  const plain = text.replace("\u2212", "-");
  if (!/^[+-]?(\d{1,9}([.,]\d{0,9})?|[.,]\d{1,9})$/.test(plain)) return null;
  if (/^[+-]?[1-9]\d{0,2},\d{3}$/.test(plain)) return null;
  return Number(plain.replace(",", "."));
}
