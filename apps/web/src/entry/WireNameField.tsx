import type { NamedMakes } from "@copperwright/engine";
import { type ReactNode, useEffect, useId, useState } from "react";
import { ask } from "../engine/engineClient.ts";

type WireNameFieldProps = {
  readonly label: string;
  /** Id of the make now; empty: none. */
  readonly value: string;
  readonly onMake: (make: string, typed: string) => void;
  /** Shown beside each make before it is taken. */
  readonly before?: (make: string) => ReactNode;
};

const MOST_SHOWN_COUNT = 8;

/** A wire named in any way of the trade. Where several makes bear the name, the person chooses; nothing is guessed. */
export function WireNameField({ label, value, onMake, before }: WireNameFieldProps): ReactNode {
  const [typed, setTyped] = useState<string | null>(null);
  const [named, setNamed] = useState<NamedMakes | null>(null);
  const id = useId();
  useEffect(() => {
    let isCurrent = true;
    setNamed(null);
    if (typed === null || typed.trim() === "") return;
    void ask("surveyMakes", typed).then((answer) => isCurrent && setNamed(answer));
    return () => {
      isCurrent = false;
    };
  }, [typed]);
  const take = (make: string): void => {
    onMake(make, typed ?? make);
    setTyped(null);
  };
  const [only] = named?.makes ?? [];
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
        placeholder="32/0.20, 1.0 mm2, 16 AWG"
        aria-describedby={`${id}-read`}
        aria-invalid={named !== null && named.refusal !== null}
        onFocus={(event) => event.target.select()}
        onChange={(event) => setTyped(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === "Enter" && named?.makes.length === 1 && only) take(only.id);
          if (event.key === "Escape") setTyped(null);
        }}
      />
      <p id={`${id}-read`} className="note entry-read" aria-live="polite">
        {named?.refusal ?? (named === null ? "" : `read as ${named.readAs}`)}
        {named?.makes.length === 0 && named.refusal === null && ": no make of that size is known"}
        {named?.warning}
      </p>
      {named !== null && named.makes.length > 0 && (
        <div className="asked" role="group" aria-label="Which make?">
          {named.makes.slice(0, MOST_SHOWN_COUNT).map((make) => (
            <div key={make.id} className="make-choice">
              <button type="button" className="act small" onClick={() => take(make.id)}>
                {make.name}
              </button>
              {before?.(make.id)}
            </div>
          ))}
        </div>
      )}
    </div>
  );
}
