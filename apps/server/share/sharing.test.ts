import { createServer } from "node:net";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { ask, type BenchUnderTest, cookieOf, LAN, startBench } from "../benchForTests.fixture.ts";

let bench: BenchUnderTest;
let owner: string;
beforeAll(async () => {
  bench = await startBench();
  owner = await bench.signIn();
});
afterAll(() => bench.close());

const post = (path: string, body: unknown, cookie = owner, base = bench.base) =>
  ask(base, { path, body, cookie });
const get = (path: string, cookie = owner, base = bench.base) => ask(base, { path, cookie });

/** Shares, and answers with the plain door's address. */
async function share(): Promise<string> {
  const answer = await post("/api/sharing", { isOn: true });
  expect(answer.status).toBe(200);
  return answer.json.plainAddress as string;
}

async function newCode(role: "edit" | "view"): Promise<string> {
  return (await post("/api/sharing/codes", { role })).json.code as string;
}

let named = 0;
async function pair(base: string, role: "edit" | "view"): Promise<string> {
  named += 1;
  const code = await newCode(role);
  const paired = await ask(base, {
    path: "/api/pair",
    body: { code, deviceName: `tablet ${named}` },
  });
  expect(paired.json).toEqual({ ok: true });
  return cookieOf(paired);
}

async function demoJob(): Promise<{ key: string; revision: number }> {
  return (await post("/api/jobs", { from: "demo", name: "accessory-five-wires" })).json;
}

describe("off until asked for", () => {
  test("nothing listens on the network before, and nothing after it is turned off", async () => {
    const before = await get("/api/sharing");
    expect(before.json).toMatchObject({ isOn: false, address: null, port: null, tls: "none" });
    const base = await share();
    expect(base).toMatch(new RegExp(`^http://${LAN}:\\d+$`));
    expect((await ask(base)).status).toBe(200);
    const off = await post("/api/sharing", { isOn: false });
    expect(off.json.isOn).toBe(false);
    await expect(ask(base)).rejects.toThrow("ECONNREFUSED");
  });

  test("the network's door takes its own names and no others", async () => {
    const base = await share();
    const { port } = new URL(base);
    for (const [host, status] of [
      [`${LAN}:${port}`, 200],
      [`bench-under-test.local:${port}`, 200],
      [`127.0.0.1:${port}`, 421],
      [`localhost:${port}`, 421],
      [`elsewhere.example:${port}`, 421],
    ] as const) {
      expect((await ask(base, { headers: { host } })).status).toBe(status);
    }
  });

  test("the owner's token and cookie open nothing on the network", async () => {
    const base = await share();
    const traded = await ask(base, { path: "/api/session", body: { token: bench.token } });
    expect([traded.status, traded.json.code]).toEqual([403, "not-here"]);
    const asPlain = owner.replace(/_\d+=/, `_${new URL(base).port}=`);
    expect((await get("/api/jobs", asPlain, base)).status).toBe(401);
    expect((await get("/api/jobs", owner, base)).status).toBe(401);
  });

  test("without a network, or with an address that is not this machine's, it says so", async () => {
    const wrong = await post("/api/sharing", { isOn: true, address: "127.0.0.9" });
    expect([wrong.status, wrong.json.code]).toEqual([400, "wrong-address"]);
    const alone = await startBench({ addresses: () => [] });
    try {
      const cookie = await alone.signIn();
      const refused = await post("/api/sharing", { isOn: true }, cookie, alone.base);
      expect([refused.status, refused.json.code]).toEqual([409, "no-network"]);
      expect((await get("/api/sharing", cookie, alone.base)).json.isOn).toBe(false);
    } finally {
      await alone.close();
    }
  });

  test.each([{ isOn: "yes" }, { tls: "any" }, { isOn: true, path: "/etc" }, [], "x"])(
    "a setting of no kind is refused: %j",
    async (body) => {
      const refused = await post("/api/sharing", body);
      expect([refused.status, refused.json.code]).toEqual([400, "wrong-setting"]);
    },
  );
});

