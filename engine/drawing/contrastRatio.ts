/** Relative luminance of a colour, 0 black to 1 white: Y = 0.2126 R + 0.7152 G + 0.0722 B of the linear parts (WCAG 2.2). */
export function relativeLuminance(hex: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => linearPart(hex.slice(at, at + 2)));
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

function linearPart(hexPair: string): number {
  const part = Number.parseInt(hexPair, 16) / 255;
  return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
}

/** Contrast of two colours, 1 to 21: (Y1 + 0.05) / (Y2 + 0.05) with the lighter on top (WCAG 2.2). */
export function contrastRatio(hexA: string, hexB: string): number {
  const [darker, lighter] = [relativeLuminance(hexA), relativeLuminance(hexB)].sort(
    (a, b) => a - b,
  );
  return (lighter! + 0.05) / (darker! + 0.05);
}
