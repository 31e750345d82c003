import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cheapestPacks } from "./cheapestPacks.ts";
import type { Good } from "./good.ts";
import { pricedGoods } from "./pricedGoods.ts";
import { readStockList } from "./readStockList.ts";
import { reelsFor } from "./reelsFor.ts";

const HEAD = "code,description,kind,make,colour,unit,price,currency,pack,in stock";

function stockOf(...lines: readonly string[]) {
  const read = readStockList([HEAD, ...lines].join("\n"));
  if (!read.ok) throw new Error(read.refusals.map(({ message }) => message).join(" "));
  return read.stock;
}

const good = (fields: Partial<Good>): Good => ({
  kind: "terminal",
  makes: ["blade-6.3 receptacle", "blade-6.3"],
  colour: null,
  group: "Terminals",
  what: "blade",
  quantity: "",
  note: "",
  neededCount: null,
  piecesM: [],
  unmeasured: [],
  ...fields,
});
const wire = (...piecesM: readonly number[]): Good =>
  good({ kind: "wire", makes: ["thin-1.0"], colour: "red/black", piecesM });

describe("terminals in packs", () => {
  const stock = stockOf(
    "T10,ten,terminal,blade-6.3,,each,2.00,EUR,10,",
    "T50,fifty,terminal,blade-6.3,,each,6.00,EUR,50,1",
  );

  test("64 of them: the one pack of fifty and two of ten, 10.00, 6 left", () => {
    const { rows, totalPrice, currency } = pricedGoods([good({ neededCount: 64 })], stock);
    expect(rows[0]!.bought.map(({ code, packCount }) => [code, packCount])).toEqual([
      ["T10", 2],
      ["T50", 1],
    ]);
    expect(totalPrice).toBe(10);
    expect(rows[0]!.leftoverCount).toBe(6);
    expect(currency).toBe("EUR");
  });

  test("34 of them: four tens cost 8.00 and fifty cost 6.00", () => {
    const { rows } = pricedGoods([good({ neededCount: 34 })], stock);
    expect(rows[0]!.bought.map(({ code }) => code)).toEqual(["T50"]);
    expect(rows[0]!.leftoverCount).toBe(16);
  });

  test("the more exact make is taken though it costs more", () => {
    const both = stockOf(
      "A,any,terminal,blade-6.3,,each,1.00,EUR,,",
      "B,the one,terminal,blade-6.3 receptacle,,each,2.00,EUR,,",
    );
    expect(pricedGoods([good({ neededCount: 1 })], both).rows[0]!.bought[0]!.code).toBe("B");
  });

  test("less on the shelf than needed, and what the shop does not sell, have no price and say why", () => {
    const few = stockOf("A,few,terminal,blade-6.3,,each,1.00,EUR,,3");
    const priced = pricedGoods([good({ neededCount: 4 }), good({ makes: ["ring-M6"] })], few);
    expect(priced.rows.map(({ missing, price }) => [missing, price])).toEqual([
      ["not-enough", null],
      ["not-in-list", null],
    ]);
    expect(priced.isComplete).toBe(false);
    expect(priced.missingCount).toBe(2);
    expect(priced.totalPrice).toBe(0);
  });
});

