import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { noteChange, onBothStorages } from "./apiBench.fixture.ts";

const demo = JSON.parse(readFileSync("demos/accessory-five-wires.json", "utf8"));
const WIRE: string = demo.wires[0].id;
const text = JSON.stringify({ ...demo, revision: 17, date: "2020-01-02" });

onBothStorages((open) => {
  test("a file goes on from its revision, and leaves with the number and the day of its last save", async () => {
    const bench = await open();
    const made = (await bench.post("/jobs", { from: "text", text })).body;
    expect(made.revision).toBe(17);
    bench.time.nowMs = Date.parse("2026-05-06T23:59:00Z");
    const saved = await bench.post(`/jobs/${made.key}/changes`, noteChange(WIRE, "later", 17));
    expect(saved.body.revision).toBe(18);
    const file = (await bench.get(`/jobs/${made.key}/export`)).body;
    expect([file.revision, file.date]).toEqual([18, "2026-05-06"]);
    const again = await bench.post("/jobs", { from: "text", text: JSON.stringify(file) });
    expect(again.body.revision).toBe(18);
    // A copy is another job.
    const copy = await bench.post("/jobs", { from: "copy", key: made.key });
    expect(copy.body.revision).toBe(1);
    expect((await bench.get(`/jobs/${made.key}/revisions`)).body).toMatchObject([
      { revision: 18 },
      { revision: 17 },
    ]);
  });

  test("a backup of jobs that began at another revision comes back as it was", async () => {
    const bench = await open();
    const { key } = (await bench.post("/jobs", { from: "text", text })).body;
    await bench.post(`/jobs/${key}/changes`, noteChange(WIRE, "later", 17));
    const { bytes } = await bench.get("/backup");
    const other = await bench.fresh();
    const base64 = Buffer.from(bytes).toString("base64");
    expect((await other.post("/backup/restore", { base64 })).body).toMatchObject({
      revisionsAdded: 2,
    });
    expect((await other.get(`/jobs/${key}/revisions/17`)).body).toEqual(
      (await bench.get(`/jobs/${key}/revisions/17`)).body,
    );
    expect((await other.get(`/jobs/${key}`)).body.revision).toBe(18);
  });
});
