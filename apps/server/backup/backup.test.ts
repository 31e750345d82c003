import { readFileSync } from "node:fs";
import fc from "fast-check";
import { zipSync } from "fflate";
import sharp from "sharp";
import { describe, expect, test } from "vitest";
import { type ApiBench, EDITOR, noteChange, onBothStorages } from "../api/apiBench.fixture.ts";
import { textDelta, textFromDelta } from "./textDelta.ts";
import { unzipEntry, zipEntries } from "./zipEntries.ts";

const text = readFileSync("demos/aldreth-single.json", "utf8");
const WIRE: string = JSON.parse(text).wires[0].id;
const base64 = (bytes: Uint8Array): string => Buffer.from(bytes).toString("base64");
const utf8 = new TextEncoder();

/** Two jobs, a conflict settled and one open, a photograph, an exercise with a guess. */
async function fill(bench: ApiBench): Promise<string> {
  const { key } = (await bench.post("/jobs", { from: "text", text })).body;
  await bench.post("/jobs", { from: "demo", name: "accessory-five-wires" });
  await bench.post(`/jobs/${key}/changes`, noteChange(WIRE, "theirs"));
  for (const note of ["mine", "mine too"]) {
    await bench.post(`/jobs/${key}/changes`, noteChange(WIRE, note), EDITOR);
  }
  const [first] = (await bench.get(`/jobs/${key}/conflicts`)).body.conflicts;
  await bench.post(`/jobs/${key}/conflicts/${first.id}/settle`, { take: "mine" });
  const grey = { create: { width: 30, height: 20, channels: 3 as const, background: "grey" } };
  const png = await sharp(grey).png().toBuffer();
  await bench.post(`/jobs/${key}/photographs`, { name: "grey", base64: base64(png) });
  const exercise = { title: "t", request: {}, faults: [{ kind: "open", place: "A17" }] };
  const { id } = (await bench.post(`/jobs/${key}/exercises`, exercise)).body;
  await bench.post(`/exercises/${id}/guess`, { kind: "open", place: "A13" }, EDITOR);
  return key;
}

const backupOf = async (bench: ApiBench): Promise<Uint8Array> => (await bench.get("/backup")).bytes;
const restore = (bench: ApiBench, bytes: Uint8Array) =>
  bench.post("/backup/restore", { base64: base64(bytes) });
const rowsOf = async ({ storage }: ApiBench) => {
  const rows = await storage.backupRows();
  return { ...rows, jobs: rows.jobs.map(({ sequence: _, ...row }) => row) };
};