describe("wire", () => {
  test("pieces of 3, 3, 2 and 2 m from reels of 5 m: two reels, nothing left", () => {
    const stock = stockOf("R5,reel,wire,thin-1.0,,reel,4.00,EUR,5,");
    const [row] = pricedGoods([wire(3, 3, 2, 2)], stock).rows;
    expect(row!.bought[0]!.packCount).toBe(2);
    expect(row!.reels.map(({ leftoverM, pieceCount }) => [leftoverM, pieceCount])).toEqual([
      [0, 2],
      [0, 2],
    ]);
  });

  test("pieces of 3 m: three of them need three reels of 5 m, though 9 m would go into two", () => {
    const stock = stockOf("R5,reel,wire,thin-1.0,,reel,4.00,EUR,5,");
    const [row] = pricedGoods([wire(3, 3, 3)], stock).rows;
    expect(row!.bought[0]!.packCount).toBe(3);
    expect(row!.price).toBe(12);
    expect(row!.reels.map(({ leftoverM }) => leftoverM)).toEqual([2, 2, 2]);
  });

  test("by the metre in one piece is cheaper here, and is whole metres", () => {
    const stock = stockOf(
      "R,reel,wire,thin-1.0,,reel,20.00,EUR,50,",
      "M,cut,wire,thin-1.0,,m,0.60,EUR,1,",
    );
    const [row] = pricedGoods([wire(3, 3, 2.4)], stock).rows;
    expect(row!.bought).toEqual([
      { code: "M", description: "cut", line: 3, packCount: 9, packPrice: 0.6 },
    ]);
    expect(row!.price).toBeCloseTo(5.4, 9);
    expect(row!.reels[0]!.leftoverM).toBeCloseTo(0.6, 9);
  });

  test("a row of the very colour comes before one for every colour; another colour never", () => {
    const stock = stockOf(
      "ANY,any,wire,thin-1.0,,m,0.10,EUR,,",
      "RB,tracer,wire,thin-1.0,Red / Black,m,0.90,EUR,,",
      "BLUE,blue,wire,thin-1.0,blue,m,0.01,EUR,,",
    );
    expect(pricedGoods([wire(1)], stock).rows[0]!.bought[0]!.code).toBe("RB");
  });

  test("no wire is joined to be long enough, and what was not measured is not priced", () => {
    const stock = stockOf("R5,reel,wire,thin-1.0,,reel,4.00,EUR,5,");
    const unmeasured = { ...wire(1), unmeasured: ["W1"] };
    const priced = pricedGoods([wire(6), unmeasured], stock);
    expect(priced.rows.map(({ missing }) => missing)).toEqual(["too-long", "not-measured"]);
  });

  test("every piece is cut once and no reel gives more than it has", () => {
    const lengths = fc.array(fc.integer({ min: 1, max: 40 }), { minLength: 1, maxLength: 20 });
    const reels = fc.array(fc.integer({ min: 1, max: 60 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(lengths, reels, (pieces, reelsM) => {
        const cut = reelsFor(
          pieces.toSorted((a, b) => b - a),
          reelsM,
        );
        if (cut === null) return;
        expect(cut.reduce((sum, one) => sum + one.usedM, 0)).toBe(
          pieces.reduce((sum, one) => sum + one, 0),
        );
        expect(cut.reduce((sum, one) => sum + one.pieceCount, 0)).toBe(pieces.length);
        for (const one of cut) expect(one.leftoverM).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

test("cheapest packs are as cheap as trying every number of every pack", () => {
  const choice = fc.record({
    packPrice: fc.integer({ min: 1, max: 20 }),
    mostCount: fc.integer({ min: 0, max: 5 }),
    size: fc.integer({ min: 1, max: 12 }),
  });
  fc.assert(
    fc.property(
      fc.array(choice, { minLength: 1, maxLength: 3 }),
      fc.integer({ min: 1, max: 60 }),
      (choices, needed) => {
        const held = (counts: readonly number[]): number =>
          counts.reduce((sum, count, k) => sum + count * choices[k]!.size, 0);
        const price = (counts: readonly number[]): number =>
          counts.reduce((sum, count, k) => sum + count * choices[k]!.packPrice, 0);
        const everything = choices.reduce<number[][]>(
          (all, { mostCount }) =>
            all.flatMap((counts) =>
              Array.from({ length: mostCount + 1 }, (_, count) => [...counts, count]),
            ),
          [[]],
        );
        const enough = everything.filter((counts) => held(counts) >= needed);
        const found = cheapestPacks(choices, (counts) => held(counts) >= needed);
        if (enough.length === 0) expect(found).toBeNull();
        else expect(price(found!)).toBe(Math.min(...enough.map(price)));
      },
    ),
  );
});
