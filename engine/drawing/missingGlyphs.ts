import { unsettableCharacters } from "./fontRuns.ts";
import type { DrawingDocument, Mark, TextMark } from "./scene.ts";

/** A character that could not be set and was replaced, and where. */
export interface MissingGlyph {
  readonly character: string;
  readonly text: string;
  /** From 1. */
  readonly pageNumber: number;
}

/** Characters of a document that no face has: each was drawn as a replacement, so the reader must be told. */
export function missingGlyphs(document: DrawingDocument): MissingGlyph[] {
  return document.pages.flatMap((page, i) =>
    textMarks(page.marks).flatMap(({ text, weight }) =>
      unsettableCharacters(text, weight).map((character) => ({
        character,
        text,
        pageNumber: i + 1,
      })),
    ),
  );
}

/** Every text among marks, groups opened; letters inside symbols are ours and left out. */
export function textMarks(marks: readonly Mark[]): TextMark[] {
  return marks.flatMap((mark) => {
    if (mark.kind === "group") return textMarks(mark.marks);
    return mark.kind === "text" ? [mark] : [];
  });
}
