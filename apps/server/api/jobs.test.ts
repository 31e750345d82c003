import { readFileSync } from "node:fs";
import { readJob, writeJob } from "@copperwright/engine";
import { expect, test } from "vitest";
import { EDITOR, LEARNER, noteChange, onBothStorages } from "./apiBench.fixture.ts";

const text = readFileSync("demos/aldreth-single.json", "utf8");
const wireOf = (jobText: string, id: string) =>
  JSON.parse(jobText).wires.find((wire: { id: string }) => wire.id === id);
const WIRE: string = JSON.parse(text).wires[0].id;

onBothStorages((open) => {
  test("a demo becomes a job, is listed, opened, saved, and every revision stays", async () => {
    const bench = await open();
    const { body: demos } = await bench.get("/demos");
    expect(demos.demos.map(({ name }: { name: string }) => name)).toContain("aldreth-single");
    const made = await bench.post("/jobs", { from: "demo", name: "aldreth-single" });
    expect(made.status).toBe(200);
    const { key } = made.body;
    const opened = await bench.get(`/jobs/${key}`);
    const read = readJob(text);
    expect(opened.body.text).toBe(read.ok && writeJob(read.job));

    bench.time.nowMs += 60_000;
    const change = { ...noteChange(WIRE, "chafed"), summary: { verdict: "fit", wires: 3 } };
    const saved = await bench.post(`/jobs/${key}/changes`, change, EDITOR);
    expect(saved.body).toMatchObject({ revision: 2, conflicts: [], savedBy: "Edith" });
    expect(wireOf(saved.body.text, WIRE).note).toBe("chafed");
    const { body: list } = await bench.get("/jobs");
    expect(list.jobs).toMatchObject([
      {
        key,
        revision: 2,
        savedBy: "Edith",
        savedAt: "2026-03-01T09:01:00.000Z",
        isArchived: false,
      },
    ]);
    expect(list.jobs[0].summary).toEqual({ verdict: "fit", wires: 3 });
    const { body: lines } = await bench.get(`/jobs/${key}/revisions`);
    expect(lines).toEqual([
      {
        revision: 2,
        savedAt: "2026-03-01T09:01:00.000Z",
        savedBy: "Edith",
        device: "tablet",
        whatChanged: `Note on ${WIRE}`,
      },
      expect.objectContaining({ revision: 1, savedBy: "Owner" }),
    ]);
    const first = await bench.get(`/jobs/${key}/revisions/1`);
    expect(first.body.text).toBe(opened.body.text);

    const restored = await bench.post(`/jobs/${key}/restore`, { revision: 1 });
    expect(restored.body).toMatchObject({ revision: 3, text: opened.body.text });
    expect((await bench.get(`/jobs/${key}/revisions/2`)).body.text).toBe(saved.body.text);
    const exported = await bench.get(`/jobs/${key}/export`);
    // The file bears the number and the day of the revision it is; all else is the text that was restored.
    const { date } = JSON.parse(opened.body.text);
    const file = { ...exported.body, revision: 1, date };
    expect([exported.body.revision, file]).toEqual([3, JSON.parse(opened.body.text)]);
    expect(exported.headers.get("content-disposition")).toMatch(
      /^attachment; filename="[A-Za-z0-9-]+-3\.json"$/,
    );
  });

  test("a change sent twice is done once, and answers the same", async () => {
    const bench = await open();
    const { key } = (await bench.post("/jobs", { from: "text", text })).body;
    const change = noteChange(WIRE, "once");
    const [one, other] = await Promise.all([
      bench.post(`/jobs/${key}/changes`, change),
      bench.post(`/jobs/${key}/changes`, change),
    ]);
    const again = await bench.post(`/jobs/${key}/changes`, change);
    expect(other.body).toEqual(one.body);
    expect(again.body).toEqual(one.body);
    expect((await bench.get(`/jobs/${key}/revisions`)).body).toHaveLength(2);
    const elsewhere = (await bench.post("/jobs", { from: "copy", key })).body.key;
    const taken = await bench.post(`/jobs/${elsewhere}/changes`, change);
    expect(taken.body).toMatchObject({ ok: false, code: "change-id-taken" });
    const sent = { from: "text", text, changeId: "made-once-1" };
    const made = [await bench.post("/jobs", sent), await bench.post("/jobs", sent)];
    expect(made[1]!.body).toEqual(made[0]!.body);
  });

  test("forty people saving at once: every change is there, each in a revision of its own", async () => {
    const bench = await open();
    const { key } = (await bench.post("/jobs", { from: "text", text })).body;
    const wires: string[] = JSON.parse(text).wires.map(({ id }: { id: string }) => id);
    const notes = Array.from({ length: 40 }, (_, i) =>
      noteChange(wires[i % wires.length]!, `n${i}`),
    );
    const answers = await Promise.all(notes.map((one) => bench.post(`/jobs/${key}/changes`, one)));
    expect(answers.map(({ status }) => status)).toEqual(notes.map(() => 200));
    const revisions = answers.map(({ body }) => body.revision).sort((a, b) => a - b);
    expect(revisions).toEqual(notes.map((_, i) => i + 2));
    const headText: string = (await bench.get(`/jobs/${key}`)).body.text;
    const read = readJob(headText);
    expect(read.ok && writeJob(read.job)).toBe(headText);
    const head = JSON.parse(headText);
    const first = new Set(wires.slice(0, 40));
    const noted = head.wires.filter(
      ({ id, note }: { id: string; note?: string }) => note && first.has(id),
    );
    expect(noted).toHaveLength(Math.min(40, wires.length));
  });

  test("two devices at one wire: a conflict holds both and is settled by a save", async () => {
    const bench = await open();
    const { key } = (await bench.post("/jobs", { from: "text", text })).body;
    await bench.post(`/jobs/${key}/changes`, noteChange(WIRE, "theirs"));
    const merged = await bench.post(`/jobs/${key}/changes`, noteChange(WIRE, "mine"), EDITOR);
    expect(merged.body).toMatchObject({ revision: 3, conflicts: [{ kind: "both-changed" }] });
    expect(wireOf(merged.body.text, WIRE).note).toBe("theirs");
    const { conflicts } = (await bench.get(`/jobs/${key}/conflicts`, LEARNER)).body;
    expect(conflicts).toMatchObject([
      { item: WIRE, path: ["note"], mineBy: "Edith", theirsBy: "Owner", inUse: "theirs" },
    ]);
    const settle = `/jobs/${key}/conflicts/${conflicts[0].id}/settle`;
    const settled = await bench.post(settle, { take: "mine" });
    expect(settled.body.revision).toBe(4);
    expect(wireOf(settled.body.text, WIRE).note).toBe("mine");
    expect((await bench.get(`/jobs/${key}/conflicts`)).body.conflicts).toEqual([]);
    expect((await bench.post(settle, { take: "theirs" })).body.code).toBe("no-such-conflict");
  });

  test("a conflict kept as it is leaves what was done since alone", async () => {
    const bench = await open();
    const { key } = (await bench.post("/jobs", { from: "text", text })).body;
    await bench.post(`/jobs/${key}/changes`, noteChange(WIRE, "theirs"));
    const { body } = await bench.post(`/jobs/${key}/changes`, noteChange(WIRE, "mine"));
    await bench.post(`/jobs/${key}/changes`, noteChange(WIRE, "later", 3));
    const settle = `/jobs/${key}/conflicts/${body.conflicts[0].id}/settle`;
    const settled = await bench.post(settle, { take: "theirs" });
    expect(wireOf(settled.body.text, WIRE).note).toBe("later");
  });

  test("a poll tells what was saved since, once, and nothing when nothing was", async () => {
    const bench = await open();
    const start = (await bench.get("/changes?since=0")).body;
    expect(start).toEqual({ cursor: "0", jobs: [] });
    const { key } = (await bench.post("/jobs", { from: "text", text })).body;
    const seen = (await bench.get("/changes?since=0")).body;
    expect(seen.jobs).toMatchObject([{ key, revision: 1, savedBy: "Owner", device: "bench" }]);
    expect((await bench.get(`/changes?since=${seen.cursor}`)).body.jobs).toEqual([]);
    await bench.post(`/jobs/${key}/changes`, noteChange(WIRE, "a"));
    await bench.post(`/jobs/${key}/changes`, noteChange(WIRE, "b", 2));
    const then = (await bench.get(`/changes?since=${seen.cursor}`)).body;
    expect(then.jobs).toMatchObject([{ key, revision: 3 }]);
    await bench.post(`/jobs/${key}/archive`, { isArchived: true });
    expect((await bench.get(`/changes?since=${then.cursor}`)).body.jobs).toHaveLength(1);
    expect((await bench.get("/jobs")).body.jobs[0].isArchived).toBe(true);
  });

  test("a job of a newer program is shown and exported, and changed by nobody", async () => {
    const bench = await open();
    const { key } = (await bench.post("/jobs", { from: "text", text })).body;
    const newer = text.replace('"copperwrightJob": 1', '"copperwrightJob": 2');
    const hand = { who: "B", device: "branch", at: "2026-03-02T00:00:00Z" };
    const draft = {
      text: newer,
      jobVersion: 2,
      name: "N",
      machine: "M",
      hand,
      changeId: "newer-one",
    };
    await bench.storage.saveRevision({ ...draft, key, onRevision: 1, whatChanged: "newer" });
    expect((await bench.get(`/jobs/${key}`)).body).toMatchObject({ text: newer, jobVersion: 2 });
    for (const [path, body] of [
      ["changes", noteChange(WIRE, "x", 2)],
      ["changes", noteChange(WIRE, "x", 1)],
      ["restore", { revision: 2 }],
      ["restore", { revision: 1 }],
    ] as const) {
      expect((await bench.post(`/jobs/${key}/${path}`, body)).body.code).toBe("job-newer");
    }
    expect((await bench.post("/jobs", { from: "copy", key })).body.code).toBe("job-newer");
    expect((await bench.get(`/jobs/${key}/revisions`)).body).toHaveLength(2);
    const refused = await bench.post("/jobs", { from: "text", text: newer });
    expect(refused.status).toBe(422);
    expect(refused.body.refusals).toMatchObject([{ code: "job-newer-version" }]);
  });
});
