/** Named grounds and inks; what each looks like is the palette's affair. */
export type PaletteToken =
  | "ground"
  | "pale"
  | "ink"
  | "ink2"
  | "rule"
  | "verdigris"
  | "copper"
  | "stop"
  | "mend"
  | "advise"
  | "glow";

/** A palette token, or the colour of an insulation by its English word: `wire:light blue`. */
export type ColourToken = PaletteToken | `wire:${string}`;
