import { type RefObject, useEffect } from "react";
import { useBench } from "../../store/benchStore.ts";

const EDGE_PX = 24;

/** Brings the thing chosen onto the sheet when it lies beside it, as a hand on the wheel would; what is in sight already stays where it is. */
export function useChosenInView(box: RefObject<HTMLElement | null>): void {
  const id = useBench((bench) => bench.chosen?.id ?? null);
  useEffect(() => {
    const frame = box.current?.querySelector(".scene");
    if (!frame || id === null) return;
    const drawn = frame.querySelector(`[data-id="${CSS.escape(id)}"]`);
    const [sheet, thing] = [frame.getBoundingClientRect(), drawn?.getBoundingClientRect()];
    if (thing === undefined || thing.width + thing.height === 0) return;
    const x = (thing.left + thing.right) / 2;
    const y = (thing.top + thing.bottom) / 2;
    const isInSight =
      x > sheet.left + EDGE_PX &&
      x < sheet.right - EDGE_PX &&
      y > sheet.top + EDGE_PX &&
      y < sheet.bottom - EDGE_PX;
    if (isInSight) return;
    const deltaX = x - (sheet.left + sheet.right) / 2;
    const deltaY = y - (sheet.top + sheet.bottom) / 2;
    frame.dispatchEvent(new WheelEvent("wheel", { deltaX, deltaY, cancelable: true }));
  }, [id, box]);
}
