import type { ReactNode } from "react";
import { choose, useBench } from "../store/benchStore.ts";
import { useRuleMarks } from "./ruleMarks.ts";
import type { RuleRun, RuleStation, RuleView } from "./ruleView.ts";

const EDGE_PX = 56;
const SHORT_LETTERS = 14;

/** Heights of the parts of the rule, px: names, main line, branches, lower edge. */
interface Levels {
  readonly nameY: number;
  readonly lineY: number;
  readonly twigY: number;
  readonly footY: number;
}
const LARGE: Levels = { nameY: 19, lineY: 42, twigY: 60, footY: 84 };
const SMALL: Levels = { nameY: 15, lineY: 27, twigY: 37, footY: 56 };

type Scaled = { readonly view: RuleView; readonly x: (mm: number) => number; readonly at: Levels };

export function RuleDrawing({ view, widthPx }: { view: RuleView; widthPx: number }): ReactNode {
  const spanMm = Math.max(1, view.mostMm - view.leastMm);
  const pxPerMm = (widthPx - 2 * EDGE_PX) / spanMm;
  const x = (mm: number): number => EDGE_PX + (mm - view.leastMm) * pxPerMm;
  const at = widthPx < 720 ? SMALL : LARGE;
  return (
    <svg
      viewBox={`0 0 ${widthPx} ${at.footY}`}
      role="group"
      aria-label="Stations along the loom, front left"
    >
      <Graduation view={view} x={x} at={at} pxPerMm={pxPerMm} />
      <Body view={view} x={x} at={at} />
      <Marks view={view} x={x} at={at} />
      <Stations view={view} x={x} at={at} isSmall={widthPx < 720} />
    </svg>
  );
}

/** The loom as thick as it is laid, at 1 px a mm; what leaves the main line hangs below it. */
function Body({ view, x, at }: Scaled): ReactNode {
  const chosen = useBench((bench) => bench.chosen);
  const isLit = ({ id }: RuleRun): boolean =>
    chosen?.id === id ||
    (chosen?.kind === "wire" && (view.wiresOf[id]?.includes(chosen.id) ?? false));
  const ordered = [...view.runs].sort((a, b) => Number(b.isBranch) - Number(a.isBranch));
  return (
    <g fill="none">
      {ordered.map((run) => {
        const y = run.isBranch ? at.twigY : at.lineY;
        const d = run.isBranch
          ? `M${x(run.fromMm)} ${levelOf(view, run.fromMm, at)}L${x(run.toMm)} ${y}`
          : `M${x(run.fromMm)} ${y}L${x(run.toMm)} ${y}`;
        const thick = Math.max(run.isBranch ? 2 : 4, Math.min(18, run.odMm ?? 0));
        return (
          <g key={run.id} data-id={run.id}>
            {!run.isBranch && <path d={d} stroke="var(--hair)" strokeWidth={thick} />}
            <path
              d={d}
              stroke={isLit(run) ? "var(--verdigris)" : "var(--ink2)"}
              strokeWidth={isLit(run) ? 6 : run.isBranch ? 1.5 : 3}
              strokeDasharray={run.isMeasured ? undefined : "7 4"}
            />
          </g>
        );
      })}
    </g>
  );
}

/** Where a branch begins: on the line when a main station stands there, else on the level of branches. */
function levelOf(view: RuleView, mm: number, at: Levels): number {
  return view.stations.some((station) => !station.isBranch && station.atMm === mm)
    ? at.lineY
    : at.twigY;
}

/** Names front to rear, the main line's first; one that would run into a neighbour is left to its ring's spoken name. */
function Stations({ view, x, at, isSmall }: Scaled & { isSmall: boolean }): ReactNode {
  const pxPerLetter = isSmall ? 8.4 : 7;
  const named: { left: number; right: number }[] = [];
  const byRank = [...view.stations].sort((a, b) => Number(a.isBranch) - Number(b.isBranch));
  const names = new Map<string, string>();
  for (const station of byRank) {
    for (const name of namesOf(station.name, isSmall)) {
      const half = (name.length * pxPerLetter) / 2 + 4;
      const box = { left: x(station.atMm) - half, right: x(station.atMm) + half };
      const isFree = named.every((other) => box.right < other.left || box.left > other.right);
      if (!isFree || box.left < 0 || box.right > x(view.mostMm) + EDGE_PX) continue;
      named.push(box);
      names.set(station.id, name);
      break;
    }
  }
  return view.stations.map((station) => (
    <Stop
      key={station.id}
      station={station}
      atPx={x(station.atMm)}
      level={at}
      name={names.get(station.id) ?? null}
    />
  ));
}

