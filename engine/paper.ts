/** Second front door, for whoever makes PDF files: it loads the PDF library, which verdicts do not need. */
export { documentToPdf, type PdfOptions } from "./drawing/documentToPdf.ts";
