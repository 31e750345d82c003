import { type RefObject, useEffect, useRef, useState } from "react";
import { PX_PER_MM } from "../../drawing/SceneView.tsx";

const MARGIN_PX = 33;

/** The room an element has for a drawing at full size, mm; drawn so, its words are as large as any other on the screen. */
export function useRoom(): {
  readonly box: RefObject<HTMLDivElement | null>;
  readonly room: { readonly widthMm: number; readonly heightMm: number } | null;
} {
  const box = useRef<HTMLDivElement>(null);
  const [room, setRoom] = useState<{ widthMm: number; heightMm: number } | null>(null);
  useEffect(() => {
    if (box.current === null) return;
    const watch = new ResizeObserver(([entry]) => {
      const { width, height } = entry!.contentRect;
      const mm = (px: number): number => Math.max(60, Math.floor((px - MARGIN_PX) / PX_PER_MM));
      setRoom({ widthMm: mm(width), heightMm: mm(height) });
    });
    watch.observe(box.current);
    return () => watch.disconnect();
  }, []);
  return { box, room };
}
