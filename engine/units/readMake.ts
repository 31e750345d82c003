import type { WireName } from "./wireName.ts";

/** Letters by which cable makes are known, and the family each belongs to. */
const familyByLetters: Readonly<Record<string, string>> = {
  gpt: "gpt",
  hdt: "hdt",
  twp: "twp",
  sxl: "sxl",
  gxl: "gxl",
  txl: "txl",
  av: "av",
  avs: "avs",
  avss: "avss",
  jaso: "jaso",
  flry: "flry",
  "flry-a": "flry-a",
  "flry-b": "flry-b",
  flrya: "flry-a",
  flryb: "flry-b",
  fly: "fly",
  flr2x: "flr2x",
};

/**
 * Reads a make by its letters: `GXL 16`, `16 AWG GXL`, `AV 0.85`, `AVS1.25f`, `JASO`.
 *
 * @returns null where no such letters stand at either end.
 */
export function readMake(text: string): { readonly ok: true; readonly name: WireName } | null {
  const bare = text
    .replace(/^jaso (?=avs{0,2}\b|avs{0,2}\d)/, "")
    .replace(/^sae (?=[a-z]{3}\b)/, "");
  const before =
    /^([a-z]{2,5}\d?x?(?:-[ab])?) ?-?(\d{1,2}(?:[.,]\d{1,2})?f?)?(?: ?(?:awg|mm2))?$/.exec(bare);
  const after = /^(\d{1,2}(?:[.,]\d{1,2})?f?) ?(?:awg|mm2)? ([a-z]{2,5}(?:-[ab])?)$/.exec(bare);
  const letters = before?.[1] ?? after?.[2];
  if (letters === undefined || !Object.hasOwn(familyByLetters, letters)) return null;
  const size = (before === null ? after?.[1] : before[2])?.replace(",", ".") ?? null;
  return { ok: true, name: { kind: "make", family: familyByLetters[letters]!, size } };
}
