import { describe, expect, test } from "vitest";
import { csvText } from "../../drawing/index.ts";
import { readStockList } from "./readStockList.ts";

const HEAD = "Code,Description,Kind,Make,Unit,Price,Currency,Pack,In stock";

const codesOf = (text: string): readonly string[] => {
  const read = readStockList(text);
  return read.ok ? [] : read.refusals.map(({ code, line }) => `${line} ${code}`);
};

describe("a list as shops write it", () => {
  test("quoted cells, blank lines, packs and stock", () => {
    const read = readStockList(
      `\uFEFF${HEAD}\r\nW1,"1 mm2, thin wall",wire,thin-1.0,reel,"18.50",gbp,50,4\r\n\r\nF10,"blade ""10""",fuse,blade-10,,0.25,GBP,,yes\r\n`,
    );
    if (!read.ok) throw new Error(read.refusals[0]!.message);
    expect(read.stock.currency).toBe("GBP");
    const [reel, fuse] = read.stock.rows;
    expect(reel).toMatchObject({
      line: 2,
      description: "1 mm2, thin wall",
      unit: "reel",
      packM: 50,
      packCount: null,
      packPrice: 18.5,
      inStockCount: 4,
    });
    expect(fuse).toMatchObject({
      line: 4,
      description: 'blade "10"',
      unit: "each",
      packCount: 1,
      inStockCount: null,
    });
  });

  test("semicolons with decimal commas, columns in another order, a column of the shop's own", () => {
    const read = readStockList(
      "price;currency;kind;make;unit;code;description;shelf\n0,45;EUR;terminal;ring-M6;each;R6;ring;B4\n",
    );
    if (!read.ok) throw new Error(read.refusals[0]!.message);
    expect(read.stock.rows[0]!.packPrice).toBe(0.45);
    expect(read.stock.unusedHeadings).toEqual(["shelf"]);
  });

  test("rows of other trades and without a make are passed over and told", () => {
    const read = readStockList(
      `${HEAD}\nT,tool,tool,x,each,3,EUR,,\nU,unknown,wire,,m,3,EUR,,\nF,fuse,fuse,blade-5,,1,EUR,,`,
    );
    if (!read.ok) throw new Error(read.refusals[0]!.message);
    expect(read.stock.passedOver).toEqual([
      { line: 2, code: "T", why: "kind" },
      { line: 3, code: "U", why: "make" },
    ]);
    expect(read.stock.rows).toHaveLength(1);
  });

  test("what our own lists guard against being a formula is read without the guard", () => {
    const text = csvText([
      HEAD.split(","),
      ["=1+1", "+x", "fuse", "blade-5", "each", 1, "EUR", 1, "no"],
    ]);
    expect(text).toContain("'=1+1");
    const read = readStockList(text);
    if (!read.ok) throw new Error(read.refusals[0]!.message);
    expect(read.stock.rows[0]).toMatchObject({ code: "=1+1", description: "+x", inStockCount: 0 });
  });
});

describe("refused with its line", () => {
  test.each([
    ["", "1 stock-heading-missing"],
    [HEAD, "null stock-empty"],
    [`${HEAD}\nW,"open,wire`, "2 stock-quote"],
    [`${HEAD},price\n`, "1 stock-heading-twice"],
    [`${HEAD}\nW,d,wire,thin-1.0,m,1`, "2 stock-cells"],
    [`${HEAD}\nW,d,wire,thin-1.0,m,"1,600",EUR,,`, "2 stock-price"],
    [`${HEAD}\nW,d,wire,thin-1.0,m,-1,EUR,,`, "2 stock-price"],
    [`${HEAD}\nW,d,wire,thin-1.0,m,ask,EUR,,`, "2 stock-price"],
    [`${HEAD}\nW,d,wire,thin-1.0,each,1,EUR,,`, "2 stock-unit"],
    [`${HEAD}\nF,d,fuse,blade-5,m,1,EUR,,`, "2 stock-unit"],
    [`${HEAD}\nF,d,fuse,blade-5,,1,EUR,2.5,`, "2 stock-pack"],
    [`${HEAD}\nF,d,fuse,blade-5,,1,EUR,0,`, "2 stock-pack"],
    [`${HEAD}\nF,d,fuse,blade-5,,1,euro,,`, "2 stock-currency"],
    [`${HEAD}\nF,d,fuse,blade-5,,1,EUR,,lots`, "2 stock-amount"],
    [`${HEAD}\n,d,fuse,blade-5,,1,EUR,,`, "2 stock-code"],
    [`${HEAD}\nF,d,fuse,blade-5,,1,EUR,,\nF,d,fuse,blade-5,,1,EUR,,`, "3 stock-code-twice"],
    [`${HEAD}\nF,d,fuse,blade-5,,1,EUR,,\nG,d,fuse,blade-5,,1,GBP,,`, "3 stock-two-currencies"],
  ])("%j", (text, refusal) => {
    expect(codesOf(text)).toContain(refusal);
  });

  test("a list beyond any shop's", () => {
    expect(codesOf("x".repeat(4_000_001))).toEqual(["null stock-too-large"]);
    const rows = Array.from({ length: 20_001 }, (_, k) => `F${k},d,fuse,blade-5,,1,EUR,,`);
    expect(codesOf([HEAD, ...rows].join("\n"))).toEqual(["null stock-too-many"]);
  });
});