describe("pairing", () => {
  test("a code lets one device in, once", async () => {
    const base = await share();
    const code = await newCode("edit");
    expect(code).toMatch(/^\d{4} \d{4}$/);
    const body = { code, deviceName: "Ann's tablet" };
    const paired = await ask(base, { path: "/api/pair", body });
    expect(paired.headers["set-cookie"]?.[0]).toMatch(
      /^cw_session_\d+=[\w-]{43}; Max-Age=34560000; Path=\/; HttpOnly; SameSite=Strict$/,
    );
    const session = await get("/api/session", cookieOf(paired), base);
    expect(session.json).toMatchObject({ who: "Ann's tablet", role: "edit", isSecure: false });
    const again = await ask(base, { path: "/api/pair", body: { code, deviceName: "another" } });
    expect([again.status, again.json.code]).toEqual([403, "no-code"]);
  });

  test("it is typed with or without its gap", async () => {
    const base = await share();
    for (const typed of [(code: string) => code.replace(" ", ""), (code: string) => ` ${code} `]) {
      named += 1;
      const body = { code: typed(await newCode("view")), deviceName: `phone ${named}` };
      expect((await ask(base, { path: "/api/pair", body })).status).toBe(200);
    }
  });

  test("it is over after two minutes", async () => {
    const base = await share();
    const early = await newCode("view");
    bench.clock.nowMs += 119_000;
    const inTime = await ask(base, {
      path: "/api/pair",
      body: { code: early, deviceName: "in time" },
    });
    expect(inTime.status).toBe(200);
    const late = await newCode("view");
    bench.clock.nowMs += 120_000;
    const tooLate = await ask(base, {
      path: "/api/pair",
      body: { code: late, deviceName: "late" },
    });
    expect([tooLate.status, tooLate.json.code]).toEqual([403, "no-code"]);
  });

  test.each([
    [4, 200, undefined],
    [5, 403, "no-code"],
  ])("after %i wrong tries the right code answers %i", async (tries, status, code) => {
    const base = await share();
    const right = await newCode("view");
    const wrong = right.startsWith("0000") ? "1111 1111" : "0000 0000";
    for (let i = 0; i < tries; i++) {
      const refused = await ask(base, {
        path: "/api/pair",
        body: { code: wrong, deviceName: "guesser" },
      });
      expect([refused.status, refused.json.code]).toEqual([403, "wrong-code"]);
    }
    const answer = await ask(base, {
      path: "/api/pair",
      body: { code: right, deviceName: `after ${tries}` },
    });
    expect([answer.status, answer.json.code]).toEqual([status, code]);
  });

  test("tries at the same moment are counted one by one", async () => {
    const base = await share();
    const right = await newCode("view");
    const wrong = right.startsWith("0000") ? "1111 1111" : "0000 0000";
    const answers = await Promise.all(
      Array.from({ length: 20 }, () =>
        ask(base, { path: "/api/pair", body: { code: wrong, deviceName: "many" } }),
      ),
    );
    expect(answers.filter(({ json }) => json.code === "wrong-code").length).toBe(5);
    const twice = await newCode("view");
    const both = await Promise.all(
      ["left", "right"].map((deviceName) =>
        ask(base, { path: "/api/pair", body: { code: twice, deviceName } }),
      ),
    );
    expect(both.map(({ status }) => status).sort()).toEqual([200, 403]);
  });

  test("a new code voids the former, and turning sharing off voids both", async () => {
    const base = await share();
    const former = await newCode("view");
    const latter = await newCode("view");
    if (former !== latter) {
      const refused = await ask(base, {
        path: "/api/pair",
        body: { code: former, deviceName: "former" },
      });
      expect(refused.json.code).toBe("wrong-code");
    }
    await post("/api/sharing", { isOn: false });
    const again = await share();
    const refused = await ask(again, {
      path: "/api/pair",
      body: { code: latter, deviceName: "latter" },
    });
    expect(refused.json.code).toBe("no-code");
  });

  test.each(["", "x".repeat(41), "a\u202eb", "<b>", "a\nb", "keeper", "KEEPER", "bench machine"])(
    "a name that hides, shouts or pretends costs no code: %j",
    async (deviceName) => {
      const base = await share();
      const code = await newCode("view");
      const refused = await ask(base, { path: "/api/pair", body: { code, deviceName } });
      expect(["device-name", "device-name-taken"]).toContain(refused.json.code);
      named += 1;
      const body = { code, deviceName: `fine ${named}` };
      expect((await ask(base, { path: "/api/pair", body })).status).toBe(200);
    },
  );

  test("codes are made by the owner alone, and pairing is not done on this machine", async () => {
    const base = await share();
    const editor = await pair(base, "edit");
    const refused = await post("/api/sharing/codes", { role: "edit" }, editor, base);
    expect([refused.status, refused.json.code]).toEqual([403, "role-owner"]);
    const here = await post("/api/pair", { code: await newCode("edit"), deviceName: "here" });
    expect([here.status, here.json.code]).toEqual([403, "pair-elsewhere"]);
  });
});

