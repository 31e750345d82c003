import type { PaperFonts } from "@copperwright/engine/paper";
import latin400 from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff?url";
import latin600 from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-600-normal.woff?url";
import latin700 from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff?url";
import latin800 from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-800-normal.woff?url";
import latinExt400 from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-400-normal.woff?url";
import latinExt600 from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-600-normal.woff?url";
import latinExt700 from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-700-normal.woff?url";
import latinExt800 from "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-800-normal.woff?url";
import fallback400 from "dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url";
import fallback700 from "dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf?url";

/** Where the built app serves each face of the papers; kept for working offline like everything else. */
export const FONT_ADDRESSES: Readonly<Record<keyof PaperFonts, string>> = {
  latin400,
  latinExt400,
  latin600,
  latinExt600,
  latin700,
  latinExt700,
  latin800,
  latinExt800,
  fallback400,
  fallback700,
};
