import { wireColourValue } from "@copperwright/engine/words";
import type { ReactNode } from "react";

type Colour = { readonly main: string; readonly tracer?: string | null | undefined };

/** A piece of the wire as it looks: ink edge, body, tracer. The word always stands beside it. */
export function WireSwatch({
  colour,
  widthPx = 64,
  heightPx = 14,
}: {
  colour: Colour | undefined | null;
  widthPx?: number;
  heightPx?: number;
}): ReactNode {
  const main = colour ? (wireColourValue(colour.main) ?? "#FFFFFF") : "#FFFFFF";
  const tracer = colour?.tracer ? wireColourValue(colour.tracer) : null;
  const middle = heightPx / 2;
  return (
    <svg
      className="swatch"
      width={widthPx}
      height={heightPx}
      viewBox={`0 0 ${widthPx} ${heightPx}`}
      aria-hidden="true"
    >
      <rect width={widthPx} height={heightPx} fill="var(--ink)" />
      <rect y="2" width={widthPx} height={heightPx - 4} fill={main} />
      {tracer && (
        <line
          x1="0"
          x2={widthPx}
          y1={middle}
          y2={middle}
          stroke={tracer}
          strokeWidth={(heightPx - 4) * 0.44}
          strokeDasharray="11 7"
        />
      )}
    </svg>
  );
}

export const colourWords = (colour: Colour | undefined | null): string =>
  colour ? (colour.tracer ? `${colour.main} ${colour.tracer}` : colour.main) : "colour not known";
