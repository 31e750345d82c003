import { type ReactNode, useId } from "react";

type ChoicesProps<T extends string> = {
  readonly legend: string;
  readonly choices: readonly (readonly [value: T, word: string])[];
  readonly value: T;
  readonly onChoice: (value: T) => void;
};

/** One of two or three, all of them in sight. */
export function Choices<T extends string>({
  legend,
  choices,
  value,
  onChoice,
}: ChoicesProps<T>): ReactNode {
  const name = useId();
  return (
    <fieldset className="choices">
      <legend className="note">{legend}</legend>
      <div className="care-row">
        {choices.map(([one, word]) => (
          <label key={one} className={one === value ? "act small radio now" : "act small radio"}>
            <input
              type="radio"
              className="only-spoken"
              name={name}
              checked={one === value}
              onChange={() => onChoice(one)}
            />
            {word}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
