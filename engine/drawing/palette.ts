import type { PaletteToken } from "./colourToken.ts";

export interface Palette {
  readonly tokens: Readonly<Record<PaletteToken, string>>;
  /** False: every mark is black or white, for printers that break greys into dots. */
  readonly hasGreys: boolean;
}

/** Paper from a printer: pure black ink, so that letters are not broken into dots. */
const print: Palette = {
  hasGreys: true,
  tokens: {
    ground: "#FFFFFF",
    pale: "#EEF1F0",
    ink: "#000000",
    ink2: "#38433F",
    rule: "#6F7A75",
    verdigris: "#0B5B54",
    copper: "#8A3D10",
    stop: "#9E1B1B",
    mend: "#7A4B00",
    advise: "#2B4A6F",
    glow: "#FFC54A",
  },
};

const printBlack: Palette = {
  hasGreys: false,
  tokens: {
    ground: "#FFFFFF",
    pale: "#FFFFFF",
    ink: "#000000",
    ink2: "#000000",
    rule: "#000000",
    verdigris: "#000000",
    copper: "#000000",
    stop: "#000000",
    mend: "#000000",
    advise: "#000000",
    glow: "#FFFFFF",
  },
};

/** A screen by day. */
const paper: Palette = {
  hasGreys: true,
  tokens: {
    ...print.tokens,
    ground: "#FBFCF8",
    ink: "#15201D",
    ink2: "#47544F",
    rule: "#8B9690",
  },
};

/** A screen in a dark workshop. */
const night: Palette = {
  hasGreys: true,
  tokens: {
    ground: "#12191B",
    pale: "#1D2628",
    ink: "#ECEFE8",
    ink2: "#AEB9B3",
    rule: "#75827D",
    verdigris: "#74D4C3",
    copper: "#F2A472",
    stop: "#FF9385",
    mend: "#F3C65B",
    advise: "#A9C8EE",
    glow: "#FFD27A",
  },
};

export type PaletteName = "print" | "printBlack" | "paper" | "night";

export const palettes: Readonly<Record<PaletteName, Palette>> = {
  print,
  printBlack,
  paper,
  night,
};
