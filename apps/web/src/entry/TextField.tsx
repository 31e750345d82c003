import { type ReactNode, useId, useState } from "react";

type TextFieldProps = {
  readonly label: string;
  readonly value: string;
  readonly onText: (text: string) => void;
  readonly placeholder?: string;
  /** True: an empty field is taken too. */
  readonly mayBeEmpty?: boolean;
};

/** A line of words, taken with Enter or on leaving; Escape puts back what stood there. */
export function TextField({
  label,
  value,
  onText,
  placeholder,
  mayBeEmpty = false,
}: TextFieldProps): ReactNode {
  const [typed, setTyped] = useState<string | null>(null);
  const id = useId();
  const take = (): void => {
    const text = typed?.trim() ?? value;
    if (text !== value && (mayBeEmpty || text !== "")) onText(text.slice(0, LONGEST_COUNT));
    setTyped(null);
  };
  return (
    <div className="entry">
      <label htmlFor={id} className="note">
        {label}
      </label>
      <input
        id={id}
        className="field"
        autoComplete="off"
        value={typed ?? value}
        placeholder={placeholder}
        onChange={(event) => setTyped(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === "Enter") take();
          if (event.key === "Escape") setTyped(null);
        }}
        onBlur={take}
      />
    </div>
  );
}

const LONGEST_COUNT = 200;
