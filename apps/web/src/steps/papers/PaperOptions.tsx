import { BOARD_LIMITS_MM, printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { Choices } from "../../entry/Choices.tsx";
import { LengthField } from "../../entry/LengthField.tsx";
import { QuantityField } from "../../entry/QuantityField.tsx";
import { PrinterChoice } from "./PrinterChoice.tsx";
import "./papers.css";
import type { PrintSettings } from "./printSettings.ts";

const PAPERS = [
  ["a4", "A4"],
  ["a3", "A3"],
  ["letter", "Letter"],
] as const;
const INKS = [
  ["colour", "colour"],
  ["black", "black ink only"],
] as const;

type OptionsProps = {
  readonly settings: PrintSettings;
  readonly onChange: (change: Partial<PrintSettings>) => void;
  readonly isOpen?: boolean;
  /** A shop's price list is known. */
  readonly hasStock?: boolean;
};

/** Paper, ink, board and printer; folded away it says what is chosen. */
export function PaperOptions({
  settings,
  onChange,
  isOpen = false,
  hasStock = false,
}: OptionsProps): ReactNode {
  return (
    <details className="paper-options" open={isOpen}>
      <summary>
        Paper and printer <InWords settings={settings} />
      </summary>
      <Choices
        legend="paper"
        choices={PAPERS}
        value={settings.paper}
        onChoice={(paper) => onChange({ paper })}
      />
      <Choices
        legend="ink"
        choices={INKS}
        value={settings.ink}
        onChoice={(ink) => onChange({ ink })}
      />
      <BoardMeasures settings={settings} onChange={onChange} />
      <PrinterChoice settings={settings} onChange={onChange} />
      {hasStock && (
        <label className="paper-check">
          <input
            type="checkbox"
            checked={settings.hasPrices}
            onChange={(event) => onChange({ hasPrices: event.target.checked })}
          />
          prices of the shop's list on the shopping list
        </label>
      )}
    </details>
  );
}

function BoardMeasures({ settings, onChange }: Omit<OptionsProps, "isOpen">): ReactNode {
  const { boardWidthMm, marginMm, overlapMm } = BOARD_LIMITS_MM;
  return (
    <>
      <LengthField
        label="greatest width of a loom board"
        valueMm={settings.boardWidthMm}
        leastMm={boardWidthMm.least}
        mostMm={boardWidthMm.most}
        onLength={(value) => onChange({ boardWidthMm: value })}
      />
      <div className="two-fields">
        <QuantityField
          label="printer's margin"
          value={settings.marginMm}
          unit="mm"
          decimals={1}
          least={marginMm.least}
          most={marginMm.most}
          onValue={(value) => onChange({ marginMm: value })}
        />
        <QuantityField
          label="overlap of sheets"
          value={settings.overlapMm}
          unit="mm"
          decimals={1}
          least={overlapMm.least}
          most={overlapMm.most}
          onValue={(value) => onChange({ overlapMm: value })}
        />
      </div>
    </>
  );
}

function InWords({
  settings: { paper, ink, boardWidthMm, printer },
}: {
  settings: PrintSettings;
}): ReactNode {
  const size = PAPERS.find(([value]) => value === paper)?.[1] ?? paper;
  const parts = [
    size,
    ink === "black" ? "black ink" : "colour",
    `board ${printQuantity(boardWidthMm, "mm")}`,
    printer === null ? "not corrected" : `corrected for ${printer}`,
  ];
  return (
    <span className="note">
      {parts.map((part, i) => (
        <span key={part}>
          {part}
          {i + 1 < parts.length ? ", " : ""}
        </span>
      ))}
    </span>
  );
}
