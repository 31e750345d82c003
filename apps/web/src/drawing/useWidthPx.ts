import { type RefObject, useEffect, useRef, useState } from "react";

/** The width a box has on screen, px; 0 until it is known. */
export function useWidthPx<E extends HTMLElement = HTMLDivElement>(): {
  readonly box: RefObject<E | null>;
  readonly widthPx: number;
} {
  const box = useRef<E>(null);
  const [widthPx, setWidth] = useState(0);
  useEffect(() => {
    if (box.current === null) return;
    const watch = new ResizeObserver(([entry]) => setWidth(entry?.contentRect.width ?? 0));
    watch.observe(box.current);
    return () => watch.disconnect();
  }, []);
  return { box, widthPx };
}
