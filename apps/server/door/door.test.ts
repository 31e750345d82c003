import { request } from "node:http";
import { connect } from "node:net";
import { networkInterfaces } from "node:os";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { ask, type BenchUnderTest, cookieOf, startBench } from "../benchForTests.fixture.ts";

let bench: BenchUnderTest;
let cookie: string;
beforeAll(async () => {
  bench = await startBench();
  cookie = await bench.signIn();
});
afterAll(() => bench.close());

/** A change that is let in: what each rule is tried against. */
const change = { path: "/api/jobs", body: { from: "demo", name: "aldreth-single" } };

describe("session", () => {
  test("the token of this start is traded for a cookie no script reads and no other site sends", async () => {
    const traded = await ask(bench.base, { path: "/api/session", body: { token: bench.token } });
    expect(traded.status).toBe(200);
    expect(traded.json).toEqual({ ok: true });
    const [set] = traded.headers["set-cookie"] ?? [];
    expect(set).toMatch(/^cw_session_\d+=[\w-]{43}; Path=\/; HttpOnly; SameSite=Strict$/);
    expect(set).not.toContain(bench.token);
  });

  test.each(["", "x", "a".repeat(43), "a".repeat(200), "é".repeat(40)])(
    "another token opens nothing: %j",
    async (token) => {
      const refused = await ask(bench.base, { path: "/api/session", body: { token } });
      expect([refused.status, refused.json.code]).toEqual([403, "wrong-token"]);
      expect(refused.headers["set-cookie"]).toBeUndefined();
    },
  );

  test.each([[{}], [{ token: 1 }], ['{"token":'], ["null"]])(
    "what is no token at all opens nothing: %j",
    async (body) => {
      const refused = await ask(bench.base, { path: "/api/session", body });
      expect(refused.status).toBe(403);
    },
  );

  test("with the cookie the owner is known, without it nobody is", async () => {
    const known = await ask(bench.base, { path: "/api/session", cookie });
    expect(known.json).toMatchObject({
      who: "keeper",
      role: "owner",
      device: "bench machine",
      isSecure: true,
      whyLimited: null,
    });
    for (const other of ["", "cw_session_1=x", `${cookie}x`, cookie.replace(/=.*/, "=")]) {
      const unknown = await ask(bench.base, { path: "/api/session", cookie: other });
      expect([unknown.status, unknown.json.code]).toEqual([401, "no-session"]);
      expect((await ask(bench.base, { path: "/api/jobs", cookie: other })).status).toBe(401);
      expect((await ask(bench.base, { ...change, cookie: other })).status).toBe(401);
    }
  });

  test("an address for a browser program works once, and for a minute", async () => {
    const token = () => bench.launchAddress().split("#token=")[1]!;
    const once = token();
    const first = await ask(bench.base, { path: "/api/session", body: { token: once } });
    expect(first.status).toBe(200);
    const again = await ask(bench.base, { path: "/api/session", body: { token: once } });
    expect(again.status).toBe(403);
    const late = token();
    bench.clock.nowMs += 61_000;
    const tooLate = await ask(bench.base, { path: "/api/session", body: { token: late } });
    expect(tooLate.status).toBe(403);
  });

  test("a cookie of one start opens nothing at the next", async () => {
    const other = await startBench();
    try {
      const theirs = cookie.replace(/_\d+=/, `_${other.port}=`);
      expect((await ask(other.base, { path: "/api/session", cookie: theirs })).status).toBe(401);
    } finally {
      await other.close();
    }
  });
});

