import { FONT_METRICS } from "./fontMetrics.generated.ts";
import { type FontFaceKey, type FontWeight, facesOfWeight } from "./paperFonts.ts";

/** Neighbouring characters set in one face. */
export interface FontRun {
  readonly face: FontFaceKey;
  readonly text: string;
  /** Width for a capital height of 1 mm. */
  readonly widthMm: number;
}

/** Stands for a character no face can set. */
export const REPLACEMENT = "\uFFFD";

const INVISIBLE = /\p{Cf}|[\u2028\u2029]|\p{Variation_Selector}/gu;
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for
const CONTROL = /[\u0000-\u001F\u007F-\u009F]/g;
const COMBINING = /^\p{M}$/u;

const widthsOfFace = new Map(
  Object.entries(FONT_METRICS).map(([face, { runs }]) => {
    const widths = new Map<number, number>();
    for (const [first, ...advances] of runs) {
      advances.forEach((advance, i) => {
        widths.set(first! + i, advance);
      });
    }
    return [face as FontFaceKey, widths] as const;
  }),
);

const WEIGHTS: readonly FontWeight[] = [400, 600, 700, 800];
const FIRST_PLAIN = 0x20;
const LAST_PLAIN = 0xff;
const SOFT_HYPHEN = 0xad;

/** Widths of the plain letters (basic Latin and its supplement) of a weight for a capital height of 1 mm, by code point; not a number where it has none. */
const plainWidthsMm = new Map(
  WEIGHTS.map((weight) => {
    const face: FontFaceKey = `latin${weight}`;
    const widths = widthsOfFace.get(face)!;
    const { capHeight } = FONT_METRICS[face];
    const ofLetter = (_: unknown, at: number): number =>
      at < FIRST_PLAIN || at === SOFT_HYPHEN
        ? Number.NaN
        : (widths.get(at) ?? Number.NaN) / capHeight;
    return [weight, Float64Array.from({ length: LAST_PLAIN + 1 }, ofLetter)] as const;
  }),
);

/** Width of text of plain letters for a capital height of 1 mm; null where a letter is none. */
export function plainWidthMm(text: string, weight: FontWeight): number | null {
  const widthsMm = plainWidthsMm.get(weight)!;
  let sumMm = 0;
  for (let i = 0; i < text.length; i++) {
    sumMm += widthsMm[text.charCodeAt(i)] ?? Number.NaN;
  }
  return Number.isNaN(sumMm) ? null : sumMm;
}

/** Text as it is set: composed, without invisible marks, controls turned into spaces. */
export const settableText = (text: string): string =>
  text.normalize("NFC").replace(INVISIBLE, "").replace(CONTROL, " ");

/** Letters with the accents that ride on them: such a cluster stays in one face. */
function clusters(text: string): string[] {
  const found: string[] = [];
  for (const character of text) {
    if (COMBINING.test(character) && found.length > 0) found[found.length - 1] += character;
    else found.push(character);
  }
  return found;
}

function faceFor(cluster: string, faces: readonly FontFaceKey[]): FontFaceKey | undefined {
  const codePoints = [...cluster].map((character) => character.codePointAt(0)!);
  return faces.find((face) => codePoints.every((at) => widthsOfFace.get(face)!.has(at)));
}

/** Width of characters known to be in the face, for a capital height of 1 mm. */
function widthInFace(cluster: string, face: FontFaceKey): number {
  const widths = widthsOfFace.get(face)!;
  let units = 0;
  for (const character of cluster) units += widths.get(character.codePointAt(0)!)!;
  return units / FONT_METRICS[face].capHeight;
}

/**
 * Which face sets which characters: the first of the weight's faces that has them. What none has becomes a visible replacement.
 */
export function fontRuns(text: string, weight: FontWeight): FontRun[] {
  const plainMm = plainWidthMm(text, weight);
  if (plainMm !== null) {
    return text === "" ? [] : [{ face: `latin${weight}`, text, widthMm: plainMm }];
  }
  const faces = facesOfWeight(weight);
  const runs: { face: FontFaceKey; text: string; widthMm: number }[] = [];
  for (const cluster of clusters(settableText(text))) {
    const found = faceFor(cluster, faces);
    const set = found ? cluster : REPLACEMENT;
    const face = found ?? faces.at(-1)!;
    const last = runs.at(-1);
    const widthMm = widthInFace(set, face);
    if (last?.face === face) {
      last.text += set;
      last.widthMm += widthMm;
    } else runs.push({ face, text: set, widthMm });
  }
  return runs;
}

/** Characters of a text that no face of the weight can set, each once, in order of appearance. */
export function unsettableCharacters(text: string, weight: FontWeight): string[] {
  const faces = facesOfWeight(weight);
  return [...new Set(clusters(settableText(text)).filter((each) => !faceFor(each, faces)))];
}
