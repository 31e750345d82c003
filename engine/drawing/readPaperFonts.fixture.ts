import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { type FontFaceKey, PAPER_FONT_FILES, type PaperFonts } from "./paperFonts.ts";

/** The papers' fonts from disk, for tests: the engine itself is handed bytes. */
export function readPaperFonts(): PaperFonts {
  const require = createRequire(import.meta.url);
  return Object.fromEntries(
    Object.entries(PAPER_FONT_FILES).map(([face, path]) => [
      face,
      new Uint8Array(readFileSync(require.resolve(path))),
    ]),
  ) as Record<FontFaceKey, Uint8Array>;
}
