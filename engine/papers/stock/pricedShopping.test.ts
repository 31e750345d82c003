import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readJob } from "../../job/index.ts";
import { checkedJob, conversionOf } from "../../judge/index.ts";
import { paperInput } from "../paperInput.ts";
import { shoppingCsvRows } from "../shoppingSheets.ts";
import { conversionCost, pricedShopping, shoppingGoods } from "./pricedShopping.ts";
import { readStockList } from "./readStockList.ts";

function demo(name: string) {
  const path = new URL(`../../../demos/${name}.json`, import.meta.url);
  const read = readJob(readFileSync(path, "utf8"));
  if (!read.ok) throw new Error("the demo reads");
  return read;
}

function stockOf(lines: readonly string[]) {
  const read = readStockList(
    ["code,description,kind,make,unit,price,currency,pack", ...lines].join("\n"),
  );
  if (!read.ok) throw new Error(read.refusals[0]!.message);
  return read.stock;
}

describe("a checked job priced", () => {
  const read = demo("accessory-five-wires");
  const checked = checkedJob(read.job);

  test("by hand: five wires, their terminals, one fuse and two to spare", () => {
    const stock = stockOf([
      "W1,1 mm2,wire,thin-1.0,m,0.40,EUR,1",
      "W2,2 mm2,wire,thin-2.0,reel,9.00,EUR,25",
      "B,blades,terminal,blade-6.3,each,4.00,EUR,50",
      "F,fuse,fuse,blade-10,each,0.30,EUR,1",
    ]);
    const { rows, totalPrice, missingCount } = pricedShopping(checked, stock);
    const price = (what: string) => rows.find((row) => row.what.startsWith(what))!.price;
    // Black: 0.475 m and a twentieth waste, one metre is sold; the other colour 0.95 m and waste, one metre; both at 0.40.
    expect(price("1 mm²")).toBe(0.4);
    expect(price("2 mm²")).toBe(9);
    expect(price("blade receptacle")).toBe(4);
    expect(price("In-line fuse")).toBe(0.3);
    expect(price("Fuse 10 A blade")).toBe(0.6);
    // 0.40 + 0.40 + 9.00 + 4.00 + 0.30 + 0.60; rings for two sizes, two lamps and a switch are not in the list.
    expect(totalPrice).toBeCloseTo(14.7, 9);
    expect(missingCount).toBe(5);
  });

  test("the lines are those of the shopping list, priced or not", () => {
    const stock = stockOf(["F,fuse,fuse,blade-10,each,0.30,EUR,1"]);
    const what = shoppingGoods(checked).map((good) => good.what);
    const made = { fingerprint: read.fingerprint, paper: "a4" as const };
    const plain = paperInput(checked.design, checked.result, made);
    expect(
      shoppingCsvRows(plain)
        .slice(1)
        .map((row) => row[1]),
    ).toEqual(what);
    const rows = shoppingCsvRows({ ...plain, stock });
    expect(rows.slice(1, -1).map((row) => row[1])).toEqual(what);
    expect(rows.at(-1)!.slice(4, 6)).toEqual([0.9, "EUR"]);
    for (const row of rows) expect(row).toHaveLength(rows[0]!.length);
  });
});

test("a conversion is priced by what it replaces, on its new volts", () => {
  const conversion = conversionOf(demo("aldreth-single").job, { nominalV: 12 });
  const { rows, totalPrice } = conversionCost(
    conversion,
    stockOf([
      "H6,horn 6 V,part,horn-6V,each,30,EUR,1",
      "H12,horn 12 V,part,horn-12V,each,40,EUR,1",
      "B12,battery,part,battery-12V,each,55,EUR,1",
    ]),
  );
  const replaced = conversion.parts.filter(({ action }) => action === "replace");
  expect(rows.length).toBeGreaterThanOrEqual(replaced.length);
  expect(totalPrice).toBe(95);
  expect(rows.filter(({ bought }) => bought.some(({ code }) => code === "H6"))).toEqual([]);
});
