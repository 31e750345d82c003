import { type LengthGuess, printQuantity, readLength } from "@copperwright/engine/words";
import { type ReactNode, useId, useState } from "react";

type LengthFieldProps = {
  readonly label: string;
  /** Present value, mm; null: not known. */
  readonly valueMm: number | null;
  readonly onLength: (lengthMm: number, typed: string) => void;
  readonly placeholder?: string;
  readonly leastMm?: number;
  readonly mostMm?: number;
};

const REASONS: Readonly<Record<string, string>> = {
  unread: "not a length. Type 1600, 160 cm, 1.6 m, 63 in or 5'3\".",
  negative: "a length cannot be negative.",
  "too-long": "longer than any vehicle. Check the unit.",
};

/** One field for a length in any unit. What it is read as stands below before it is taken; a doubtful unit is asked, never guessed. */
export function LengthField({
  label,
  valueMm,
  onLength,
  placeholder,
  leastMm = 0,
  mostMm = Number.POSITIVE_INFINITY,
}: LengthFieldProps): ReactNode {
  const [typed, setTyped] = useState<string | null>(null);
  const id = useId();
  const reading = typed === null || typed.trim() === "" ? null : readLength(typed);
  const isWithin = (lengthMm: number): boolean => lengthMm >= leastMm && lengthMm <= mostMm;
  const take = (lengthMm: number): void => {
    if (!isWithin(lengthMm)) return;
    onLength(lengthMm, typed ?? "");
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
        inputMode="decimal"
        autoComplete="off"
        placeholder={placeholder ?? "mm, cm, m, in"}
        value={typed ?? (valueMm === null ? "" : printQuantity(valueMm, "mm"))}
        aria-describedby={`${id}-read`}
        onFocus={(event) => event.target.select()}
        onChange={(event) => setTyped(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === "Enter" && reading?.kind === "length") take(reading.lengthMm);
          if (event.key === "Escape") setTyped(null);
        }}
        onBlur={() => reading?.kind === "length" && take(reading.lengthMm)}
      />
      <p id={`${id}-read`} className="note entry-read" aria-live="polite">
        {reading?.kind === "length" && `read as ${printQuantity(reading.lengthMm, "mm")}`}
        {reading?.kind === "length" &&
          !isWithin(reading.lengthMm) &&
          `; must lie between ${printQuantity(leastMm, "mm")} and ${printQuantity(mostMm, "mm")}`}
        {reading?.kind === "refusal" && REASONS[reading.reason]}
      </p>
      {reading?.kind === "ask" && (
        <Asked guesses={reading.couldBe.filter((one) => isWithin(one.lengthMm))} take={take} />
      )}
    </div>
  );
}

function Asked({
  guesses,
  take,
}: {
  guesses: readonly LengthGuess[];
  take: (lengthMm: number) => void;
}): ReactNode {
  return (
    <div className="asked" role="group" aria-label="Which unit?">
      <span className="note">which?</span>
      {guesses.map(({ unit, lengthMm }) => (
        <button
          key={unit}
          type="button"
          className="act small"
          onPointerDown={(event) => event.preventDefault()}
          onClick={() => take(lengthMm)}
        >
          {unit}: {printQuantity(lengthMm, "mm")}
        </button>
      ))}
    </div>
  );
}
