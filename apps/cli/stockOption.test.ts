import { expect, test } from "vitest";
import { runWith } from "./worldForTests.fixture.ts";

const HEAD = "code,description,kind,make,unit,price,currency,pack";
const stock = `${HEAD}\nH12,horn,part,horn-12V,each,40,EUR,1\nT,tool,tool,,,5,EUR,1\n`;
const words = ["convert", "demos/aldreth-single.json", "--to", "12", "--stock", "shop.csv"];

test("convert with a price list says what it costs and what has no price", async () => {
  const { out, err } = await runWith(words, { "shop.csv": stock });
  expect(out).toMatch(/horn.*1 x H12 +40\.00/);
  expect(out).toContain("battery-12V");
  expect(out).toMatch(/40\.00 EUR without \d+ lines/);
  expect(err).toContain("on lines 3");
  const json = JSON.parse((await runWith([...words, "--json"], { "shop.csv": stock })).out);
  expect(json.cost.totalPrice).toBe(40);
  expect(json.cost.isComplete).toBe(false);
});

test("a list that cannot be read is refused with its line, and nothing is computed", async () => {
  const { code, err, out } = await runWith(words, { "shop.csv": stock.replace("40", "forty") });
  expect(code).toBe(2);
  expect(`${out}${err}`).toContain("forty");
  const missing = await runWith(words.with(-1, "nowhere.csv"));
  expect(missing.code).toBe(2);
});
