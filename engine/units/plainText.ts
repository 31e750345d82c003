/** Longest text we try to read as a quantity or the name of a wire. */
export const LONGEST_NAME_COUNT = 80;

/**
 * Text as typed, brought to one plain form: lower case, single spaces, ASCII where a sign has an
 * ASCII twin (`²` `×` `″` `′` and the many spaces). Says nothing about meaning.
 *
 * @returns null where the text is empty, too long, or holds control characters.
 */
export function plainText(text: string): string | null {
  if (text.length > LONGEST_NAME_COUNT) return null;
  const plain = text
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[\u00d7\u2715]/g, "x")
    .replace(/[\u2044\u2215]/g, "/")
    .replace(/[\u201d\u201c\u2033]/g, '"')
    .replace(/[\u2019\u2018\u2032]/g, "'")
    .replace(/[\u00f8\u2300]/g, " dia ")
    .replace(/\s+/gu, " ")
    .trim();
  const isClean = !/[\p{C}]/u.test(plain);
  return plain !== "" && isClean ? plain : null;
}
