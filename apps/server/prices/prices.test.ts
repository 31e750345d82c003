import { expect, test } from "vitest";
import { type ApiBench, EDITOR, LEARNER, OWNER, onBothStorages } from "../api/apiBench.fixture.ts";

const listOf = (price: string): string =>
  `code,description,kind,make,unit,price,currency\nT1,ring M6,terminal,ring-M6,each,${price},EUR\n`;

/** Puts a list in as a device would; ids are padded to the least length. */
const put = (
  bench: ApiBench,
  id: string,
  basedOn: string | null,
  text: string | null = listOf("0.20"),
  visitor = EDITOR,
) => bench.post("/prices", { id, name: `${id}.csv`, text, basedOn }, visitor);

onBothStorages((open) => {
  test("a list put in by one device is in use for all, with who and when; former ones stay", async () => {
    const bench = await open();
    expect((await bench.get("/prices", EDITOR)).body).toEqual({ list: null });
    const first = await put(bench, "list-one", null);
    expect(first.body.list).toMatchObject({ id: "list-one", savedBy: "Edith", device: "tablet" });
    bench.time.nowMs += 60_000;
    await put(bench, "list-two", "list-one", listOf("0.30"), OWNER);
    const { list } = (await bench.get("/prices", EDITOR)).body;
    expect(list).toMatchObject({ id: "list-two", name: "list-two.csv", savedBy: "Owner" });
    expect(list.text).toContain("0.30");
    const known = (await bench.get("/prices?known=list-two", EDITOR)).body.list;
    expect([known.isKnown, known.text]).toEqual([true, undefined]);
    const { lists } = (await bench.get("/prices/lists", OWNER)).body;
    expect(lists.map(({ id }: { id: string }) => id)).toEqual(["list-two", "list-one"]);
    const former = (await bench.get("/prices/lists/list-one", OWNER)).body.list;
    expect(former.text).toContain("0.20");
  });

  test("without prices is an entry like any other, and the former list can be put in again", async () => {
    const bench = await open();
    await put(bench, "list-one", null);
    await put(bench, "list-none", "list-one", null);
    expect((await bench.get("/prices", EDITOR)).body.list).toMatchObject({
      id: "list-none",
      text: null,
    });
    expect((await bench.get("/prices/lists", EDITOR)).body.lists).toMatchObject([
      { isNone: true },
      { isNone: false },
    ]);
    await put(bench, "list-again", "list-none");
    expect((await bench.get("/prices", EDITOR)).body.list.text).toContain("0.20");
  });

  test("sent twice it is in once; on another list than the one in use it is refused and nothing is done", async () => {
    const bench = await open();
    await put(bench, "list-one", null);
    expect((await put(bench, "list-one", null)).status).toBe(200);
    expect((await put(bench, "list-two", null)).body.code).toBe("price-list-moved");
    expect((await bench.get("/prices/lists", EDITOR)).body.lists).toHaveLength(1);
  });

  test("a clock set back does not put a new list behind the old", async () => {
    const bench = await open();
    await put(bench, "list-one", null);
    bench.time.nowMs -= 86_400_000;
    await put(bench, "list-two", "list-one");
    expect((await bench.get("/prices", EDITOR)).body.list.id).toBe("list-two");
  });

  test("what is no price list is refused with its reasons, and who may only look sees none", async () => {
    const bench = await open();
    const bad = await put(bench, "list-bad", null, "code,price\nT1,cheap\n");
    expect(bad.body.code).toBe("price-list-unreadable");
    expect(bad.body.refusals.length).toBeGreaterThan(0);
    expect((await put(bench, "list-long", null, "x".repeat(2_000_001))).body.code).toBe(
      "body-misfit",
    );
    expect((await put(bench, "../../up", null)).body.code).toBe("body-misfit");
    expect((await bench.get("/prices", LEARNER)).body.code).toBe("role-prices");
    expect((await put(bench, "list-view", null, listOf("1"), LEARNER)).status).toBe(403);
    expect((await bench.get("/prices", EDITOR)).body).toEqual({ list: null });
  });

  test("a backup carries every list; restored, the latest is in use and nothing is in twice", async () => {
    const bench = await open();
    await put(bench, "list-one", null);
    const early = await bench.get("/backup");
    bench.time.nowMs += 60_000;
    await put(bench, "list-two", "list-one", listOf("0.30"));
    const late = await bench.get("/backup");
    const base64 = (bytes: Uint8Array) => Buffer.from(bytes).toString("base64");
    const other = await bench.fresh();
    for (const { bytes } of [late, early, late]) {
      const restored = await other.post("/backup/restore", { base64: base64(bytes) });
      expect(restored.status).toBe(200);
    }
    expect((await other.get("/prices", EDITOR)).body).toEqual(
      (await bench.get("/prices", EDITOR)).body,
    );
    expect((await other.get("/prices/lists", EDITOR)).body.lists).toHaveLength(2);
  });
});
