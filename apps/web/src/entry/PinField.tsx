import { type ReactNode, useId, useMemo, useState } from "react";
import { useBench } from "../store/benchStore.ts";
import { pinChoices } from "./pinChoices.ts";

type PinFieldProps = {
  readonly label: string;
  /** PART.PIN, or OWNER.* for a new place; empty: none yet. */
  readonly value: string;
  readonly onPin: (pin: string) => void;
  readonly howTo?: string | undefined;
};

/** One pin of the machine, found by any part of its name; joints, connectors and bodies offer a new place too. */
export function PinField({ label, value, onPin, howTo }: PinFieldProps): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const [typed, setTyped] = useState<string | null>(null);
  const id = useId();
  const choices = useMemo(() => pinChoices(job), [job]);
  const known = (text: string): string | null =>
    choices.find(({ pin, word }) => pin === text || word === text)?.pin ?? null;
  const isWrong = typed !== null && typed !== "" && known(typed) === null;
  return (
    <div className="entry">
      <label htmlFor={id} className="note">
        {label}
      </label>
      <input
        id={id}
        className="field"
        list={`${id}-pins`}
        autoComplete="off"
        value={typed ?? value}
        placeholder="part.terminal"
        aria-invalid={isWrong}
        aria-describedby={`${id}-how`}
        onFocus={(event) => event.target.select()}
        onChange={(event) => {
          const pin = known(event.target.value);
          setTyped(pin === null ? event.target.value : null);
          if (pin !== null) onPin(pin);
        }}
        onBlur={() => setTyped(null)}
      />
      <datalist id={`${id}-pins`}>
        {choices.map(({ pin, word }) => (
          <option key={pin} value={pin}>
            {word}
          </option>
        ))}
      </datalist>
      <p id={`${id}-how`} className="note entry-read" aria-live="polite">
        {isWrong ? `no terminal is called "${typed}" yet` : howTo}
      </p>
    </div>
  );
}
