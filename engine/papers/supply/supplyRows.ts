import type { CsvValue } from "../../drawing/index.ts";
import type { SupplyAnswer } from "../../supply/index.ts";

/** The balance of every lighting state at every speed, for a spreadsheet. */
export function supplyRows({ balances }: SupplyAnswer): readonly (readonly CsvValue[])[] {
  const heading = [
    "state",
    "name",
    "atV",
    "demandA",
    "balanceRpm",
    "speedRpm",
    "availableA",
    "availableLowA",
    "availableHighA",
    "surplusA",
    "settledV",
    "batteryA",
  ];
  const rows = balances.flatMap((one) =>
    one.rows.map((row) => [
      one.state,
      one.name,
      one.atV,
      one.demandA,
      one.balanceRpm ?? "",
      row.speedRpm,
      row.availableA,
      row.availableLowA,
      row.availableHighA,
      row.surplusA,
      row.settledV,
      row.batteryA,
    ]),
  );
  return [heading, ...rows];
}
