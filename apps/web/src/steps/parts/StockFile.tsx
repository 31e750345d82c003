import type { ChangeEvent, ReactNode } from "react";

/** A shop's price list as a CSV file: kept on this device, taken away again with one tap. */
export function StockFile({
  hasList,
  onText,
}: {
  hasList: boolean;
  onText: (text: string | null) => void;
}): ReactNode {
  const pick = async (event: ChangeEvent<HTMLInputElement>): Promise<void> => {
    const [file] = event.target.files ?? [];
    event.target.value = "";
    if (file !== undefined) onText(await file.text());
  };
  return (
    <div className="care-row">
      <label className={hasList ? "act file-act" : "act filled file-act"}>
        {hasList ? "another price list" : "take a shop's price list"}
        <input
          type="file"
          accept=".csv,text/csv"
          className="only-spoken"
          onChange={(event) => void pick(event)}
        />
      </label>
      {hasList && (
        <button type="button" className="act" onClick={() => onText(null)}>
          without prices
        </button>
      )}
      <p className="note">
        CSV with the columns code, description, kind, make, unit, price, currency; if wanted colour,
        pack, in stock.
      </p>
    </div>
  );
}
