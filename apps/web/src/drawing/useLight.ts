import { useEffect, useState } from "react";
import { shownPalette } from "../frame/usePalette.ts";
import { useBench } from "../store/benchStore.ts";
import type { PictureLight } from "./picture.ts";

/** The palette on screen now, for asking the worker for a picture in it. */
export function useLight(): PictureLight {
  const choice = useBench((bench) => bench.palette);
  const [light, setLight] = useState<PictureLight>(() => shownPalette(choice));
  useEffect(() => {
    const put = (): void => setLight(shownPalette(choice));
    put();
    const dark = matchMedia("(prefers-color-scheme: dark)");
    dark.addEventListener("change", put);
    return () => dark.removeEventListener("change", put);
  }, [choice]);
  return light;
}
