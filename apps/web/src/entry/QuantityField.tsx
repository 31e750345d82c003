import { printNumber, printQuantity, readNumber } from "@copperwright/engine/words";
import { type ReactNode, useId, useState } from "react";

type QuantityFieldProps = {
  readonly label: string;
  readonly value: number | null;
  /** A unit of the engine's printing: V, A, W, ohm, rpm … */
  readonly unit: string;
  readonly least?: number;
  readonly most?: number;
  /** Digits after the point that are shown; absent: as the engine prints the unit. */
  readonly decimals?: number;
  /** What is said of a number outside; absent: its bounds. */
  readonly outside?: string;
  readonly onValue: (value: number) => void;
  /** Shown below a good number before it is taken. */
  readonly before?: (value: number) => ReactNode;
};

/** A number in one named unit, taken with Enter or on leaving. What cannot be read is said at the field and nothing is changed. */
export function QuantityField({
  label,
  value,
  unit,
  least = 0,
  most = 1e6,
  outside,
  decimals,
  onValue,
  before,
}: QuantityFieldProps): ReactNode {
  const [typed, setTyped] = useState<string | null>(null);
  const id = useId();
  const bare = typed?.replace(new RegExp(`\\s*(${unit}|Ω)$`, "i"), "") ?? "";
  const read = typed === null || bare.trim() === "" ? null : readNumber(bare);
  const isGood = read !== null && read >= least && read <= most;
  const shown = (figure: number): string =>
    decimals === undefined
      ? quantityText(figure, unit)
      : `${printNumber(figure, decimals)}\u00a0${unit}`;
  const take = (): void => {
    if (isGood) onValue(read);
    if (isGood || typed?.trim() === "") setTyped(null);
  };
  const fault =
    typed === null || typed.trim() === "" || isGood
      ? null
      : read === null
        ? `"${typed}" is no number`
        : (outside ??
          `must lie between ${quantityText(least, unit)} and ${quantityText(most, unit)}`);
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
        value={typed ?? (value === null ? "" : shown(value))}
        placeholder={unit}
        aria-describedby={`${id}-read`}
        aria-invalid={fault !== null}
        onFocus={(event) => event.target.select()}
        onChange={(event) => setTyped(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === "Enter") take();
          if (event.key === "Escape") setTyped(null);
        }}
        onBlur={take}
      />
      <p id={`${id}-read`} className="note entry-read" aria-live="polite">
        {fault}
      </p>
      {isGood && read !== value && before?.(read)}
    </div>
  );
}

/** As the engine prints it; a unit it has no manner for stands behind the bare number. */
function quantityText(value: number, unit: string): string {
  try {
    return printQuantity(value, unit);
  } catch {
    return `${value}\u00a0${unit}`.trim();
  }
}
