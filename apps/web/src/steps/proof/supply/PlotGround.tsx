import { printNumber } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { type PlotAxis, type PlotPaper, tickDecimals, ticksOf } from "./linePlot.ts";

type PlotGroundProps = {
  readonly paper: PlotPaper;
  readonly acrossName: string;
  readonly upName: string;
};

const told = (value: number, axis: PlotAxis): string => printNumber(value, tickDecimals(axis));

/** Rules, their figures, and what each axis counts. */
export function PlotGround({ paper, acrossName, upName }: PlotGroundProps): ReactNode {
  const { across, up, left, right, top, bottom } = paper;
  return (
    <g className="supply-ground">
      {ticksOf(across).map((value) => (
        <g key={`x${value}`}>
          <line x1={paper.x(value)} x2={paper.x(value)} y1={top} y2={bottom} />
          <text x={paper.x(value)} y={bottom + 18} textAnchor="middle">
            {told(value, across)}
          </text>
        </g>
      ))}
      {ticksOf(up).map((value) => (
        <g key={`y${value}`}>
          <line x1={left} x2={right} y1={paper.y(value)} y2={paper.y(value)} />
          <text x={left - 7} y={paper.y(value) + 5} textAnchor="end">
            {told(value, up)}
          </text>
        </g>
      ))}
      <path d={`M${left} ${top}V${bottom}H${right}`} className="supply-axis" />
      <text x={(left + right) / 2} y={bottom + 39} textAnchor="middle">
        {acrossName}
      </text>
      <text x={left - 44} y={top - 13}>
        {upName}
      </text>
    </g>
  );
}
