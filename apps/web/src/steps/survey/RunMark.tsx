import type { SurveyRun } from "@copperwright/engine/scenes";
import { printQuantity } from "@copperwright/engine/words";
import { type KeyboardEvent, type ReactNode, useRef } from "react";
import { choose } from "../../store/benchStore.ts";
import type { PlaceMm } from "./sceneMm.ts";

type RunMarkProps = {
  readonly run: SurveyRun;
  readonly a: PlaceMm;
  readonly b: PlaceMm;
  readonly isChosen: boolean;
  /** One of its stations is being dragged. */
  readonly isMoved: boolean;
  readonly onPick: (at: { x: number; y: number }) => void;
};

/** A run: full where it was measured, dashed where it is guessed. */
export function RunMark({ run, a, b, isChosen, onPick }: RunMarkProps): ReactNode {
  const group = useRef<SVGGElement>(null);
  const isMeasured = run.lengthMm !== null && run.basis !== "estimated";
  const pick = (): void => {
    choose({ kind: "run", id: run.id });
    const box = group.current?.querySelector(".run-core")?.getBoundingClientRect();
    if (box !== undefined) onPick({ x: box.right, y: box.top });
  };
  const line = { x1: a.xMm, y1: a.yMm, x2: b.xMm, y2: b.yMm };
  return (
    <g
      ref={group}
      data-hand="run"
      data-id={run.id}
      role="button"
      tabIndex={0}
      className={isChosen ? "survey-run chosen" : "survey-run"}
      aria-label={`run ${run.id}, ${spokenLength(run)}${run.flex ? ", moves" : ""}`}
      aria-pressed={isChosen}
      onClick={pick}
      onKeyDown={(event: KeyboardEvent) => {
        if (event.key !== "Enter" && event.key !== " ") return;
        event.preventDefault();
        pick();
      }}
    >
      <line {...line} className="run-hold" />
      <line {...line} className="run-edge" strokeDasharray={isMeasured ? undefined : "2 1.2"} />
      <line {...line} className="run-core" />
      {run.flex && <Flex a={a} b={b} />}
    </g>
  );
}

/** Its box, above every line: a tap on it chooses the run, as one on the line does. */
export function RunBox({ run, a, b, isChosen, isMoved, onPick }: RunMarkProps): ReactNode {
  if (run.box === null && !isChosen) return null;
  const isMeasured = run.lengthMm !== null && run.basis !== "estimated";
  const between = { xMm: (a.xMm + b.xMm) / 2, yMm: (a.yMm + b.yMm) / 2 };
  const box = isMoved || run.box === null ? between : run.box;
  const text = lengthText(run);
  const width = Math.max(9, 3.4 + text.length * 2.05);
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the run's line takes the keyboard and is read aloud
    <g
      data-hand="run"
      className={isChosen ? "run-measure chosen" : "run-measure"}
      onClick={(event) => {
        choose({ kind: "run", id: run.id });
        const { right, top } = event.currentTarget.getBoundingClientRect();
        onPick({ x: right, y: top });
      }}
    >
      <rect
        className={isMeasured ? "run-box" : "run-box guessed"}
        x={box.xMm - width / 2}
        y={box.yMm - 2.7}
        width={width}
        height={5.4}
      />
      <text x={box.xMm} y={box.yMm + 1.25} className={isMeasured ? "" : "guessed"}>
        {text}
      </text>
    </g>
  );
}

function lengthText({ lengthMm, basis }: SurveyRun): string {
  if (lengthMm === null) return "?";
  const bare = printQuantity(lengthMm, "mm").replace(/\s*mm$/, "");
  return basis === "estimated" ? `≈ ${bare}` : bare;
}

function spokenLength({ lengthMm, basis }: SurveyRun): string {
  if (lengthMm === null) return "not measured";
  return `${basis === "estimated" ? "guessed" : basis} ${printQuantity(lengthMm, "mm")}`;
}

/** Two bars across a run that moves, a third of the way along, clear of the box. */
function Flex({ a, b }: { a: PlaceMm; b: PlaceMm }): ReactNode {
  const [dx, dy] = [b.xMm - a.xMm, b.yMm - a.yMm];
  const whole = Math.hypot(dx, dy) || 1;
  return [0.2, 0.26].map((share) => {
    const [x, y] = [a.xMm + share * dx, a.yMm + share * dy];
    const [nx, ny] = [(-2.2 * dy) / whole, (2.2 * dx) / whole];
    return (
      <line key={share} className="run-flex" x1={x - nx} y1={y - ny} x2={x + nx} y2={y + ny} />
    );
  });
}
