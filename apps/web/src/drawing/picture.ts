import { type Mark, markSvg, palettes } from "@copperwright/engine/scenes";

/** A drawing as SVG marks, made in the worker; one user unit is one millimetre. */
export interface Picture {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly svg: string;
}

export type PictureLight = "paper" | "night" | "sun";

/** Marks of a drawing as SVG in the palette of the screen; each group carries the id of what it shows as `data-id`. */
export function pictureOf(
  drawn: { readonly marks: readonly Mark[]; readonly widthMm: number; readonly heightMm: number },
  light: PictureLight,
): Picture {
  const palette = palettes[light === "sun" ? "print" : light];
  return {
    widthMm: drawn.widthMm,
    heightMm: drawn.heightMm,
    svg: drawn.marks.map((mark) => markSvg(mark, palette)).join(""),
  };
}