describe("what a paired device may do", () => {
  test("one that may look reads, hunts and changes nothing", async () => {
    const base = await share();
    const viewer = await pair(base, "view");
    const { key, revision } = await demoJob();
    expect((await get("/api/jobs", viewer, base)).status).toBe(200);
    expect((await get(`/api/jobs/${key}`, viewer, base)).json.revision).toBe(revision);
    for (const path of [
      "/api/jobs",
      `/api/jobs/${key}/changes`,
      `/api/jobs/${key}/restore`,
      `/api/jobs/${key}/archive`,
      `/api/jobs/${key}/photographs`,
      `/api/jobs/${key}/conflicts/x/settle`,
      `/api/jobs/${key}/exercises`,
    ]) {
      const refused = await post(path, tick(1), viewer, base);
      expect([path, refused.status, refused.json.code]).toEqual([path, 403, "role-view"]);
    }
    const hunted = await post("/api/exercises/none/read", {}, viewer, base);
    expect(hunted.json.code).not.toBe("role-view");
  });

  test("what is the owner's is refused to both, reading included", async () => {
    const base = await share();
    for (const role of ["edit", "view"] as const) {
      const cookie = await pair(base, role);
      for (const path of ["/api/sharing", "/api/devices", "/api/backup"]) {
        expect((await get(path, cookie, base)).json.code).toBe("role-owner");
      }
      for (const path of [
        "/api/sharing",
        "/api/sharing/authority",
        "/api/sharing/authority/remove",
        "/api/devices/x/revoke",
        "/api/backup/restore",
      ]) {
        expect((await post(path, { isOn: false }, cookie, base)).json.code).toBe("role-owner");
      }
    }
  });

  const record = { subject: "W1", done: "cut", by: "Ann", date: "2026-11-25" };
  const tick = (n: number) => ({
    changeId: `change-${n}-${Math.random().toString(36).slice(2)}`,
    baseRevision: 1,
    jobVersion: 2,
    operations: [{ op: "add", list: "build", item: { id: `B${n}`, ...record } }],
    what: "ticked W1",
  });

  test("one that may edit ticks over a plain connection, and the page is told why no more", async () => {
    const base = await share();
    const editor = await pair(base, "edit");
    const session = await get("/api/session", editor, base);
    expect(session.json.whyLimited).toContain("plain connection");
    const { key } = await demoJob();
    const { jobVersion } = await versionOf(key);
    const ticked = await post(
      `/api/jobs/${key}/changes`,
      { ...tick(1), jobVersion, summary: { verdict: "fit" } },
      editor,
      base,
    );
    expect([ticked.status, ticked.json.revision]).toEqual([200, 2]);
    // A word about the verdict that came in the clear is not handed on.
    const listed = (await get("/api/jobs")).json.jobs.find(
      (job: { key: string }) => job.key === key,
    );
    expect(JSON.stringify(listed.summary ?? null)).not.toContain("fit");
  });

  async function versionOf(key: string): Promise<{ jobVersion: number }> {
    const { text } = (await get(`/api/jobs/${key}`)).json;
    return { jobVersion: JSON.parse(text).copperwrightJob };
  }

  test.each([
    [[{ op: "set", list: "job", path: ["name"], value: "x" }]],
    [[{ op: "remove", list: "wires", id: "W1" }]],
    [[tick(1).operations[0], { op: "set", list: "wires", id: "W1", path: ["areaMm2"], value: 9 }]],
    [[{ op: "batch", name: "b", operations: [{ op: "remove", list: "parts", id: "F1" }] }]],
    [[{ op: "batch", name: "b" }]],
    [[{ op: "add", list: ["build"], item: {} }]],
    [[{ op: "other", list: "build" }]],
    [[null]],
    [[]],
    [{ length: 1, 0: { op: "add", list: "build" } }],
    [undefined],
  ])("over it nothing but ticks passes: %j", async (operations) => {
    const base = await share();
    const editor = await pair(base, "edit");
    const { key } = await demoJob();
    const { jobVersion } = await versionOf(key);
    const refused = await post(
      `/api/jobs/${key}/changes`,
      { ...tick(2), jobVersion, operations },
      editor,
      base,
    );
    expect([refused.status, refused.json.code]).toEqual([403, "only-ticks"]);
    expect((await get(`/api/jobs/${key}`)).json.revision).toBe(1);
  });

  test("no other change passes over it either", async () => {
    const base = await share();
    const editor = await pair(base, "edit");
    const { key } = await demoJob();
    for (const path of ["/api/jobs", `/api/jobs/${key}/restore`, `/api/jobs/${key}/archive`]) {
      const refused = await post(path, { from: "copy", key }, editor, base);
      expect(refused.json.code).toBe("only-ticks");
    }
  });
});

