import { type Mark, markSvg, type Palette } from "@copperwright/engine/scenes";

/** A drawing as SVG marks, made in the worker; one user unit is one millimetre. */
export interface Picture {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly svg: string;
}

/** Colours by name, so that light, night and a printer each give theirs without the drawing being made again: look/drawing.css. */
const NAMED: Palette = {
  hasGreys: true,
  tokens: {
    ground: "var(--draw-ground)",
    pale: "var(--draw-pale)",
    ink: "var(--draw-ink)",
    ink2: "var(--draw-ink2)",
    rule: "var(--draw-rule)",
    verdigris: "var(--draw-verdigris)",
    copper: "var(--draw-copper)",
    stop: "var(--draw-stop)",
    mend: "var(--draw-mend)",
    advise: "var(--draw-advise)",
    glow: "var(--draw-glow)",
  },
};

/** Marks of a drawing as SVG; each group carries the id of what it shows as `data-id`. */
export function pictureOf(
  drawn: { readonly marks: readonly Mark[]; readonly widthMm: number; readonly heightMm: number },
  palette = NAMED,
): Picture {
  return {
    widthMm: drawn.widthMm,
    heightMm: drawn.heightMm,
    svg: drawn.marks.map((mark) => markSvg(mark, palette)).join(""),
  };
}
