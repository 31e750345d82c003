import { type ReactNode, useMemo } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { choose, useBench } from "../../store/benchStore.ts";
import { type SpokenFinding, stationsOf } from "./findingRows.ts";
import { useStationNames } from "./useStationNames.ts";
import type { Whereabouts } from "./whereabouts.ts";

const WIDTH_MM = 78;
const HEIGHT_MM = 40;

type PlaceOnMachineProps = {
  readonly finding: SpokenFinding;
  readonly where: Whereabouts | null;
};

/** The machine small, with the place of a finding ringed and the runs it lies in drawn over. */
export function PlaceOnMachine({ finding, where }: PlaceOnMachineProps): ReactNode {
  const chosen = useBench((bench) => bench.chosen?.id);
  const names = useStationNames();
  const { answer } = useAnswer("trySide", {
    widthMm: WIDTH_MM,
    heightMm: HEIGHT_MM,
    bandMm: 0,
  });
  const html = useMemo(() => ({ __html: answer?.picture.svg ?? "" }), [answer]);
  if (answer === null || where === null) return null;
  const stations = stationsOf(finding, where);
  const tone = `var(--${finding.severity === "not-proven" ? "ink2" : finding.severity})`;
  const at = new Map(answer.stations.map((station) => [station.id, station]));
  const runs = answer.runs.filter(({ id }) => where.runs[finding.subject.id]?.includes(id));
  return (
    <figure className="proof-place">
      <svg
        viewBox={`0 0 ${WIDTH_MM} ${HEIGHT_MM}`}
        role="img"
        aria-label={placeWords(stations, names)}
      >
        <g dangerouslySetInnerHTML={html} />
        {runs.map(({ id, from, to }) => (
          <line
            key={id}
            x1={at.get(from)?.xMm}
            y1={at.get(from)?.yMm}
            x2={at.get(to)?.xMm}
            y2={at.get(to)?.yMm}
            stroke={tone}
            strokeWidth="1.4"
            strokeLinecap="round"
          />
        ))}
        {stations.map((id) => (
          <circle
            key={id}
            cx={at.get(id)?.xMm}
            cy={at.get(id)?.yMm}
            r={id === chosen ? 3 : 2.2}
            fill="none"
            stroke={tone}
            strokeWidth="0.9"
          />
        ))}
      </svg>
      <figcaption className="note">
        {stations.map((id, k) => (
          <span key={id}>
            {k > 0 && " to "}
            <button
              type="button"
              className="figure-link"
              onClick={() => choose({ kind: "station", id })}
            >
              {names.get(id) ?? id}
            </button>
          </span>
        ))}
        {stations.length === 0 && "on no one place of the machine"}
      </figcaption>
    </figure>
  );
}

const placeWords = (stations: readonly string[], names: ReadonlyMap<string, string>): string =>
  stations.length === 0
    ? "The machine from its left side"
    : `The machine from its left side, marked at ${stations.map((id) => names.get(id) ?? id).join(" and ")}`;
