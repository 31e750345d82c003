import type { ReactNode } from "react";
import { QuantityField } from "../../entry/QuantityField.tsx";
import { useTry } from "./tryStore.ts";

const SLIDER_MOST_RPM = 8000;
const FIELD_MOST_RPM = 20_000;
const START_RPM = 3000;
const MODES = ["stopped", "cranking", "running"] as const;
const CHARGES = ["full", "half", "weak"] as const;

/** Engine stopped, cranking or at a speed; the battery's charge; contacts new or aged. */
export function EngineControl(): ReactNode {
  const { battery, aged } = useTry();
  return (
    <section className="try-engine" aria-label="Engine and battery">
      <EngineSpeed />
      <h3>Battery</h3>
      <Choice
        label="Battery charge"
        words={CHARGES}
        now={battery}
        onWord={(charge) => useTry.setState({ battery: charge })}
      />
      <label className="try-check">
        <input
          type="checkbox"
          checked={aged}
          onChange={(event) => useTry.setState({ aged: event.target.checked })}
        />
        contacts and earths aged
      </label>
    </section>
  );
}

/** Stopped, cranking, or running at a speed set by slider or field. */
export function EngineSpeed(): ReactNode {
  const { engine } = useTry();
  const speedRpm = engine.speedRpm ?? START_RPM;
  const run = (rpm: number): void =>
    useTry.setState({ engine: { mode: "running", speedRpm: rpm } });
  return (
    <>
      <h2>Engine</h2>
      <Choice
        label="Engine"
        words={MODES}
        now={engine.mode}
        onWord={(mode) =>
          mode === "running" ? run(speedRpm) : useTry.setState({ engine: { mode } })
        }
      />
      {engine.mode === "running" && (
        <>
          <input
            type="range"
            className="try-speed"
            aria-label="Engine speed, revolutions a minute"
            min={0}
            max={SLIDER_MOST_RPM}
            step={100}
            value={Math.min(SLIDER_MOST_RPM, speedRpm)}
            onChange={(event) => run(Number(event.target.value))}
          />
          <QuantityField
            label="speed"
            unit="rpm"
            value={speedRpm}
            most={FIELD_MOST_RPM}
            onValue={run}
          />
        </>
      )}
    </>
  );
}

type ChoiceProps<T extends string> = {
  readonly label: string;
  readonly words: readonly T[];
  readonly now: T;
  readonly onWord: (word: T) => void;
  readonly said?: Readonly<Partial<Record<T, string>>>;
};

/** A few words side by side, one of them in force. */
export function Choice<T extends string>({
  label,
  words,
  now,
  onWord,
  said,
}: ChoiceProps<T>): ReactNode {
  return (
    <div className="try-choice" role="group" aria-label={label}>
      {words.map((word) => (
        <button
          key={word}
          type="button"
          className="act"
          aria-pressed={word === now}
          onClick={() => onWord(word)}
        >
          {said?.[word] ?? word}
        </button>
      ))}
    </div>
  );
}
