import { useEffect } from "react";
import { type PaletteChoice, useBench } from "../store/benchStore.ts";

const KEPT = "copperwright-palette";
export const PALETTES: readonly PaletteChoice[] = ["auto", "paper", "night", "sun"];

/** What is on screen now: the choice, or what the device prefers. */
export function shownPalette(choice: PaletteChoice): "paper" | "night" | "sun" {
  if (choice !== "auto") return choice;
  return matchMedia("(prefers-color-scheme: dark)").matches ? "night" : "paper";
}

export function usePalette(): void {
  const palette = useBench((bench) => bench.palette);
  useEffect(() => {
    const kept = localStorage.getItem(KEPT) as PaletteChoice | null;
    if (kept !== null && PALETTES.includes(kept)) useBench.setState({ palette: kept });
  }, []);
  useEffect(() => {
    const put = (): void => {
      document.documentElement.dataset.palette = shownPalette(palette);
    };
    put();
    const dark = matchMedia("(prefers-color-scheme: dark)");
    dark.addEventListener("change", put);
    return () => dark.removeEventListener("change", put);
  }, [palette]);
}

export function choosePalette(palette: PaletteChoice): void {
  localStorage.setItem(KEPT, palette);
  useBench.setState({ palette });
}
