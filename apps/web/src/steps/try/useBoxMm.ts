import { type RefObject, useEffect, useRef, useState } from "react";
import { PX_PER_MM } from "../../drawing/SceneView.tsx";

const STEP_MM = 5;
const MARGIN_PX = 32;

/** How many millimetres of drawing fit into a box at full size, so that lettering on it keeps its size; null until it is known. */
export function useBoxMm(): {
  readonly box: RefObject<HTMLDivElement | null>;
  readonly size: { readonly widthMm: number; readonly heightMm: number } | null;
} {
  const box = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState<{ widthMm: number; heightMm: number } | null>(null);
  useEffect(() => {
    if (box.current === null) return;
    const watch = new ResizeObserver(([entry]) => {
      if (entry === undefined) return;
      const { width, height } = entry.contentRect;
      const mm = (px: number): number =>
        Math.max(STEP_MM, Math.floor((px - MARGIN_PX) / PX_PER_MM / STEP_MM) * STEP_MM);
      setSize((old) => {
        const next = { widthMm: mm(width), heightMm: mm(height) };
        return old?.widthMm === next.widthMm && old.heightMm === next.heightMm ? old : next;
      });
    });
    watch.observe(box.current);
    return () => watch.disconnect();
  }, []);
  return { box, size };
}
