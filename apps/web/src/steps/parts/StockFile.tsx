import type { Refusal } from "@copperwright/engine";
import { type ChangeEvent, type ReactNode, useState } from "react";
import { ask } from "../../engine/engineClient.ts";
import { FormerLists } from "./FormerLists.tsx";
import { type Prices, putPrices, settlePrices } from "./priceList.ts";

const LONGEST_LETTERS = 2_000_000;

/** A shop's price list as a CSV file: in use for the whole shop, replaced or taken away with one tap, every former one kept. */
export function StockFile({ prices }: { prices: Prices }): ReactNode {
  const [refusals, setRefusals] = useState<readonly Refusal[] | string>([]);
  const hasList = prices.list !== null && prices.list.text !== null;
  const pick = async (event: ChangeEvent<HTMLInputElement>): Promise<void> => {
    const [file] = event.target.files ?? [];
    event.target.value = "";
    if (file === undefined) return;
    if (file.size > LONGEST_LETTERS) {
      setRefusals("It is larger than 2 MB. Leave out what a loom has no use for.");
      return;
    }
    const text = await file.text();
    const read = await ask("partsListRead", { text });
    setRefusals(read.ok ? [] : read.refusals);
    if (read.ok) await putPrices(file.name, text);
  };
  return (
    <div className="stock">
      <WhoseList prices={prices} />
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
          <button
            type="button"
            className="act"
            onClick={() => void putPrices("without prices", null)}
          >
            without prices
          </button>
        )}
        <p className="note">
          CSV with the columns code, description, kind, make, unit, price, currency; if wanted
          colour, pack, in stock.
        </p>
      </div>
      {prices.list !== null && <FormerLists list={prices.list} />}
      {refusals.length > 0 && <NotTaken refusals={refusals} />}
    </div>
  );
}

function NotTaken({ refusals }: { refusals: readonly Refusal[] | string }): ReactNode {
  return (
    <div role="alert" className="caution">
      <b>The price list was not taken.</b>
      {typeof refusals === "string" ? (
        <p>{refusals}</p>
      ) : (
        <ul>
          {refusals.map((refusal) => (
            <li key={`${refusal.line} ${refusal.code} ${refusal.message}`}>
              {refusal.line === null ? "" : `Line ${refusal.line}: `}
              {refusal.message} {refusal.remedy}
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}

/** Which list is in use, who put it in and when; or the choice between two. */
function WhoseList({ prices: { list, mark, theirs } }: { prices: Prices }): ReactNode {
  if (list === null) return null;
  if (theirs !== null) {
    return (
      <div className="caution" role="status">
        <p>
          {whose(theirs)} came in meanwhile. Yours, {list.name}, is in use on this device only.
        </p>
        <div className="care-row">
          <button type="button" className="act small" onClick={() => void settlePrices("theirs")}>
            use {theirs.name}
          </button>
          <button type="button" className="act small" onClick={() => void settlePrices("mine")}>
            put {list.name} in after it
          </button>
        </div>
      </div>
    );
  }
  const where = {
    saved: "",
    waiting: "; on this device, not yet on the server",
    device: "; on this device only",
  }[mark];
  return (
    <p className="note" role="status">
      {whose(list)}
      {where}
    </p>
  );
}

export function whose({
  name,
  savedAt,
  savedBy,
}: {
  readonly name: string;
  readonly savedAt: string | null;
  readonly savedBy: string | null;
}): string {
  if (savedAt === null) return name;
  const at = new Date(savedAt).toLocaleString([], { dateStyle: "medium", timeStyle: "short" });
  return `${name}, put in by ${savedBy ?? "somebody"}, ${at}`;
}
