import type { BuildCard, BuildEnd } from "@copperwright/engine/scenes";
import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { Tick } from "../../frame/marks.tsx";
import { type BuildMark, type DoneMarks, isTicked, tick } from "./buildDone.ts";

const DOUBLE_HIT_MS = 400;
let lastHit = { key: "", at: 0 };

/** One end of the wire: what goes on first, what is fitted and how. A wet finger's double hit counts once. */
export function EndPanel({
  end,
  card,
  done,
}: {
  end: BuildEnd;
  card: BuildCard;
  done: DoneMarks;
}): ReactNode {
  const letter = end.end === "from" ? "A" : "B";
  const mark: BuildMark = end.end === "from" ? "from-end" : "to-end";
  const isOn = isTicked(done, card.wire, mark);
  const hit = (time: number): void => {
    const key = `${card.wire} ${mark}`;
    const isDouble = lastHit.key === key && time - lastHit.at < DOUBLE_HIT_MS;
    lastHit = { key, at: time };
    if (!isDouble) tick(card.wire, mark, `wire ${card.number}, end ${letter}`);
  };
  return (
    <button
      type="button"
      className={isOn ? "end-panel done" : "end-panel"}
      aria-pressed={isOn}
      onClick={(event) => hit(event.timeStamp)}
    >
      <span className="end-letter" aria-hidden="true">
        {letter}
      </span>
      <span className="end-words">
        <b className="end-pin">{end.pin}</b>
        <span className="note">{end.where}</span>
        {end.sleeveFirst !== null && <span className="end-first">{end.sleeveFirst} on first</span>}
        <span>{end.terminal}</span>
        <span>
          strip {printQuantity(end.stripMm, "mm")} · {end.tool}
          {end.pullN !== null && <> · a sample holds {printQuantity(end.pullN, "N")}</>}
        </span>
        {end.sharedWith.length > 0 && <b>in one barrel with {end.sharedWith.join(", ")}</b>}
        {end.problem !== "" && <b className="end-problem">{end.problem}</b>}
        {end.cavity !== null && (
          <b>
            {end.cavity.connector}, {end.cavity.half} half, cavity {end.cavity.cavity}
          </b>
        )}
      </span>
      <span className="end-side">
        <span className="end-box" aria-hidden="true">
          {isOn && <Tick />}
        </span>
        {end.cavity !== null && <Cavities cavity={end.cavity} />}
      </span>
    </button>
  );
}

const CELL = 22;

function Cavities({ cavity }: { cavity: NonNullable<BuildEnd["cavity"]> }): ReactNode {
  const across = Math.max(...cavity.rows.map((row) => row.length));
  return (
    <span className="cavities">
      <svg
        viewBox={`-2 -2 ${across * CELL + 4} ${cavity.rows.length * CELL + 4}`}
        width={Math.min(170, across * CELL + 4)}
        aria-hidden="true"
      >
        <rect
          x="-1"
          y="-1"
          width={across * CELL + 2}
          height={cavity.rows.length * CELL + 2}
          fill="none"
          stroke="currentColor"
          strokeWidth="1.5"
          rx="3"
        />
        {cavity.rows.flatMap((row, y) =>
          row.map((name, x) => (
            <g key={name}>
              <rect
                x={x * CELL + 3}
                y={y * CELL + 3}
                width={CELL - 6}
                height={CELL - 6}
                fill={name === cavity.cavity ? "currentColor" : "none"}
                stroke="currentColor"
              />
              <text
                x={x * CELL + CELL / 2}
                y={y * CELL + CELL / 2 + 4}
                textAnchor="middle"
                fontSize="11"
                fill={name === cavity.cavity ? "var(--sheet)" : "currentColor"}
              >
                {name}
              </text>
            </g>
          )),
        )}
      </svg>
      <span className="note">seen from wire side</span>
    </span>
  );
}
