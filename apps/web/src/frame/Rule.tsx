import { type ReactNode, useEffect, useRef, useState } from "react";
import { useAnswer } from "../engine/useAnswer.ts";
import { choose, useBench } from "../store/benchStore.ts";
import { useRuleMarks } from "./ruleMarks.ts";
import type { RuleView } from "./ruleView.ts";

/** The loom along a steel rule in real millimetres, front always left. A tap on a station chooses it everywhere. */
export function Rule(): ReactNode {
  const { answer } = useAnswer("rule", undefined);
  const box = useRef<HTMLElement>(null);
  const [widthPx, setWidth] = useState(0);
  useEffect(() => {
    if (box.current === null) return;
    const watch = new ResizeObserver(([entry]) => setWidth(entry?.contentRect.width ?? 0));
    watch.observe(box.current);
    return () => watch.disconnect();
  }, []);
  return (
    <section className="rule" ref={box} aria-label="The loom along the rule">
      {answer !== null && widthPx > 0 && answer.stations.length > 1 && (
        <RuleDrawing view={answer} widthPx={widthPx} />
      )}
    </section>
  );
}

const EDGE_PX = 48;
const LINE_Y = 46;
const FOOT_Y = 84;

function RuleDrawing({ view, widthPx }: { view: RuleView; widthPx: number }): ReactNode {
  const isSmall = widthPx < 720;
  const spanMm = Math.max(1, view.mostMm - view.leastMm);
  const x = (mm: number): number =>
    EDGE_PX + ((mm - view.leastMm) / spanMm) * (widthPx - 2 * EDGE_PX);
  return (
    <svg viewBox={`0 0 ${widthPx} ${FOOT_Y}`} role="group" aria-label="Stations along the loom">
      <Graduation view={view} x={x} pxPerMm={(widthPx - 2 * EDGE_PX) / spanMm} />
      <Runs view={view} x={x} />
      <Marks x={x} view={view} />
      <Stations view={view} x={x} isSmall={isSmall} />
    </svg>
  );
}

type Scaled = { readonly view: RuleView; readonly x: (mm: number) => number };

function Runs({ view, x }: Scaled): ReactNode {
  const chosen = useBench((bench) => bench.chosen);
  return (
    <g stroke="var(--ink2)" fill="none">
      {view.runs.map((run) => {
        const thick = Math.max(2, Math.min(14, run.odMm ?? 1));
        const y = run.isBranch ? LINE_Y + 12 : LINE_Y;
        return (
          <line
            key={run.id}
            data-id={run.id}
            x1={x(run.fromMm)}
            x2={x(run.toMm)}
            y1={LINE_Y}
            y2={y}
            strokeWidth={thick}
            stroke={chosen?.id === run.id ? "var(--verdigris)" : undefined}
            strokeDasharray={run.isMeasured ? undefined : "6 4"}
          />
        );
      })}
    </g>
  );
}

/** Names front to rear; one that would run into its neighbour is left to its ring's spoken name. */
function Stations({ view, x, isSmall }: Scaled & { isSmall: boolean }): ReactNode {
  const chosen = useBench((bench) => bench.chosen);
  let freeFromPx = 4;
  return view.stations.map((station) => {
    const at = x(station.atMm);
    const name = isSmall ? (station.name.split(" ")[0] ?? "") : station.name;
    const halfPx = name.length * (isSmall ? 4.2 : 3.6) + 6;
    const isNamed = at - halfPx >= freeFromPx;
    if (isNamed) freeFromPx = at + halfPx;
    const y = station.isBranch ? LINE_Y + 12 : LINE_Y;
    return (
      <g
        key={station.id}
        role="button"
        tabIndex={0}
        className="rule-stop"
        aria-label={`${station.name}, ${Math.round(station.atMm)} millimetres`}
        aria-pressed={chosen?.id === station.id}
        onClick={() => choose({ kind: "station", id: station.id })}
        onKeyDown={(event) => {
          if (event.key === "Enter" || event.key === " ")
            choose({ kind: "station", id: station.id });
        }}
      >
        <rect x={at - 14} y={24} width={28} height={40} fill="transparent" />
        {isNamed && (
          <text x={at} y={19} textAnchor="middle">
            {name}
          </text>
        )}
        <circle
          cx={at}
          cy={y}
          r={chosen?.id === station.id ? 7 : 4.5}
          fill="var(--sheet)"
          stroke="var(--ink)"
          strokeWidth="2"
        />
      </g>
    );
  });
}

/** Ticks each 20 mm where there is room, each 100 mm otherwise; figures where they do not touch. */
function Graduation({ view, x, pxPerMm }: Scaled & { pxPerMm: number }): ReactNode {
  const fineMm = pxPerMm * 20 > 5 ? 20 : pxPerMm * 100 > 5 ? 100 : 500;
  const figureMm = pxPerMm * 500 > 60 ? 500 : 1000;
  const first = Math.ceil(view.leastMm / fineMm) * fineMm;
  const ticks: number[] = [];
  for (let mm = first; mm <= view.mostMm; mm += fineMm) ticks.push(mm);
  return (
    <g stroke="var(--ink2)">
      {ticks.map((mm) => (
        <line
          key={mm}
          x1={x(mm)}
          x2={x(mm)}
          y1={FOOT_Y}
          y2={FOOT_Y - (mm % figureMm === 0 ? 12 : mm % 100 === 0 ? 8 : 5)}
          strokeWidth="1"
        />
      ))}
      {ticks
        .filter((mm) => mm % figureMm === 0)
        .map((mm) => (
          <text key={mm} className="tick-figure" x={x(mm) + 4} y={FOOT_Y - 5} stroke="none">
            {mm}
          </text>
        ))}
    </g>
  );
}

/** What the present step lays on the rule: amps, findings, this wire's way. */
function Marks({ x }: Scaled): ReactNode {
  const marks = useRuleMarks((rule) => rule.marks);
  return marks.map((mark) => (
    <g key={`${mark.fromMm} ${mark.text ?? ""}`}>
      {mark.toMm !== undefined && (
        <line
          x1={x(mark.fromMm)}
          x2={x(mark.toMm)}
          y1={LINE_Y}
          y2={LINE_Y}
          stroke={`var(--${mark.tone})`}
          strokeWidth="5"
        />
      )}
      {mark.text !== undefined && (
        <text
          x={x((mark.fromMm + (mark.toMm ?? mark.fromMm)) / 2)}
          y={35}
          textAnchor="middle"
          style={{ fill: `var(--${mark.tone})`, fontWeight: 700 }}
        >
          {mark.text}
        </text>
      )}
    </g>
  ));
}
