import type { PartFigure } from "@copperwright/engine";
import { type ReactNode, useState } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { QuantityField } from "../../entry/QuantityField.tsx";
import { ConsequenceLine } from "../../frame/ConsequenceLine.tsx";
import { figureText } from "../proof/sumOf.ts";
import type { SurveyChange } from "./surveyAnswers.ts";
import { surveyEdit } from "./surveyEdit.ts";

const BASES = ["measured", "stated", "estimated"] as const;
type Basis = (typeof BASES)[number];
const BASIS_WORDS: Readonly<Record<string, string>> = {
  measured: "measured",
  stated: "read off it",
  estimated: "guessed",
  chosen: "chosen",
};

/** The figures of a part, each with where it comes from. What is typed counts as measured, as read off it, or as a guess, as chosen above. */
export function PartFigures({ part }: { part: string }): ReactNode {
  const { answer: figures } = useAnswer("surveyFigures", part);
  const [basis, setBasis] = useState<Basis>("stated");
  if (figures === null || figures.length === 0) return null;
  return (
    <fieldset className="figures">
      <legend className="note">figures; what is typed is</legend>
      <div className="basis-row">
        {BASES.map((one) => (
          <label key={one}>
            <input
              type="radio"
              name="basis"
              checked={one === basis}
              onChange={() => setBasis(one)}
            />
            {BASIS_WORDS[one]}
          </label>
        ))}
      </div>
      {figures.map((figure) => (
        <Figure key={figure.path.join("/")} part={part} figure={figure} basis={basis} />
      ))}
    </fieldset>
  );
}

function Figure({
  part,
  figure,
  basis,
}: {
  part: string;
  figure: PartFigure;
  basis: Basis;
}): ReactNode {
  const { word, unit, value, basis: now } = figure;
  const from = now === null ? "" : `, ${BASIS_WORDS[now]}`;
  return (
    <div className={now === "estimated" ? "figure-row guessed" : "figure-row"}>
      <QuantityField
        label={`${word}${value === null ? "" : from}`}
        value={value}
        unit={unit}
        least={-1000}
        onValue={(next) =>
          void surveyEdit(`${word} ${figureText(next, unit)}`, {
            does: "figure",
            part,
            figure,
            value: next,
            basis,
          })
        }
        before={(next) => (
          <FigureOutcome change={{ does: "figure", part, figure, value: next, basis }} />
        )}
      />
    </div>
  );
}

/** What a figure typed would lead to, before it is taken. */
function FigureOutcome({ change }: { change: SurveyChange }): ReactNode {
  const { answer, isStale } = useAnswer("surveyChange", change);
  return <ConsequenceLine operation={isStale ? null : answer} />;
}
