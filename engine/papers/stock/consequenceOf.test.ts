import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { applyOperation, type Job, type Operation, readJob, resizeWire } from "../../job/index.ts";
import { checkedJob } from "../../judge/index.ts";
import { consequenceOf } from "./consequenceOf.ts";
import { pricedShopping } from "./pricedShopping.ts";
import { readStockList } from "./readStockList.ts";

const read = readJob(readFileSync("demos/accessory-five-wires.json", "utf8"));
if (!read.ok) throw new Error("the demo does not read");
const job = read.job;

function after(from: Job, operation: Operation): Job {
  const done = applyOperation(from, operation);
  if (!done.ok) throw new Error(done.refusals[0]?.message);
  return done.job;
}

function outcome(operation: Operation, lines: readonly string[] | null) {
  const [before, then] = [checkedJob(job), checkedJob(after(job, operation))];
  if (lines === null) return consequenceOf(before, then, null);
  const head = "code,description,kind,make,unit,price,currency,pack";
  const stock = readStockList([head, ...lines].join("\n"));
  if (!stock.ok) throw new Error(stock.refusals[0]!.message);
  return consequenceOf(before, then, {
    before: pricedShopping(before, stock.stock),
    after: pricedShopping(then, stock.stock),
  });
}

const wire = job.wires[0]!;
const LIST = [
  "W1,1 mm2,wire,thin-1.0,m,0.40,EUR,1",
  "W2,2 mm2,wire,thin-2.0,m,1.00,EUR,1",
  "W3,3 mm2,wire,thin-3.0,m,2.50,EUR,1",
  "F5,fuse,fuse,blade-5,each,0.50,EUR,1",
  "F10,fuse,fuse,blade-10,each,0.30,EUR,1",
];

describe("what an edit leads to", () => {
  test("a fuse marked otherwise: one fuse, no size; the spares cost as the list says", () => {
    const operation: Operation = {
      op: "set",
      list: "parts",
      id: "F1",
      path: ["ratingA"],
      value: 5,
    };
    const told = outcome(operation, LIST);
    expect([told.fuseCount, told.sizeCount]).toEqual([1, 0]);
    // The holder's fuse and two to spare: three of 0.50 instead of three of 0.30.
    expect(told.price?.differencePrice).toBeCloseTo(3 * (0.5 - 0.3), 9);
    expect(told.price?.currency).toBe("EUR");
  });

  test("a wire of another size is one size, and the counts are those of the two checks", () => {
    const then = after(job, resizeWire({ wire: wire.id, make: "thin-0.5" }));
    const told = outcome(resizeWire({ wire: wire.id, make: "thin-0.5" }), null);
    expect(told.sizeCount).toBe(1);
    expect(told.price).toBeNull();
    expect(told.before).toEqual(checkedJob(job).result.counts);
    expect(told.after).toEqual(checkedJob(then).result.counts);
    expect([told.verdictBefore, told.verdict]).toEqual([
      checkedJob(job).result.verdict,
      checkedJob(then).result.verdict,
    ]);
  });

  test("a line that changes and is not in the list leaves the difference unknown, and is named", () => {
    const told = outcome(resizeWire({ wire: wire.id, make: "thin-0.5" }), LIST);
    expect(told.price?.differencePrice).toBeNull();
    expect(told.price?.unpriced.join()).toMatch(/0\.5/);
  });

  test("an edit that buys nothing costs nothing, whatever else has no price", () => {
    const operation: Operation = { op: "set", list: "job", path: ["name"], value: "another name" };
    expect(outcome(operation, LIST.slice(3, 4)).price).toEqual({
      currency: "EUR",
      differencePrice: 0,
      unpriced: [],
    });
    expect(outcome(operation, LIST).price?.differencePrice).toBe(0);
  });
});