onBothStorages((open) => {
  test("everything comes back in another storage as it was, and a second time changes nothing", async () => {
    const bench = await open();
    const key = await fill(bench);
    const bytes = await backupOf(bench);
    const other = await bench.fresh();
    const restored = await restore(other, bytes);
    expect(restored.body).toEqual({
      ok: true,
      jobsAdded: 2,
      revisionsAdded: 6,
      photographsAdded: 1,
      jobsBeside: 0,
    });
    expect(await rowsOf(other)).toEqual(await rowsOf(bench));
    for (const revision of [1, 2, 3, 4, 5]) {
      const [was, is] = await Promise.all(
        [bench, other].map((one) => one.get(`/jobs/${key}/revisions/${revision}`)),
      );
      expect(is!.body).toEqual(was!.body);
    }
    const { photographs } = (await other.get(`/jobs/${key}/photographs`)).body;
    const [was, is] = await Promise.all(
      [bench, other].map((one) => one.get(`/photographs/${photographs[0].id}`)),
    );
    expect(is!.bytes).toEqual(was!.bytes);
    const again = await restore(other, bytes);
    expect(again.body).toMatchObject({ jobsAdded: 0, revisionsAdded: 0, photographsAdded: 0 });
    expect(await rowsOf(other)).toEqual(await rowsOf(bench));
  });

  test("a job that went on here stays; one that stood still goes on; one that parted comes back beside", async () => {
    const bench = await open();
    const key = await fill(bench);
    const early = await backupOf(bench);
    await bench.post(`/jobs/${key}/changes`, noteChange(WIRE, "later", 5));
    const late = await backupOf(bench);
    expect((await restore(bench, early)).body).toMatchObject({ jobsAdded: 0, revisionsAdded: 0 });
    expect((await bench.get(`/jobs/${key}`)).body.revision).toBe(6);

    const other = await bench.fresh();
    await restore(other, early);
    expect((await restore(other, late)).body).toMatchObject({ jobsAdded: 0, revisionsAdded: 1 });
    expect((await other.get(`/jobs/${key}`)).body.revision).toBe(6);

    const third = await bench.fresh();
    await restore(third, early);
    await third.post(`/jobs/${key}/changes`, noteChange(WIRE, "another way", 5));
    const parted = await restore(third, late);
    expect(parted.body).toMatchObject({ jobsAdded: 1, jobsBeside: 1, revisionsAdded: 6 });
    expect((await restore(third, late)).body).toMatchObject({ jobsAdded: 0, revisionsAdded: 0 });
    const notes = [];
    for (const job of (await third.get("/jobs")).body.jobs) {
      const opened = JSON.parse((await third.get(`/jobs/${job.key}`)).body.text);
      notes.push(opened.wires.find(({ id }: { id: string }) => id === WIRE)?.note);
    }
    expect(notes).toEqual(expect.arrayContaining(["another way", "later"]));
    expect((await third.get("/exercises")).body.exercises).toHaveLength(2);
  });

  test("a hostile archive restores nothing", async () => {
    const bench = await open();
    await fill(bench);
    const bytes = await backupOf(bench);
    const [list, texts] = zipEntries(bytes)!.map((entry) => unzipEntry(bytes, entry)!);
    const manifest = JSON.parse(new TextDecoder().decode(list));
    // biome-ignore lint/suspicious/noExplicitAny: a manifest is bent into every shape
    const bent = (bend: (manifest: any) => void, more: Record<string, Uint8Array> = {}) => {
      const copy = structuredClone(manifest);
      bend(copy);
      return zipSync({ a: utf8.encode(JSON.stringify(copy)), b: texts!, ...more });
    };
    const other = await bench.fresh();
    const code = async (archive: Uint8Array) => (await restore(other, archive)).body.code;
    const damaged = "backup-unreadable";
    expect(await code(utf8.encode("PK no zip at all, but long enough to be one"))).toBe(damaged);
    expect(await code(bytes.subarray(0, bytes.length - 30))).toBe(damaged);
    expect(await code(bent(() => {}))).toBe(damaged);
    const page = { "../../../etc/cron.d/x": utf8.encode("<script>") };
    expect(await code(bent(() => {}, page))).toBe(damaged);
    expect(await code(bent((m) => m.rows.revisions.splice(1, 1)))).toBe(damaged);
    expect(await code(bent((m) => m.rows.jobs.pop()))).toBe(damaged);
    expect(await code(bent((m) => (m.rows.jobs[0].key = "../../x")))).toBe(damaged);
    expect(await code(bent((m) => (m.rows.jobs[0].evil = 1)))).toBe(damaged);
    expect(await code(bent((m) => (m.rows.conflicts[0].conflict = "{}")))).toBe(damaged);
    expect(await code(bent((m) => (m.rows.revisions[0].sha256 = "0".repeat(64))))).toBe(damaged);
    expect(await code(bent((m) => (m.storageVersion = 99)))).toBe("backup-newer");
    expect(await code(bent((m) => (m.copperwrightBackup = 2)))).toBe("backup-newer");
    expect((await other.storage.jobs()).length).toBe(0);
  });

  test("a bomb is not unpacked: what the list adds up to is refused, and what lies about its size ends there", async () => {
    const bench = await open();
    const zeros = new Uint8Array(8_000_000);
    const honest = zipSync({ a: zeros, b: zeros }, { level: 9 });
    expect(honest.length).toBeLessThan(20_000);
    const claims = (bytes: number) => {
      const copy = Buffer.from(honest);
      for (let at = copy.indexOf("PK\x01\x02"); at >= 0; at = copy.indexOf("PK\x01\x02", at + 4)) {
        copy.writeUInt32LE(bytes, at + 24);
      }
      return copy;
    };
    expect((await restore(bench, claims(300_000_000))).body.code).toBe("backup-too-large");
    const liar = claims(100);
    expect(unzipEntry(liar, zipEntries(liar)![0]!)).toBeNull();
    expect((await restore(bench, liar)).body.code).toBe("backup-unreadable");
    // A text said to share more with the one before than that one has.
    expect(textFromDelta("short", { head: 2_000_000_000, tail: 0, middle: "" })).toBeNull();
    expect(textFromDelta("short", { head: 3, tail: 3, middle: "" })).toBeNull();
  });
});

describe("a text by what it changed", () => {
  test("comes back as it was", () => {
    const pieces = fc.array(fc.constantFrom("a", "b", "ab", "\n", "é", "🔧", "\ud800"));
    const texts = pieces.map((all) => all.join(""));
    fc.assert(
      fc.property(texts, texts, (before, after) => {
        const delta = JSON.parse(JSON.stringify(textDelta(before, after)));
        expect(textFromDelta(before, delta)).toBe(after);
      }),
    );
  });

  test("is short where little changed", () => {
    const after = text.replace('"wires"', '"wires" ');
    expect(textDelta(text, after).middle.length).toBeLessThan(3);
  });
});
