import { type ReactNode, useId } from "react";

export interface Choice {
  readonly value: string;
  readonly word: string;
}

type SelectFieldProps = {
  readonly label: string;
  readonly value: string;
  readonly choices: readonly Choice[];
  readonly onChoice: (value: string) => void;
  /** Shown where nothing is chosen yet; absent: something always is. */
  readonly none?: string;
};

/** One of a few named things. */
export function SelectField({
  label,
  value,
  choices,
  onChoice,
  none,
}: SelectFieldProps): ReactNode {
  const id = useId();
  return (
    <div className="entry">
      <label htmlFor={id} className="note">
        {label}
      </label>
      <select
        id={id}
        className="field"
        value={value}
        onChange={(event) => onChoice(event.target.value)}
      >
        {none !== undefined && <option value="">{none}</option>}
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.word}
          </option>
        ))}
      </select>
    </div>
  );
}
