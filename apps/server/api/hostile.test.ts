import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { EDITOR, LEARNER, noteChange, OWNER, onBothStorages } from "./apiBench.fixture.ts";

const text = readFileSync("demos/accessory-five-wires.json", "utf8");
const WIRE: string = JSON.parse(text).wires[0].id;
const KEY = "0123456789abcdef0123456789abcdef";

/** Every operation of the interface and the least role that may ask for it. */
const OPERATIONS: readonly (readonly ["get" | "post", string, "view" | "edit" | "owner"])[] = [
  ["get", "/jobs", "view"],
  ["get", "/demos", "view"],
  ["get", "/changes?since=0", "view"],
  ["get", "/jobs/KEY", "view"],
  ["get", "/jobs/KEY/export", "view"],
  ["get", "/jobs/KEY/revisions", "view"],
  ["get", "/jobs/KEY/revisions/1", "view"],
  ["get", "/jobs/KEY/conflicts", "view"],
  ["get", "/jobs/KEY/photographs", "view"],
  ["get", "/exercises", "view"],
  ["post", "/exercises/KEY/read", "view"],
  ["post", "/exercises/KEY/guess", "view"],
  ["get", "/prices", "edit"],
  ["get", "/prices/lists", "edit"],
  ["get", "/prices/lists/KEY", "edit"],
  ["post", "/prices", "edit"],
  ["post", "/jobs", "edit"],
  ["post", "/jobs/KEY/changes", "edit"],
  ["post", "/jobs/KEY/conflicts/KEY/settle", "edit"],
  ["post", "/jobs/KEY/restore", "edit"],
  ["post", "/jobs/KEY/archive", "edit"],
  ["post", "/jobs/KEY/photographs", "edit"],
  ["post", "/jobs/KEY/exercises", "edit"],
  ["get", "/exercises/KEY/answer", "owner"],
  ["get", "/backup", "owner"],
  ["post", "/backup/restore", "owner"],
];
const RANK = { view: 0, edit: 1, owner: 2 } as const;

