export type PictureKind = "jpeg" | "png" | "webp" | "avif";

const text = (bytes: Uint8Array, from: number, to: number): string =>
  String.fromCharCode(...bytes.subarray(from, to));

/** Kind of picture by its first bytes, whatever it is called; null for anything else, drawings in text (SVG) and pages among it. */
export function pictureKind(bytes: Uint8Array): PictureKind | null {
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return "jpeg";
  if (text(bytes, 0, 8) === "\x89PNG\r\n\x1a\n") return "png";
  if (text(bytes, 0, 4) === "RIFF" && text(bytes, 8, 12) === "WEBP") return "webp";
  if (text(bytes, 4, 8) === "ftyp" && /^avi[fs]$/.test(text(bytes, 8, 12))) return "avif";
  return null;
}
