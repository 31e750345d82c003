import { readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, test } from "vitest";
import { openStorage, type Storage } from "../storage/index.ts";
import { type PostgresForTests, startPostgres } from "../storage/postgresForTests.fixture.ts";
import { apiBench, noteChange } from "./apiBench.fixture.ts";

const START_MS = 60_000;
const text = readFileSync("demos/aldreth-single.json", "utf8");
let postgres: PostgresForTests;
const opened: Storage[] = [];

beforeAll(async () => {
  postgres = await startPostgres();
}, START_MS);
afterAll(async () => {
  for (const storage of opened) await storage.close();
  postgres?.stop();
});

// Two on one embedded file are two processes; crash.test.ts has them.
test("two servers on one storage save one job: nothing is overwritten, and each sees what the other saved", async () => {
  const postgresUrl = await postgres.freshUrl();
  for (let k = 0; k < 2; k++) opened.push(await openStorage({ postgresUrl }));
  const [here, there] = opened.map(apiBench) as [
    ReturnType<typeof apiBench>,
    ReturnType<typeof apiBench>,
  ];
  const { key } = (await here.post("/jobs", { from: "text", text })).body;
  const wires: string[] = JSON.parse(text).wires.map(({ id }: { id: string }) => id);
  const sent = wires.slice(0, 16).map((wire, i) => {
    const bench = i % 2 === 0 ? here : there;
    return bench.post(`/jobs/${key}/changes`, noteChange(wire, `from ${i}`));
  });
  const answers = await Promise.all(sent);
  expect(answers.map(({ status }) => status)).toEqual(answers.map(() => 200));
  for (const bench of [here, there]) {
    const head = (await bench.get(`/jobs/${key}`)).body;
    expect(head.revision).toBe(17);
    const saved: { id: string; note?: string }[] = JSON.parse(head.text).wires;
    const notes = wires.slice(0, 16).map((wire) => saved.find(({ id }) => id === wire)?.note);
    expect(notes).toEqual(wires.slice(0, 16).map((_, i) => `from ${i}`));
    expect((await bench.get("/changes?since=0")).body.jobs).toMatchObject([{ revision: 17 }]);
  }
});
