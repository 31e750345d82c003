import { printNumber } from "@copperwright/engine/words";
import { type ReactNode, useState } from "react";
import { SelectField } from "../../entry/SelectField.tsx";
import { PrinterReadingsForm } from "./PrinterReadingsForm.tsx";
import type { PrintSettings } from "./printSettings.ts";

const ANOTHER = "another";

type PrinterChoiceProps = {
  readonly settings: PrintSettings;
  readonly onChange: (change: Partial<PrintSettings>) => void;
};

/** Which printer the boards are corrected for, and how one is measured. */
export function PrinterChoice({ settings, onChange }: PrinterChoiceProps): ReactNode {
  const { printer, printers } = settings;
  const [isAdding, setAdding] = useState(false);
  const names = Object.keys(printers).sort();
  const kept = printer === null ? null : (printers[printer] ?? null);
  const keep = (name: string, readings: NonNullable<typeof kept>): void => {
    onChange({ printer: name, printers: { ...printers, [name]: readings } });
    setAdding(false);
  };
  const forget = (): void => {
    const rest = Object.entries(printers).filter(([name]) => name !== printer);
    onChange({ printer: null, printers: Object.fromEntries(rest) });
  };
  const choose = (value: string): void => {
    setAdding(value === ANOTHER);
    if (value !== ANOTHER) onChange({ printer: value === "" ? null : value.slice(1) });
  };
  return (
    <section className="printer" aria-label="Printer">
      <SelectField
        label="boards corrected for the printer"
        value={isAdding ? ANOTHER : printer === null ? "" : `=${printer}`}
        choices={[
          { value: "", word: "none: not corrected" },
          // Marked, so that a printer may have any name.
          ...names.map((name) => ({ value: `=${name}`, word: name })),
          { value: ANOTHER, word: "another printer: measure it" },
        ]}
        onChoice={choose}
      />
      {isAdding && <PrinterReadingsForm key="new" name={null} kept={null} onKeep={keep} />}
      {!isAdding && printer !== null && kept !== null && (
        <>
          <p className="note">
            Of 100 mm it makes {printNumber(kept.readAcrossMm, 2)} mm across and{" "}
            {printNumber(kept.readDownMm, 2)} mm down. Boards and diagram tiles are stretched to
            suit, and say so at their foot.
          </p>
          <details>
            <summary>measured again</summary>
            <PrinterReadingsForm key={printer} name={printer} kept={kept} onKeep={keep} />
          </details>
          <button type="button" className="act small" onClick={forget}>
            forget this printer
          </button>
        </>
      )}
    </section>
  );
}
