import { utf8ToBytes } from "@noble/hashes/utils.js";
import { documentToPdf } from "./drawing/documentToPdf.ts";
import {
  csvText,
  type DrawingDocument,
  framedDocument,
  type Palette,
  type PaperFonts,
  pageToDxf,
  type SheetInfo,
  sceneToSvg,
} from "./drawing/index.ts";
import type { ReadFaces } from "./drawing/pdfFaces.ts";
import type { PackPaper } from "./papers/index.ts";

/** One file of a paper. */
export interface MadeFile {
  readonly name: string;
  readonly kind: "pdf" | "csv" | "svg" | "dxf";
  readonly title: string;
  /** Sheets of a PDF; null for what has none. */
  readonly pages: number | null;
  readonly bytes: Uint8Array;
}

/** One paper in every format it has. */
export async function paperFiles(
  info: SheetInfo,
  paper: PackPaper,
  inks: { readonly palette: Palette; readonly plain: PaperFonts; readonly read: ReadFaces },
): Promise<readonly MadeFile[]> {
  const { name, title, sheets, plots = [] } = paper;
  const { palette, plain, read } = inks;
  const document = framedDocument(info, title, sheets);
  const pdf = async (file: string, pages: DrawingDocument["pages"]): Promise<MadeFile> => ({
    name: `${file}.pdf`,
    kind: "pdf",
    title,
    pages: pages.length,
    bytes: await documentToPdf({ ...document, pages }, plain, { read, palette }),
  });
  const files = [await pdf(name, document.pages)];
  for (const [file, text] of textsOf(paper, document, palette)) {
    const kind = file.slice(-3) as "csv" | "svg" | "dxf";
    files.push({ name: file, kind, title, pages: null, bytes: utf8ToBytes(text) });
  }
  for (const plot of plots) files.push(await pdf(plot.name, [plot.page]));
  return files;
}

/** The same paper as a list for a spreadsheet, and as a drawing a sheet. */
function textsOf(
  { name, rows, drawings, plots }: PackPaper,
  document: DrawingDocument,
  palette: Palette,
): readonly (readonly [name: string, text: string])[] {
  return [
    ...(rows === null ? [] : [[`${name}.csv`, csvText(rows)] as const]),
    ...(drawings ?? []).map(
      (drawing, i) => [`${drawing}.svg`, sceneToSvg(document.pages[i]!, { palette })] as const,
    ),
    ...(plots ?? []).flatMap((plot) => [
      [`${plot.name}.svg`, sceneToSvg(plot.page, { palette })] as const,
      [`${plot.name}.dxf`, pageToDxf(plot.page)] as const,
    ]),
  ];
}
