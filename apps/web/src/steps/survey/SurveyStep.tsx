import { type ReactNode, useEffect, useState } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { noteStep, useBench } from "../../store/benchStore.ts";
import { Earths } from "../wiring/Earths.tsx";
import { FoundWiring } from "./FoundWiring.tsx";
import { PartPicker } from "./PartPicker.tsx";
import { PhotographVerbs } from "./PhotographVerbs.tsx";
import { SideSheet } from "./SideSheet.tsx";
import { SurveySlip } from "./SurveySlip.tsx";
import "./survey.css";
import { newStation } from "./newStation.ts";
import { UnknownList } from "./UnknownList.tsx";
import { Unplaced } from "./Unplaced.tsx";
import { useSlipPlace } from "./useSlipPlace.ts";

const LISTS = ["unknown", "parts", "wiring", "earths", "photograph"] as const;
export type SurveyList = (typeof LISTS)[number];

/** The machine as it stands: where everything is, how far apart, what is not known yet. */
export default function SurveyStep(): ReactNode {
  const { answer: unknown } = useAnswer("surveyUnknown", undefined);
  const [list, setList] = useState<SurveyList>("unknown");
  const slip = useSlipPlace();
  const wireCount = useBench((bench) => bench.document!.job.wires.length);
  const partCount = useBench((bench) => bench.document!.job.parts.length);
  const stationCount = useBench((bench) => bench.document!.job.stations.length);
  const bondCount = useBench((bench) => bench.document!.job.bonds.length);
  const [scaling, setScaling] = useState(false);
  useNote(unknown?.length ?? null, stationCount);
  const words: Readonly<Record<SurveyList, string>> = {
    unknown: `Still unknown ${unknown?.length ?? ""}`,
    parts: `Add a part, ${partCount} there`,
    wiring: `Wiring as found, ${wireCount}`,
    earths: `Earths, ${bondCount} bonds`,
    photograph: "Photograph",
  };
  return (
    <div className="survey">
      <SideSheet onPick={slip.onTap} isScaling={scaling} onScaled={() => setScaling(false)} />
      <section className="survey-lists" aria-label="What belongs to the survey">
        <div className="survey-heads" role="group" aria-label="Lists">
          {LISTS.map((name) => (
            <button
              key={name}
              type="button"
              aria-pressed={name === list}
              className="plain survey-head"
              onClick={() => setList(name)}
            >
              {words[name]}
            </button>
          ))}
          <button
            type="button"
            className={stationCount === 0 ? "act filled" : "act"}
            onClick={() => void newStation()}
          >
            {stationCount === 0 ? "place the first station" : "add a station"}
          </button>
        </div>
        <div className="survey-list" role="group" aria-label={words[list]}>
          {list === "unknown" && <UnknownList unknown={unknown} />}
          {list === "parts" && <PartPicker />}
          {list === "wiring" && <FoundWiring />}
          {list === "earths" && <Earths />}
          {list === "photograph" && <PhotographVerbs isScaling={scaling} onScaling={setScaling} />}
        </div>
      </section>
      <Unplaced />
      <SurveySlip at={slip.at} onAddPart={() => setList("parts")} />
    </div>
  );
}

function useNote(unknownCount: number | null, stationCount: number): void {
  useEffect(() => {
    if (unknownCount === null) return;
    const isBegun = stationCount > 0;
    noteStep("survey", {
      text: unknownCount === 0 ? "all known" : `${unknownCount} unknown`,
      box: unknownCount === 0 ? "ticked" : isBegun ? "half" : "empty",
    });
  }, [unknownCount, stationCount]);
}