describe("devices", () => {
  test("are listed without their secrets, and one that is sent away is out at once", async () => {
    const base = await share();
    const cookie = await pair(base, "edit");
    const { devices } = (await get("/api/devices")).json;
    const device = devices.at(-1);
    expect(device).toMatchObject({ name: `tablet ${named}`, role: "edit", isSecure: false });
    expect(JSON.stringify(devices)).not.toMatch(/seal|secret|token/);
    expect((await get("/api/jobs", cookie, base)).status).toBe(200);
    expect((await post(`/api/devices/${device.id}/revoke`, {})).json).toEqual({ ok: true });
    expect((await get("/api/jobs", cookie, base)).status).toBe(401);
    expect((await post(`/api/devices/${device.id}/revoke`, {})).status).toBe(404);
  });

  test("stay paired over a new start, and sharing stays as it was", async () => {
    const first = await startBench();
    const firstOwner = await first.signIn();
    const { plainAddress } = (await post("/api/sharing", { isOn: true }, firstOwner, first.base))
      .json;
    const { code } = (await post("/api/sharing/codes", { role: "view" }, firstOwner, first.base))
      .json;
    const paired = await ask(plainAddress, {
      path: "/api/pair",
      body: { code, deviceName: "stays" },
    });
    await first.stop();
    const second = await startBench({ folder: first.folder });
    try {
      const secondOwner = await second.signIn();
      const state = (await get("/api/sharing", secondOwner, second.base)).json;
      expect(state.isOn).toBe(true);
      const { port } = new URL(state.plainAddress);
      const cookie = cookieOf(paired).replace(/_\d+=/, `_${port}=`);
      expect((await get("/api/session", cookie, state.plainAddress)).json.who).toBe("stays");
    } finally {
      await second.close();
      await first.close();
    }
  });
});

test("a port that another program has is named, and sharing stays as it was", async () => {
  const taken = createServer();
  await new Promise<void>((done) => taken.listen(0, LAN, done));
  const { port } = taken.address() as { port: number };
  const other = await startBench({ sharedPorts: { plain: port, secure: 0 } });
  try {
    const cookie = await other.signIn();
    const refused = await post("/api/sharing", { isOn: true }, cookie, other.base);
    expect([refused.status, refused.json.code]).toEqual([409, "port-taken"]);
    expect((await get("/api/sharing", cookie, other.base)).json.isOn).toBe(false);
  } finally {
    await other.close();
    taken.close();
  }
});