describe("host", () => {
  test.each(["127.0.0.1", "localhost", "LOCALHOST", "[::1]"])("%s is the bench", async (name) => {
    const answer = await ask(bench.base, {
      path: "/api/session",
      cookie,
      headers: { host: `${name}:${bench.port}` },
    });
    expect(answer.status).toBe(200);
  });

  test.each([
    "elsewhere.example",
    "127.0.0.1",
    "localhost",
    "127.0.0.1:1",
    "localhost.elsewhere.example:PORT",
    "127.0.0.1.elsewhere.example:PORT",
    "127.0.0.2:PORT",
    "bench-under-test.local:PORT",
    "0.0.0.0:PORT",
    "keeper@127.0.0.1:PORT",
  ])("%j is not, page or interface", async (name) => {
    for (const path of ["/", "/api/session", "/assets/main-Ab3dEf9h.js"]) {
      const host = name.replace("PORT", String(bench.port));
      const refused = await ask(bench.base, { path, cookie, headers: { host } });
      expect([refused.status, refused.json.code]).toEqual([421, "wrong-host"]);
      expect(refused.headers["x-content-type-options"]).toBe("nosniff");
    }
  });

  test("two hosts, no host and a whole address are refused", async () => {
    const raw = (lines: readonly string[]) =>
      new Promise<string>((resolve, reject) => {
        const socket = connect(bench.port, "127.0.0.1", () =>
          socket.end([...lines, "connection: close", "", ""].join("\r\n")),
        );
        let text = "";
        socket.on("data", (piece) => {
          text += piece;
        });
        socket.on("close", () => resolve(text));
        socket.on("error", reject);
      });
    const host = `host: 127.0.0.1:${bench.port}`;
    expect(await raw(["GET / HTTP/1.1", host])).toMatch(/^HTTP\/1.1 200/);
    expect(await raw(["GET / HTTP/1.1", host, "host: elsewhere.example"])).toMatch(
      /^HTTP\/1.1 421/,
    );
    expect(await raw(["GET / HTTP/1.1"])).toMatch(/^HTTP\/1.1 400/);
    expect(await raw(["GET / HTTP/1.1", "host:"])).toMatch(/^HTTP\/1.1 4(00|21)/);
    expect(await raw(["GET http://elsewhere.example/ HTTP/1.1", host])).toMatch(/^HTTP\/1.1 400/);
    expect(await raw(["GET //elsewhere.example/ HTTP/1.1", host])).toMatch(/^HTTP\/1.1 400/);
  });

  test("both kinds of loopback address answer, as far as the machine has them", async () => {
    const hasNewer = Object.values(networkInterfaces()).some((addresses) =>
      addresses?.some(({ address }) => address === "::1"),
    );
    const asked = ask(`http://[::1]:${bench.port}`, { path: "/api/session" });
    if (hasNewer) expect((await asked).status).toBe(401);
    else await expect(asked).rejects.toThrow();
  });

  test("a request under way is answered before the door shuts", async () => {
    const other = await startBench();
    const body = JSON.stringify({ token: other.token });
    const status = await new Promise<number>((resolve, reject) => {
      const sent = request(
        {
          hostname: "127.0.0.1",
          port: other.port,
          path: "/api/session",
          method: "POST",
          headers: {
            origin: other.base,
            "content-type": "application/json",
            "x-copperwright": "1",
            "content-length": String(body.length),
          },
        },
        (response) => resolve(response.resume().statusCode ?? 0),
      );
      sent.on("error", reject);
      sent.write(body.slice(0, 10), () => {
        // The door is told to shut while half of the request is on its way.
        setTimeout(() => {
          void other.close();
          sent.end(body.slice(10));
        }, 50);
      });
    });
    expect(status).toBe(200);
  });

  test("it listens on loopback only", async () => {
    await expect(ask(`http://127.0.0.2:${bench.port}`)).rejects.toThrow("ECONNREFUSED");
  });
});

