import type { Balance } from "@copperwright/engine";
import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { useWidthPx } from "../../../drawing/useWidthPx.ts";
import { axisOf, linePath, type PlotPaper, plotPaper } from "./linePlot.ts";
import { PlotGround } from "./PlotGround.tsx";
import { rpmText } from "./supplyWords.ts";

type BalancePlotProps = {
  readonly balance: Balance;
  /** Drawn before the change somebody thinks of, A; null: nothing is thought of. */
  readonly beforeA: number | null;
};

const NARROW_PX = 520;
/** Room under the line in which a name stands clear of it. */
const LEAST_UNDER_PX = 44;

/** Amps against engine speed: what can be given with its band, what is drawn, and where the two meet. */
export function BalancePlot({ balance, beforeA }: BalancePlotProps): ReactNode {
  const { box, widthPx } = useWidthPx();
  return (
    <div ref={box} className="supply-plot">
      {widthPx > 0 && <Drawn balance={balance} beforeA={beforeA} widthPx={widthPx} />}
    </div>
  );
}

function Drawn({
  balance,
  beforeA,
  widthPx,
}: BalancePlotProps & { readonly widthPx: number }): ReactNode {
  const { curve, rows, bandRatio, demandA, balanceRpm } = balance;
  const isNarrow = widthPx < NARROW_PX;
  const fastestRpm = curve.at(-1)?.speedRpm ?? 1;
  const highA = Math.max(demandA, beforeA ?? 0, ...rows.map((row) => row.availableHighA));
  const paper = plotPaper(
    axisOf(0, fastestRpm, isNarrow ? 4 : 8),
    axisOf(0, highA, 7),
    widthPx,
    isNarrow ? 300 : 340,
  );
  const scaled = (ratio: number) =>
    curve.map(({ speedRpm, availableA }) => [speedRpm, ratio * availableA] as const);
  const band = linePath(paper, [...scaled(1 + bandRatio), ...scaled(1 - bandRatio).reverse()]);
  const meets = balanceRpm === null ? "at no speed" : `at ${rpmText(balanceRpm)}`;
  return (
    <svg
      width={widthPx}
      height={paper.heightPx}
      role="img"
      aria-label={`Amps against engine speed, ${balance.name}: ${printQuantity(demandA, "A")} are drawn, the source gives as much ${meets}`}
    >
      <path d={`${band}Z`} className="supply-band" />
      <PlotGround
        paper={paper}
        acrossName="engine speed, rpm"
        upName={`A at ${printQuantity(balance.atV, "V")}`}
      />
      <path d={linePath(paper, scaled(1))} className="supply-given" />
      {beforeA !== null && (
        <path d={`M${paper.left} ${paper.y(beforeA)}H${paper.right}`} className="supply-was" />
      )}
      <path d={`M${paper.left} ${paper.y(demandA)}H${paper.right}`} className="supply-drawn" />
      <Names balance={balance} beforeA={beforeA} paper={paper} isNarrow={isNarrow} />
      <Meeting balance={balance} paper={paper} />
    </svg>
  );
}

/** Every curve is named on itself. */
function Names({
  balance,
  beforeA,
  paper,
  isNarrow,
}: BalancePlotProps & { readonly paper: PlotPaper; readonly isNarrow: boolean }): ReactNode {
  const { curve, demandA, bandRatio } = balance;
  const last = curve.at(-1)!;
  const givenY = paper.y(last.availableA);
  const drawnY = paper.y(demandA);
  const isUnder = beforeA !== null && beforeA > demandA;
  return (
    <g className="supply-names">
      <text x={paper.right - 6} y={givenY - 9} textAnchor="end" className="given">
        {isNarrow ? "can give" : `can give, known to ${Math.round(100 * bandRatio)} %`}
      </text>
      <text x={paper.left + 8} y={isUnder ? drawnY + 19 : drawnY - 8} className="drawn">
        {`draws ${printQuantity(demandA, "A")}`}
      </text>
      {beforeA !== null && Math.abs(paper.y(beforeA) - drawnY) > 2 && (
        <text x={paper.left + 8} y={isUnder ? paper.y(beforeA) - 8 : paper.y(beforeA) + 19}>
          {`now ${printQuantity(beforeA, "A")}`}
        </text>
      )}
    </g>
  );
}

/** The balance point, with the speeds at which a strong and a weak source of the same two points would meet the line. */
function Meeting({
  balance,
  paper,
}: {
  readonly balance: Balance;
  readonly paper: PlotPaper;
}): ReactNode {
  const { balanceRpm, balanceLowRpm, balanceHighRpm, demandA } = balance;
  if (balanceRpm === null || balanceRpm > paper.across.to) return null;
  const [x, y] = [paper.x(balanceRpm), paper.y(demandA)];
  const lowX = paper.x(balanceLowRpm ?? balanceRpm);
  const highX = Math.min(paper.right, paper.x(balanceHighRpm ?? paper.across.to));
  const isRight = x > (paper.left + paper.right) / 2;
  const wordsY = paper.bottom - y > LEAST_UNDER_PX ? paper.bottom - 14 : y - 30;
  return (
    <g className="supply-meeting">
      <path d={`M${x} ${y}V${paper.bottom}`} className="supply-foot" />
      <path d={`M${lowX} ${y}H${highX}`} className="supply-doubt" />
      <circle cx={x} cy={y} r={6} />
      <text
        x={isRight ? x - 10 : x + 10}
        y={wordsY}
        textAnchor={isRight ? "end" : "start"}
        className="meets"
      >
        balance {rpmText(balanceRpm)}
      </text>
    </g>
  );
}
