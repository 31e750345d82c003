import type { Palette } from "./palette.ts";
import { palettes } from "./palette.ts";
import type { PaperFonts } from "./paperFonts.ts";
import { pdfContent } from "./pdfContent.ts";
import { pdfFaces, type ReadFaces } from "./pdfFaces.ts";
import type { DrawingDocument, Page } from "./scene.ts";
import { sfntFromWoff } from "./sfntFromWoff.ts";

export interface PdfOptions {
  /** Absent: print. */
  readonly palette?: Palette | undefined;
  /** Faces carried from one document to the next, of the same font bytes; absent: each document reads them anew. */
  readonly read?: ReadFaces | undefined;
}

/** Points of a PDF in a millimetre: 72 to the inch of 25.4 mm. */
const POINTS_PER_MM = 72 / 25.4;

/**
 * A document as PDF bytes: vector drawing at true scale, subset fonts embedded, text that can be searched, an outline.
 * Dates come from the document, so the same document gives the same bytes.
 *
 * @param fonts  bytes of every face in `PAPER_FONT_FILES`
 * @throws  where a font cannot be read or lacks a glyph its metrics promise; what no face can set is listed by `missingGlyphs`
 */
export async function documentToPdf(
  document: DrawingDocument,
  fonts: PaperFonts,
  options: PdfOptions = {},
): Promise<Uint8Array> {
  const { palette = palettes.print, read = new Map() } = options;
  const pdf = await startPdf(document);
  const finished = collectBytes(pdf);
  for (const [name, bytes] of Object.entries(fonts)) {
    pdf.registerFont(name, (await sfntFromWoff(bytes)) as unknown as string);
  }
  const faceOf = pdfFaces(pdf, read);
  const outline = new Map<string, PDFKit.PDFOutline>();
  for (const page of document.pages) {
    pdf.addPage({
      size: [page.widthMm * POINTS_PER_MM, page.heightMm * POINTS_PER_MM],
      margin: 0,
    });
    addBookmark(pdf, page, outline);
    pdf.save().scale(POINTS_PER_MM);
    pdf.addContent(pdfContent(page.marks, palette, faceOf));
    pdf.restore();
  }
  pdf.end();
  return finished;
}

/** The library is loaded when the first PDF is made, so that a command without papers does not wait for it. */
async function startPdf(document: DrawingDocument): Promise<PDFKit.PDFDocument> {
  const { default: PDFDocument } = await import("pdfkit");
  return new PDFDocument({
    autoFirstPage: false,
    font: null as unknown as string,
    pdfVersion: "1.7",
    lang: "en",
    displayTitle: true,
    info: {
      Title: document.title,
      Subject: document.subject,
      Creator: "Copperwright",
      Producer: "Copperwright",
      CreationDate: new Date(`${document.date}T00:00:00Z`),
    },
  });
}

function collectBytes(pdf: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    pdf.on("data", (chunk: Uint8Array) => chunks.push(chunk));
    pdf.on("error", reject);
    pdf.on("end", () => {
      const bytes = new Uint8Array(chunks.reduce((count, chunk) => count + chunk.length, 0));
      let offset = 0;
      for (const chunk of chunks) {
        bytes.set(chunk, offset);
        offset += chunk.length;
      }
      resolve(bytes);
    });
  });
}

/** Hangs the page into the outline, opening the headings above it the first time they are met. */
function addBookmark(
  pdf: PDFKit.PDFDocument,
  page: Page,
  outline: Map<string, PDFKit.PDFOutline>,
): void {
  let parent: PDFKit.PDFOutline = pdf.outline;
  page.bookmark.forEach((title, i) => {
    const key = JSON.stringify(page.bookmark.slice(0, i + 1));
    const known = outline.get(key);
    const item = known ?? parent.addItem(title, { expanded: false });
    if (!known) outline.set(key, item);
    parent = item;
  });
}
