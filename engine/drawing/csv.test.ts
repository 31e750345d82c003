import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { expect, it } from "vitest";
import { csvText } from "./csv.ts";

it("keeps numbers and guards text a spreadsheet would run", () => {
  const text = csvText([
    ["no", "note", "drop V"],
    ["12", '=HYPERLINK("x")', -0.27],
    ["+1", "-2+3", 1e-7],
    ["@x", "\tx", 0],
    [" =1", "＝1", null],
    ["ok, then", 'say "no"', 3],
  ]);
  expect(text.split("\r\n")).toEqual([
    "no,note,drop V",
    '12,"\'=HYPERLINK(""x"")",-0.27',
    "'+1,'-2+3,1e-7",
    "'@x,'\tx,0",
    "' =1,'＝1,",
    '"ok, then","say ""no""",3',
    "",
  ]);
});

it("brings any text back, apostrophe before a formula apart, and leaves no cell that begins as one", () => {
  fc.assert(
    fc.property(fc.array(fc.string({ minLength: 1 }), { minLength: 1, maxLength: 5 }), (cells) => {
      const [row] = parse(csvText([cells]), { record_delimiter: "\r\n" }) as string[][];
      row!.forEach((cell, i) => {
        expect(cell === cells[i] || cell === `'${cells[i]}`).toBe(true);
        expect(/^[=+\-@\t\r\n]/.test(cell)).toBe(false);
      });
    }),
  );
});

it("takes no number that is not one", () => {
  expect(() => csvText([[Number.NaN]])).toThrow("NaN");
});
