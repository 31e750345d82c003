import type { ReactNode } from "react";
import { SceneView } from "../../drawing/SceneView.tsx";
import { useAnswer } from "../../engine/useAnswer.ts";
import { goTo } from "../../store/route.ts";
import { LampGlows } from "./LampGlows.tsx";
import { LampLabels } from "./LampLabels.tsx";
import { ProbeTips } from "./ProbeTips.tsx";
import { RunValues } from "./RunValues.tsx";
import { useTry } from "./tryStore.ts";
import { useBoxMm } from "./useBoxMm.ts";
import type { LampView, TryView } from "./worker/tryView.ts";

type SideSheetProps = {
  /** Null until the first state is solved. */
  readonly view: Pick<TryView, "runs"> | null;
  readonly lamps: readonly LampView[];
  /** Lamps that are named, flashing ones in their lit half, so that no word comes and goes with the beat; absent: `lamps`. */
  readonly named?: readonly LampView[] | undefined;
  readonly before: readonly LampView[] | null;
};

const KINDS = ["station", "run"] as const;
const WIDE_MM = 130;
/** Room for the names of the lamps above the machine. */
const BAND_MM = 21;

/** The machine from the left: lamps at their light, what runs in the loom, the two leads of the meter. */
export function SideSheet({ view, lamps, named = lamps, before }: SideSheetProps): ReactNode {
  const { box, size } = useBoxMm();
  const isWide = (size?.widthMm ?? 0) >= WIDE_MM;
  const { answer } = useAnswer("trySide", {
    ...(size ?? { widthMm: 100, heightMm: 60 }),
    bandMm: isWide ? BAND_MM : 0,
  });
  return (
    <div className="try-side" ref={box}>
      {answer === null ? (
        size !== null && <Unplaced />
      ) : (
        <SceneView
          className="try-scene"
          picture={answer.picture}
          label="The machine from its left side, front left"
          kinds={KINDS}
          onPick={({ kind, id }) => kind === "station" && offerPins(id)}
          over={
            <g className="try-over">
              <LampGlows lamps={lamps} stations={answer.stations} />
              {view !== null && isWide && <RunValues runs={view.runs} side={answer} />}
              {isWide && <LampLabels lamps={named} before={before} side={answer} />}
              <ProbeTips side={answer} />
            </g>
          }
        />
      )}
    </div>
  );
}

/** With a lead waiting to be put down, the station tapped offers its pins to it. */
function offerPins(station: string): void {
  const { offer } = useTry.getState();
  if (offer !== null) useTry.setState({ offer: { ...offer, station } });
}

function Unplaced(): ReactNode {
  return (
    <div className="try-unplaced">
      <p>No station has its place on the side view yet; switches, lists and meter work without.</p>
      <button type="button" className="act" onClick={() => goTo("survey")}>
        place them in Survey
      </button>
    </div>
  );
}
