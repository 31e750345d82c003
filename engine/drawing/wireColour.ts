import type { ColourToken } from "./colourToken.ts";
import { relativeLuminance } from "./contrastRatio.ts";
import type { Palette } from "./palette.ts";

/** How each insulation colour is shown. Our own choice of values: one that stays itself on paper and screen, not a dye standard. */
export const WIRE_COLOUR_VALUES: Readonly<Record<string, string>> = {
  black: "#1B1D1E",
  white: "#FFFFFF",
  red: "#C7201F",
  yellow: "#F4CE18",
  green: "#1C8A42",
  "light green": "#9AD04E",
  "dark green": "#12562B",
  blue: "#1F3D9E",
  "dark blue": "#16296B",
  "light blue": "#7DBBE6",
  purple: "#7C3F9E",
  violet: "#7C3F9E",
  grey: "#8E9492",
  slate: "#8E9492",
  pink: "#F093B4",
  orange: "#EE7D1A",
  brown: "#7A4722",
  turquoise: "#2FA9A5",
};

/** Above this relative luminance a colour counts as light: its hairline is dark, and in black-only print its body is white. */
export const LIGHT_LUMINANCE = 0.18;

export const isLight = (hex: string): boolean => relativeLuminance(hex) > LIGHT_LUMINANCE;

/** The value shown for an insulation colour; null for a word without one (drawn white, the word beside it tells). */
export const wireColourValue = (word: string): string | null => WIRE_COLOUR_VALUES[word] ?? null;

/** What a token looks like in a palette, as `#RRGGBB`. */
export function colourValue(token: ColourToken, palette: Palette): string {
  if (!token.startsWith("wire:")) return palette.tokens[token as keyof Palette["tokens"]];
  const value = wireColourValue(token.slice("wire:".length)) ?? "#FFFFFF";
  if (palette.hasGreys) return value;
  return isLight(value) ? "#FFFFFF" : "#000000";
}
