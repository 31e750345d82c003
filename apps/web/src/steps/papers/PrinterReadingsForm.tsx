import { BOARD_LIMITS_MM } from "@copperwright/engine/words";
import { type ReactNode, useState } from "react";
import { Choices } from "../../entry/Choices.tsx";
import { QuantityField } from "../../entry/QuantityField.tsx";
import { TextField } from "../../entry/TextField.tsx";
import { type PrinterReadings, takenReadings } from "./printSettings.ts";

const SHEETS = [
  ["corrected", "corrected for it"],
  ["plain", "not corrected"],
] as const;
const NOT_THIS_BAR =
  "that is no reading of the 100 mm bar. Print at 100 %, without fitting to the page, and measure from end to end.";

type ReadingsFormProps = {
  /** Null: a printer nobody has named yet. */
  readonly name: string | null;
  readonly kept: PrinterReadings | null;
  readonly onKeep: (name: string, readings: PrinterReadings) => void;
};

/** The 100 mm bar of one printed sheet, measured both ways. */
export function PrinterReadingsForm({ name, kept, onKeep }: ReadingsFormProps): ReactNode {
  const [typedName, setTypedName] = useState("");
  const [acrossMm, setAcrossMm] = useState<number | null>(null);
  const [downMm, setDownMm] = useState<number | null>(null);
  const [sheet, setSheet] = useState<"corrected" | "plain">("corrected");
  const [message, setMessage] = useState<string | null>(null);
  const keep = (): void => {
    const called = name ?? typedName;
    const missing = missingWords(called, acrossMm, downMm);
    setMessage(missing);
    if (missing !== null || acrossMm === null || downMm === null) return;
    const measured = { readAcrossMm: acrossMm, readDownMm: downMm };
    const taken = takenReadings(measured, sheet === "corrected" ? kept : null);
    if (!taken.ok) {
      setMessage(taken.message);
      return;
    }
    setAcrossMm(null);
    setDownMm(null);
    onKeep(called, taken.readings);
  };
  const { least, most } = BOARD_LIMITS_MM.readAcrossMm;
  const bar = { unit: "mm", decimals: 2, least, most, outside: NOT_THIS_BAR } as const;
  return (
    <div className="printer-form">
      {name === null && (
        <>
          <p className="note">
            Print one sheet of a board at 100 % without a printer chosen, and measure its 100 mm
            bars.
          </p>
          <TextField
            label="your name for the printer"
            value={typedName}
            placeholder="garage"
            onText={setTypedName}
          />
        </>
      )}
      <div className="two-fields">
        <QuantityField label="bar across" value={acrossMm} onValue={setAcrossMm} {...bar} />
        <QuantityField label="bar down" value={downMm} onValue={setDownMm} {...bar} />
      </div>
      {kept !== null && (
        <Choices
          legend="the sheet I measured was"
          choices={SHEETS}
          value={sheet}
          onChoice={setSheet}
        />
      )}
      {message !== null && <p role="alert">{message}</p>}
      <button type="button" className="act small" onClick={keep}>
        keep both readings
      </button>
    </div>
  );
}

function missingWords(name: string, acrossMm: number | null, downMm: number | null): string | null {
  if (name.trim() === "") return "Give the printer a name of your own first.";
  if (acrossMm === null && downMm === null) return "Measure the bar across and down.";
  if (acrossMm === null || downMm === null)
    return `A printer may stretch one way only: measure the bar ${acrossMm === null ? "across" : "down"} as well.`;
  return null;
}
