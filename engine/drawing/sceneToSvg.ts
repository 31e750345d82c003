import { expandMark } from "./expandMark.ts";
import { fontRuns } from "./fontRuns.ts";
import { emMm, textAreaMm } from "./measureTextMm.ts";
import { type Palette, palettes } from "./palette.ts";
import { mmText, pathText, polylineSteps } from "./pathText.ts";
import type { GroupMark, Mark, Page, Painted, PathMark, TextMark } from "./scene.ts";
import { colourValue } from "./wireColour.ts";

export interface SvgOptions {
  /** Absent: print. */
  readonly palette?: Palette | undefined;
  /** `@font-face` rules to carry along, where the reader does not have the faces. */
  readonly fontFaceCss?: string | undefined;
}

const TEXT_FAMILY = "'Atkinson Hyperlegible Next'";
const FALLBACK_FAMILY = "'DejaVu Sans'";

/** One page as SVG text at true scale: 1 user unit = 1 mm. Groups carry the permanent id they show as `data-id`, and what it is the id of as `data-of`. */
export function sceneToSvg(page: Page, options: SvgOptions = {}): string {
  const palette = options.palette ?? palettes.print;
  const width = mmText(page.widthMm);
  const height = mmText(page.heightMm);
  const css = `text{font-variant-numeric:tabular-nums;font-kerning:none;white-space:pre}${options.fontFaceCss ?? ""}`;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" font-family="${TEXT_FAMILY},${FALLBACK_FAMILY},sans-serif">`,
    `<title>${escaped(page.title)}</title>`,
    `<style>${css}</style>`,
    `<rect width="${width}" height="${height}" fill="${palette.tokens.ground}"/>`,
    ...page.marks.map((mark) => markSvg(mark, palette)),
    "</svg>",
    "",
  ].join("\n");
}

/** One mark as SVG, for putting into a picture somebody else frames. */
export function markSvg(mark: Mark, palette: Palette): string {
  const expanded = expandMark(mark, palette);
  switch (expanded.kind) {
    case "group":
      return groupSvg(expanded, palette);
    case "text":
      return textSvg(expanded, palette);
    case "circle": {
      const { centre, radiusMm } = expanded;
      return `<circle cx="${mmText(centre.xMm)}" cy="${mmText(centre.yMm)}" r="${mmText(radiusMm)}"${paintSvg(expanded, palette)}/>`;
    }
    case "rect": {
      const { area, cornerMm } = expanded;
      const corner = cornerMm ? ` rx="${mmText(cornerMm)}"` : "";
      return `<rect x="${mmText(area.xMm)}" y="${mmText(area.yMm)}" width="${mmText(area.widthMm)}" height="${mmText(area.heightMm)}"${corner}${paintSvg(expanded, palette)}/>`;
    }
    case "line":
      return pathSvg(
        {
          kind: "path",
          steps: polylineSteps([expanded.from, expanded.to], false),
          stroke: expanded.stroke,
        },
        palette,
      );
    case "polyline": {
      const steps = polylineSteps(expanded.points, expanded.closed ?? false);
      return pathSvg({ ...expanded, kind: "path", steps }, palette);
    }
    case "path":
      return pathSvg(expanded, palette);
  }
}

function groupSvg(group: GroupMark, palette: Palette): string {
  const id = group.id === undefined ? "" : ` data-id="${escaped(group.id)}"`;
  const of = group.of === undefined ? "" : ` data-of="${group.of}"`;
  const name = group.name === undefined ? "" : ` aria-label="${escaped(group.name)}" role="img"`;
  return `<g${id}${of}${name}>${group.marks.map((mark) => markSvg(mark, palette)).join("")}</g>`;
}

const pathSvg = (path: PathMark, palette: Palette): string =>
  `<path d="${pathText(path.steps)}"${paintSvg(path, palette)}/>`;

function paintSvg({ stroke, fill }: Painted, palette: Palette): string {
  const filled = ` fill="${fill ? colourValue(fill, palette) : "none"}"`;
  if (!stroke) return filled;
  const dash = stroke.dashMm ? ` stroke-dasharray="${stroke.dashMm.map(mmText).join(" ")}"` : "";
  const offset = stroke.dashOffsetMm ? ` stroke-dashoffset="${mmText(stroke.dashOffsetMm)}"` : "";
  const cap = stroke.cap === "round" ? ' stroke-linecap="round"' : "";
  const colour = colourValue(stroke.colour, palette);
  return `${filled} stroke="${colour}" stroke-width="${mmText(stroke.widthMm)}" stroke-linejoin="round"${cap}${dash}${offset}`;
}

function textSvg(mark: TextMark, palette: Palette): string {
  const x = mmText(mark.at.xMm);
  const y = mmText(mark.at.yMm);
  const turn = mark.turnDeg ? ` transform="rotate(${mmText(mark.turnDeg)} ${x} ${y})"` : "";
  const spans = fontRuns(mark.text, mark.weight).map(({ face, text }) => {
    const isFallback = face.startsWith("fallback");
    const family = isFallback ? ` font-family="${FALLBACK_FAMILY}"` : "";
    return `<tspan font-size="${mmText(emMm(face, mark.capHeightMm))}"${family}>${escaped(text)}</tspan>`;
  });
  const ground = mark.onGround ? groundSvg(mark, palette) : "";
  return `${ground}<text x="${x}" y="${y}" text-anchor="${mark.anchor}" font-weight="${mark.weight}" fill="${colourValue(mark.colour, palette)}"${turn}>${spans.join("")}</text>`;
}

function groundSvg(mark: TextMark, palette: Palette): string {
  return markSvg({ kind: "rect", area: textAreaMm(mark), fill: "ground" }, palette);
}

const ENTITIES: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
};

const escaped = (text: string): string => text.replace(/[&<>"]/g, (found) => ENTITIES[found]!);
