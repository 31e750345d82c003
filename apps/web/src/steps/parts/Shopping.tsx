import type { PricedRow, PricedShopping } from "@copperwright/engine";
import type { ReactNode } from "react";
import { moneyText } from "../../frame/moneyText.ts";
import { WireSwatch } from "../../frame/WireSwatch.tsx";
import { showSum } from "../../store/benchStore.ts";

const MISSING: Readonly<Record<string, string>> = {
  "not-in-list": "not in the list",
  "not-enough": "not enough in stock",
  "too-long": "longer than a reel",
  "not-measured": "not measured",
};

/** One table, grouped as a shop is walked through; for wire, bars show what is left of each reel. */
export function Shopping({
  priced,
  hasList,
}: {
  priced: PricedShopping;
  hasList: boolean;
}): ReactNode {
  const groups = new Map<string, PricedRow[]>();
  for (const row of priced.rows) groups.set(row.group, [...(groups.get(row.group) ?? []), row]);
  return (
    <section aria-label="Shopping list">
      <h2>Shopping list</h2>
      <table className="shopping">
        <thead>
          <tr>
            <th scope="col">what</th>
            <th scope="col">quantity</th>
            <th scope="col">note</th>
            {hasList && <th scope="col">buy</th>}
            {hasList && <th scope="col">price</th>}
          </tr>
        </thead>
        {[...groups].map(([group, rows]) => (
          <tbody key={group}>
            <tr>
              <th scope="rowgroup" colSpan={hasList ? 5 : 3} className="shopping-group">
                {group}
              </th>
            </tr>
            {rows.map((row) => (
              <Row
                key={`${row.what} ${row.note} ${row.colour}`}
                row={row}
                hasList={hasList}
                currency={priced.currency}
              />
            ))}
          </tbody>
        ))}
      </table>
    </section>
  );
}

function Row({
  row,
  hasList,
  currency,
}: {
  row: PricedRow;
  hasList: boolean;
  currency: string;
}): ReactNode {
  const [main, tracer] = row.colour?.split("/") ?? [];
  return (
    <tr>
      <td>
        {main !== undefined && <WireSwatch colour={{ main, tracer }} widthPx={48} heightPx={12} />}{" "}
        {row.what}
      </td>
      <td className="shopping-figure">{row.quantity}</td>
      <td className="note">
        {row.note}
        <Reels row={row} />
      </td>
      {hasList && (
        <td>{row.bought.map(({ code, packCount }) => `${packCount} × ${code}`).join(", ")}</td>
      )}
      {hasList && (
        <td className="shopping-figure">
          {row.price === null ? (
            <span className="note">{MISSING[row.missing ?? "not-in-list"]}</span>
          ) : (
            <button type="button" className="figure-link" onClick={() => explain(row, currency)}>
              {moneyText(row.price, currency)}
            </button>
          )}
        </td>
      )}
    </tr>
  );
}

function Reels({ row }: { row: PricedRow }): ReactNode {
  if (row.reels.length === 0) return null;
  return (
    <span className="reels">
      {row.reels.map((reel, i) => (
        <span key={`${i} ${reel.lengthM}`} className="reel">
          <progress max={reel.lengthM} value={reel.usedM} aria-label={`used of reel ${i + 1}`} />
          <span>
            {reel.leftoverM.toFixed(1)} m left of {reel.lengthM.toFixed(0)}
          </span>
        </span>
      ))}
    </span>
  );
}

function explain(row: PricedRow, currency: string): void {
  showSum({
    name: `${row.what} costs`,
    result: moneyText(row.price ?? 0, currency),
    equation: row.bought
      .map(({ packCount, packPrice }) => `${packCount} × ${moneyText(packPrice, currency)}`)
      .join(" + "),
    inputs: row.bought.map(({ code, description, line }) => ({
      text: `${code} ${description}`,
      from: `line ${line} of the price list`,
    })),
    note:
      row.leftoverCount === null
        ? "the cheapest packs that hold it"
        : `the cheapest packs that hold it; ${row.leftoverCount} left over`,
  });
}
