import { type ReactNode, useEffect, useRef } from "react";
import { choose, useBench } from "../store/benchStore.ts";
import type { Chosen } from "../store/documentState.ts";
import { markChosen } from "./markChosen.ts";
import { type Fit, type PanZoom, panZoom } from "./panZoom.ts";
import type { Picture } from "./picture.ts";

type SceneViewProps = {
  readonly picture: Picture;
  /** What the drawing is, read aloud. */
  readonly label: string;
  /** Which of the things drawn can be chosen: every mark of the engine says what it is. Absent: none. */
  readonly kinds?: readonly Chosen["kind"][];
  /** Called with the id and where it stands on screen, after it is chosen. */
  readonly onPick?: (chosen: Chosen, at: { readonly x: number; readonly y: number }) => void;
  /** How the drawing fits the view at first: all of it, or its width. */
  readonly fit?: Fit;
  /** A changed drawing stays where a hand has moved it, instead of being fitted anew. */
  readonly keepsPlace?: boolean;
  /** Marks over the drawing, in its own millimetres (inside the same SVG). */
  readonly over?: ReactNode;
  readonly className?: string;
};

/**
 * A drawing that pans and zooms without being drawn again: the finished SVG lies on a layer of its own that is only moved. Tap chooses, drag and
 * two fingers pan, wheel with control and pinch zoom; `+`, `-`, `0` and the arrows do the same.
 */
export function SceneView(props: SceneViewProps): ReactNode {
  const { picture, label, fit = "all", keepsPlace = false, over, className = "" } = props;
  const frame = useRef<HTMLDivElement>(null);
  const layer = useRef<HTMLDivElement>(null);
  const marks = useRef<SVGGElement>(null);
  const hand = useRef<PanZoom | null>(null);
  const chosen = useBench((bench) => bench.chosen);
  const pick = useRef(props);
  pick.current = props;

  useEffect(() => {
    if (frame.current === null || layer.current === null) return;
    hand.current = panZoom(frame.current, layer.current, {
      tap: (x, y, target) => pickAt(pick.current, target, x, y),
    });
    return () => hand.current?.end();
  }, []);
  useEffect(() => {
    hand.current?.setSize(picture.widthMm, picture.heightMm, fit, keepsPlace);
  }, [picture.widthMm, picture.heightMm, fit, keepsPlace]);
  useEffect(() => {
    if (marks.current !== null) marks.current.innerHTML = picture.svg;
  }, [picture.svg]);
  useEffect(() => {
    if (marks.current !== null) markChosen(marks.current, chosen?.id ?? null);
  }, [chosen, picture.svg]);

  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: the sheet takes the keyboard for panning and zooming
    <div ref={frame} className={`scene ${className}`} tabIndex={0} role="group" aria-label={label}>
      <div ref={layer} className="scene-layer">
        <svg
          viewBox={`0 0 ${picture.widthMm} ${picture.heightMm}`}
          width={picture.widthMm * PX_PER_MM}
          height={picture.heightMm * PX_PER_MM}
          className="scene-svg"
          role={over === undefined ? "img" : "group"}
          aria-label={label}
        >
          <g ref={marks} />
          {over}
        </svg>
      </div>
    </div>
  );
}

/** Screen pixels of one millimetre at 100 %. */
export const PX_PER_MM = 4;

function pickAt(props: SceneViewProps, target: Element | null, x: number, y: number): void {
  const { kinds = [], onPick } = props;
  for (let at = target?.closest("[data-of]") ?? null; at !== null; ) {
    const id = at.getAttribute("data-id");
    const kind = kinds.find((one) => one === at?.getAttribute("data-of"));
    if (kind !== undefined && id !== null) {
      const chosen: Chosen = { kind, id };
      choose(chosen);
      onPick?.(chosen, { x, y });
      return;
    }
    at = at.parentElement?.closest("[data-of]") ?? null;
  }
  choose(null);
}
