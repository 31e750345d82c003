import type { TimeCurrent } from "@copperwright/engine";
import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { nameOnCurve, type PlotFrame } from "./plotShapes.ts";

type NamesProps = {
  readonly plot: TimeCurrent;
  readonly frame: PlotFrame;
  readonly told: TimeCurrent["wires"][number] | undefined;
};

/** Every curve is named on itself; where the wire loses is said beside the hatch. */
export function PlotNames({ plot, frame, told }: NamesProps): ReactNode {
  const { band, danger, fuse, ratingA } = plot;
  const onBand = nameOnCurve(frame, band.fastest.length > 0 ? band.fastest : band.slowest, 0.5);
  const [worst] = danger;
  const middle = worst?.lower[Math.floor(worst.lower.length / 2)];
  return (
    <g>
      {onBand !== null && (
        <text
          x={Math.max(frame.left + 104, onBand.x - 10)}
          y={onBand.y + 6}
          textAnchor="end"
          className="proof-band-name"
        >
          {fuse} {printQuantity(ratingA, "A")} opens
        </text>
      )}
      {told !== undefined && <CurveName curve={told} frame={frame} />}
      {worst !== undefined && middle !== undefined && (
        <text
          x={Math.min(frame.x(worst.toA) + 10, frame.right - 190)}
          y={Math.max(frame.top + 16, frame.y(middle.timeS) - 60)}
          className="proof-danger"
        >
          <tspan>{`${printQuantity(worst.fromA, "A")} to ${printQuantity(worst.toA, "A")}:`}</tspan>
          <tspan
            x={Math.min(frame.x(worst.toA) + 10, frame.right - 190)}
            dy="18"
            className="proof-loses"
          >
            the wire loses
          </tspan>
        </text>
      )}
    </g>
  );
}

function CurveName({
  curve,
  frame,
}: {
  curve: TimeCurrent["wires"][number];
  frame: PlotFrame;
}): ReactNode {
  const place = nameOnCurve(frame, curve.points, 0.55);
  if (place === null) return null;
  const { x, y, turnDeg } = place;
  const count = curve.wires.length;
  const isFarRight = x > frame.left + 0.58 * (frame.right - frame.left);
  return (
    <text
      x={x + 6}
      y={y - 8}
      textAnchor={isFarRight ? "end" : "start"}
      transform={`rotate(${turnDeg.toFixed(1)} ${x + 6} ${y - 8})`}
      className="proof-curve-name"
    >
      {count === 1 ? curve.wires[0] : `${count} wires`}, {printQuantity(curve.areaMm2, "mm2")}
    </text>
  );
}
