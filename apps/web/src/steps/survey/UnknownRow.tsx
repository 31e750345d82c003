import type { FoundOut, Unknown } from "@copperwright/engine";
import { printQuantity } from "@copperwright/engine/words";
import { type ReactNode, useState } from "react";
import { LengthField } from "../../entry/LengthField.tsx";
import { QuantityField } from "../../entry/QuantityField.tsx";
import { SelectField } from "../../entry/SelectField.tsx";
import { WireNameField } from "../../entry/WireNameField.tsx";
import { choose } from "../../store/benchStore.ts";
import { goTo } from "../../store/route.ts";
import { figureText } from "../proof/sumOf.ts";
import { surveyEdit } from "./surveyEdit.ts";

/** One thing to find out. Its name lights it on the drawing; the answer goes where it belongs as measured. */
export function UnknownRow({ unknown }: { unknown: Unknown }): ReactNode {
  const { subject, what, howTo, guess } = unknown;
  return (
    <li className="unknown-row">
      <div>
        <button
          type="button"
          className="figure-link unknown-what"
          onClick={() =>
            choose(subject.kind === "bond" ? null : { kind: subject.kind, id: subject.id })
          }
        >
          {what}
        </button>
        <p className="note">{howTo}</p>
      </div>
      <div>
        {guess !== null && <p className="note guess">guessed ≈ {guessText(unknown)}</p>}
        <AnswerField unknown={unknown} />
      </div>
    </li>
  );
}

function guessText({ guess, answer }: Unknown): string {
  if (guess === null) return "";
  if (answer.kind === "length") return printQuantity(guess, "mm");
  return figureText(guess, answer.kind === "number" ? answer.unit : "");
}

function AnswerField({ unknown }: { unknown: Unknown }): ReactNode {
  const { answer, what } = unknown;
  if (answer.kind === "contacts") {
    return (
      <button
        type="button"
        className="act small"
        onClick={() => {
          choose({ kind: "part", id: answer.part });
          goTo("circuits");
        }}
      >
        meter it, in Circuits
      </button>
    );
  }
  const take = (found: FoundOut, typed?: string): void =>
    void surveyEdit(`found out: ${what}`, {
      does: "answer",
      put: answer.put,
      found,
      ...(typed === undefined ? {} : { typed }),
    });
  switch (answer.kind) {
    case "length":
      return <LengthField label="measured" valueMm={null} onLength={take} />;
    case "number":
      return <QuantityField label="measured" value={null} unit={answer.unit} onValue={take} />;
    case "wire":
      return <WireNameField label="as counted" value="" onMake={(make) => take(make)} />;
    case "choice":
      return (
        <SelectField label="found" value="" none="?" choices={answer.options} onChoice={take} />
      );
    case "point":
      return <PointFields onPoint={take} />;
  }
}

/** Speed, amps and volts of one reading belong together and are taken together. */
function PointFields({ onPoint }: { onPoint: (point: FoundOut) => void }): ReactNode {
  const [point, setPoint] = useState<{ speedRpm?: number; currentA?: number; atV?: number }>({});
  const { speedRpm, currentA, atV } = point;
  const isWhole = speedRpm !== undefined && currentA !== undefined && atV !== undefined;
  return (
    <div className="point-fields">
      <QuantityField
        label="speed"
        value={speedRpm ?? null}
        unit="rpm"
        most={20_000}
        onValue={(value) => setPoint({ ...point, speedRpm: value })}
      />
      <QuantityField
        label="amps"
        value={currentA ?? null}
        unit="A"
        onValue={(value) => setPoint({ ...point, currentA: value })}
      />
      <QuantityField
        label="volts"
        value={atV ?? null}
        unit="V"
        onValue={(value) => setPoint({ ...point, atV: value })}
      />
      {isWhole && (
        <button
          type="button"
          className="act small"
          onClick={() => onPoint({ speedRpm, currentA, atV })}
        >
          take this reading
        </button>
      )}
    </div>
  );
}