onBothStorages((open) => {
  test("each operation is refused to every role below its own, before its body is looked at", async () => {
    const bench = await open();
    const { key } = (await bench.post("/jobs", { from: "text", text })).body;
    for (const [method, path, least] of OPERATIONS) {
      for (const visitor of [LEARNER, EDITOR, OWNER]) {
        const at = path.replace("KEY", key);
        const { status } =
          method === "get"
            ? await bench.get(at, visitor)
            : await bench.post(at, "{ no json", visitor);
        const isLet = RANK[visitor.role] >= RANK[least];
        expect(status === 403, `${visitor.role} ${method} ${path}`).toBe(!isLet);
      }
    }
    expect((await bench.get("/jobs")).body.jobs).toHaveLength(1);
    expect((await bench.get(`/jobs/${key}`)).body.revision).toBe(1);
  });

  test("ids that try paths, formulas, arguments or the language's own names find nothing", async () => {
    const bench = await open();
    const words = [
      "..%2F..%2Fetc%2Fpasswd",
      "..",
      "%2e%2e",
      "-rf",
      "--help",
      "=1+1",
      "@SUM(A1)",
      "__proto__",
      "constructor",
      "';drop table jobs;--",
      "%00",
      KEY.toUpperCase(),
      `${KEY}0`,
      "1e5",
      "x".repeat(5000),
    ];
    for (const word of words) {
      const at = encodeURIComponent(decodeURIComponent(word));
      for (const path of [`/jobs/${at}`, `/jobs/${at}/export`, `/jobs/${at}/revisions`]) {
        expect((await bench.get(path)).status, path).toBe(404);
      }
      const settle = await bench.post(`/jobs/${KEY}/conflicts/${at}/settle`, { take: "mine" });
      expect(settle.status, word).toBe(404);
      const guess = await bench.post(`/exercises/${at}/guess`, { kind: "open", place: "A1" });
      expect(guess.status, word).toBe(404);
      const demo = await bench.post("/jobs", { from: "demo", name: decodeURIComponent(word) });
      expect(demo.status, word).toBeGreaterThanOrEqual(400);
      const change = { ...noteChange(WIRE, "x"), changeId: decodeURIComponent(word) };
      const sent = await bench.post(`/jobs/${KEY}/changes`, change);
      expect(sent.status, word).toBeGreaterThanOrEqual(400);
    }
    for (const since of ["-1", "1.5", "1e3", "x", "", "99999999999", "4294967296", "%20"]) {
      expect((await bench.get(`/changes?since=${since}`)).status, since).toBe(400);
    }
    expect((await bench.get("/jobs")).body.jobs).toEqual([]);
  });

  test("operations of bad form, and those that would break the job, are refused in words and save nothing", async () => {
    const bench = await open();
    const { key } = (await bench.post("/jobs", { from: "text", text })).body;
    const good = noteChange(WIRE, "x");
    const set = (more: object) => ({ op: "set", list: "wires", id: WIRE, path: ["note"], ...more });
    const wrong: readonly (readonly [object, string])[] = [
      [{ operations: [] }, "body-misfit"],
      [{ operations: "all" }, "body-misfit"],
      [{ operations: [{ op: "run", command: "rm" }] }, "change-refused"],
      [{ operations: [null] }, "change-refused"],
      [{ operations: [set({ path: ["__proto__", "x"] })] }, "change-refused"],
      [{ operations: [set({ path: [], value: 1 })] }, "change-refused"],
      [{ operations: [set({ path: ["from"], value: "=cmd|'/c calc'" })] }, "change-refused"],
      [{ operations: [set({ path: ["note"], value: "x".repeat(300) })] }, "change-refused"],
      [{ operations: [{ op: "remove", list: "wires", id: "nobody" }] }, "change-refused"],
      [{ operations: [set({ list: "revisions" })] }, "change-refused"],
      [{ operations: Array(10_001).fill(set({})) }, "body-misfit"],
      [{ baseRevision: 99 }, "no-such-revision"],
      [{ baseRevision: 0 }, "body-misfit"],
      [{ baseRevision: 1.5 }, "body-misfit"],
      [{ baseRevision: 3_000_000_000 }, "body-misfit"],
      [{ jobVersion: 2 }, "app-newer"],
      [{ jobVersion: 0 }, "app-older"],
      [{ what: " " }, "body-misfit"],
      [{ what: "x".repeat(401) }, "body-misfit"],
      [{ summary: "x".repeat(200_001) }, "body-misfit"],
      [{ text: "whole documents are not taken" }, "body-misfit"],
    ];
    for (const [more, code] of wrong) {
      const { status, body } = await bench.post(`/jobs/${key}/changes`, { ...good, ...more });
      expect(body.code, JSON.stringify(more).slice(0, 80)).toBe(code);
      expect(status).toBeGreaterThanOrEqual(400);
      expect(body.message.length).toBeGreaterThan(20);
    }
    expect((await bench.get(`/jobs/${key}`)).body.revision).toBe(1);
    const deep = JSON.parse(
      `${'{"op":"batch","name":"","operations":['.repeat(2000)}${"]}".repeat(2000)}`,
    );
    const sunk = await bench.post(`/jobs/${key}/changes`, { ...good, operations: [deep] });
    expect(sunk.body.code).toBe("change-refused");
  });

  test("bodies that are no JSON, of another form or too large are refused", async () => {
    const bench = await open();
    const { key } = (await bench.post("/jobs", { from: "text", text })).body;
    for (const body of ["", "null", "[]", "{", '"text"', "\u0000", '{"isArchived":1}']) {
      expect((await bench.post(`/jobs/${key}/archive`, body)).status, body).toBe(400);
    }
    const large = JSON.stringify({ isArchived: true, more: "x".repeat(300_000) });
    expect((await bench.post(`/jobs/${key}/archive`, large)).status).toBe(413);
    const job = JSON.stringify({ from: "text", text: "x".repeat(20_000_001) });
    expect((await bench.post("/jobs", job)).status).toBe(400);
    const unreadable = await bench.post("/jobs", { from: "text", text: '{"copperwrightJob": 1}' });
    expect(unreadable.status).toBe(422);
    expect(unreadable.body.refusals.length).toBeGreaterThan(1);
    const proto = `{"from":"text","text":"{}","__proto__":{"role":"owner"}}`;
    expect((await bench.post("/jobs", proto, LEARNER)).status).toBe(403);
  });

  test("the one sign a database cannot keep is refused where it is asked for and shown as missing in a name", async () => {
    const bench = await open();
    const nul = String.fromCharCode(0);
    const job = JSON.stringify({ ...JSON.parse(text), name: `head${nul}lamp` });
    const { key } = (await bench.post("/jobs", { from: "text", text: job })).body;
    expect((await bench.get("/jobs")).body.jobs[0].name).toBe("head\ufffdlamp");
    expect(JSON.parse((await bench.get(`/jobs/${key}`)).body.text).name).toBe(`head${nul}lamp`);
    const change = { ...noteChange(WIRE, `a${nul}b`), summary: { line: nul } };
    const saved = await bench.post(`/jobs/${key}/changes`, change);
    expect(saved.status).toBe(200);
    const what = await bench.post(`/jobs/${key}/changes`, {
      ...noteChange(WIRE, "x", 2),
      what: nul,
    });
    expect(what.body.code).toBe("body-misfit");
    const picture = await bench.post(`/jobs/${key}/photographs`, { name: nul, base64: "AAAA" });
    expect(picture.body.code).toBe("body-misfit");
    const exercise = { title: nul, request: {}, faults: [{ kind: "open", place: "W1" }] };
    expect((await bench.post(`/jobs/${key}/exercises`, exercise)).body.code).toBe("body-misfit");
  });

  test("a job's name makes a file name of letters and figures", async () => {
    const bench = await open();
    for (const name of [
      '../../x"\r\nset-cookie: a=b',
      "=HYPERLINK()",
      "-rf *",
      "Ünïcode №5",
      "…",
    ]) {
      const job = JSON.stringify({ ...JSON.parse(text), name });
      const { key } = (await bench.post("/jobs", { from: "text", text: job })).body;
      const { headers } = await bench.get(`/jobs/${key}/export`);
      expect(headers.get("content-disposition")).toMatch(
        /^attachment; filename="[A-Za-z0-9][A-Za-z0-9-]*-1\.json"$/,
      );
      expect(headers.get("set-cookie")).toBeNull();
    }
  });
});