/** What a station may be called on the rule, the best first. On a narrow one: whole words up to its first comma, as many as there is room for, or one. */
function namesOf(name: string, isSmall: boolean): readonly string[] {
  if (!isSmall) return [name];
  const [first = name, ...more] = (name.split(",")[0] ?? name).split(" ");
  let text = first;
  for (const word of more) {
    if (`${text} ${word}`.length > SHORT_LETTERS) break;
    text = `${text} ${word}`;
  }
  return text === first ? [first] : [text, first];
}

type StopProps = {
  readonly station: RuleStation;
  readonly atPx: number;
  readonly level: Levels;
  readonly name: string | null;
};

function Stop({ station, atPx, level, name }: StopProps): ReactNode {
  const isChosen = useBench((bench) => bench.chosen?.id === station.id);
  const take = (): void => choose({ kind: "station", id: station.id });
  const y = station.isBranch ? level.twigY : level.lineY;
  const radius = isChosen ? 7 : station.isBranch ? 3 : 4.5;
  return (
    <g
      role="button"
      tabIndex={0}
      className="rule-stop"
      aria-label={`${station.name}, ${Math.round(station.atMm)} millimetres`}
      aria-pressed={isChosen}
      onClick={take}
      onKeyDown={(event) => {
        if (event.key === "Enter" || event.key === " ") take();
      }}
    >
      <rect x={atPx - 12} y={y - 12} width={24} height={24} fill="transparent" />
      {name !== null && (
        <text x={atPx} y={level.nameY} textAnchor="middle" fontWeight={isChosen ? 700 : 400}>
          {name}
        </text>
      )}
      <circle
        cx={atPx}
        cy={y}
        r={radius}
        fill={isChosen ? "var(--verdigris)" : "var(--sheet)"}
        stroke="var(--ink)"
        strokeWidth="2"
      />
    </g>
  );
}

/** Ticks each 20 mm where there is room, each 100 mm otherwise, below the figures; figures where they do not touch. */
function Graduation({ view, x, at, pxPerMm }: Scaled & { pxPerMm: number }): ReactNode {
  const fineMm = pxPerMm * 20 > 5 ? 20 : pxPerMm * 100 > 5 ? 100 : 500;
  const figureMm = [100, 200, 500, 1000].find((mm) => mm * pxPerMm > 64) ?? 2000;
  const ticks: number[] = [];
  for (let mm = Math.ceil(view.leastMm / fineMm) * fineMm; mm <= view.mostMm; mm += fineMm)
    ticks.push(mm);
  return (
    <g stroke="var(--ink2)">
      {ticks.map((mm) => (
        <line
          key={mm}
          x1={x(mm)}
          x2={x(mm)}
          y1={at.footY}
          y2={at.footY - (mm % figureMm === 0 ? 14 : mm % 100 === 0 ? 5 : 3)}
          strokeWidth="1"
        />
      ))}
      {ticks
        .filter((mm) => mm % figureMm === 0)
        .map((mm) => (
          <text key={mm} className="tick-figure" x={x(mm) + 4} y={at.footY - 7} stroke="none">
            {mm}
          </text>
        ))}
    </g>
  );
}

/** What the present step lays on the rule: amps, findings, this wire's way. */
function Marks({ x, at }: Scaled): ReactNode {
  const marks = useRuleMarks((rule) => rule.marks);
  return marks.map((mark) => (
    <g key={`${mark.fromMm} ${mark.text ?? ""}`}>
      {mark.toMm !== undefined && (
        <line
          x1={x(mark.fromMm)}
          x2={x(mark.toMm)}
          y1={at.lineY}
          y2={at.lineY}
          stroke={`var(--${mark.tone})`}
          strokeWidth="5"
        />
      )}
      {mark.text !== undefined && (
        <text
          x={x((mark.fromMm + (mark.toMm ?? mark.fromMm)) / 2)}
          y={at.lineY - 8}
          textAnchor="middle"
          style={{ fill: `var(--${mark.tone})`, fontWeight: 700 }}
        >
          {mark.text}
        </text>
      )}
    </g>
  ));
}