describe("changes", () => {
  test("a change of the bench's own page is let in", async () => {
    expect((await ask(bench.base, { ...change, cookie })).status).toBe(200);
  });

  test.each([
    [{ origin: null }, "wrong-origin"],
    [{ origin: "null" }, "wrong-origin"],
    [{ origin: "http://elsewhere.example" }, "wrong-origin"],
    [{ origin: "http://127.0.0.1:1" }, "wrong-origin"],
    [{ origin: "https://127.0.0.1:PORT" }, "wrong-origin"],
    [{ origin: "http://localhost:PORT" }, "wrong-origin"],
    [{ "sec-fetch-site": "cross-site" }, "wrong-origin"],
    [{ "sec-fetch-site": "same-site" }, "wrong-origin"],
    [{ "content-type": null }, "not-json"],
    [{ "content-type": "text/plain" }, "not-json"],
    [{ "content-type": "application/x-www-form-urlencoded" }, "not-json"],
    [{ "content-type": "multipart/form-data; boundary=x" }, "not-json"],
    [{ "content-type": "text/plain; application/json" }, "not-json"],
    [{ "x-copperwright": null }, "no-mark"],
    [{ "x-copperwright": "0" }, "no-mark"],
  ] as const)("%j is refused: %s", async (given, code) => {
    const headers = Object.fromEntries(
      Object.entries(given).map(([name, value]) => [
        name,
        value?.replace("PORT", String(bench.port)) ?? null,
      ]),
    );
    const before = (await ask(bench.base, { path: "/api/jobs", cookie })).json.jobs.length;
    const refused = await ask(bench.base, { ...change, cookie, headers });
    expect(refused.json).toMatchObject({ ok: false, code });
    expect(refused.status).toBeGreaterThanOrEqual(400);
    expect((await ask(bench.base, { path: "/api/jobs", cookie })).json.jobs.length).toBe(before);
    const traded = await ask(bench.base, {
      path: "/api/session",
      body: { token: bench.token },
      headers,
    });
    expect(traded.json.code).toBe(code);
  });

  test("a page from elsewhere reads nothing either, and is not told what it may send", async () => {
    const read = await ask(bench.base, {
      path: "/api/jobs",
      cookie,
      headers: { "sec-fetch-site": "cross-site" },
    });
    expect(read.json.code).toBe("wrong-origin");
    const asked = await ask(bench.base, {
      path: "/api/jobs",
      method: "OPTIONS",
      headers: { origin: "http://elsewhere.example", "access-control-request-method": "POST" },
    });
    expect(asked.status).toBe(405);
    expect(Object.keys(asked.headers).some((name) => name.startsWith("access-control"))).toBe(
      false,
    );
  });

  test.each(["PUT", "DELETE", "PATCH", "TRACE", "OPTIONS"])(
    "%s is no way to ask",
    async (method) => {
      const refused = await ask(bench.base, { path: "/api/jobs", method, cookie });
      expect([refused.status, refused.json.code]).toEqual([405, "wrong-method"]);
    },
  );

  test("no socket is opened beside requests", async () => {
    await expect(
      ask(bench.base, {
        cookie,
        headers: {
          connection: "upgrade",
          upgrade: "websocket",
          "sec-websocket-key": "eHh4eHh4eHh4eHh4eHh4eA==",
          "sec-websocket-version": "13",
        },
      }),
    ).rejects.toThrow();
  });

  test("a body beyond its bound is refused, with its length said or not", async () => {
    const long = { token: "x".repeat(5000) };
    const said = await ask(bench.base, { path: "/api/session", body: long });
    expect([said.status, said.json.code]).toEqual([413, "too-large"]);
    const unsaid = await new Promise<number>((resolve, reject) => {
      const sent = request(
        {
          hostname: "127.0.0.1",
          port: bench.port,
          path: "/api/session",
          method: "POST",
          headers: {
            origin: bench.base,
            "content-type": "application/json",
            "x-copperwright": "1",
            "transfer-encoding": "chunked",
          },
        },
        (response) => resolve(response.resume().statusCode ?? 0),
      );
      sent.on("error", reject);
      sent.end(JSON.stringify(long));
    });
    expect(unsaid).toBe(413);
    const short = await ask(bench.base, { path: "/api/session", body: { token: "x".repeat(100) } });
    expect(short.status).toBe(403);
  });

  test("the runtime's own client is let in as well", async () => {
    const response = await fetch(`${bench.base}/api/session`, {
      method: "POST",
      headers: { "content-type": "application/json", "x-copperwright": "1", origin: bench.base },
      body: JSON.stringify({ token: bench.token }),
    });
    expect(response.status).toBe(200);
    expect(
      cookieOf({ headers: { "set-cookie": response.headers.getSetCookie() } } as never),
    ).toMatch(/^cw_session_/);
  });
});
