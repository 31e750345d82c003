import { mkdirSync, symlinkSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { join } from "node:path";
import { brotliCompressSync, brotliDecompressSync, gunzipSync } from "node:zlib";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { ask, type BenchUnderTest, startBench, WEB_FILES } from "../benchForTests.fixture.ts";
import { webFiles } from "./webFiles.ts";

let bench: BenchUnderTest;
beforeAll(async () => {
  bench = await startBench();
});
afterAll(() => bench.close());

const HASHED = "/assets/main-Ab3dEf9h.js";

describe("files of the web app", () => {
  test("a name with a mark of its content is kept for ever, another is asked about again", async () => {
    const hashed = await ask(bench.base, { path: HASHED });
    expect(hashed.text).toBe(WEB_FILES[HASHED.slice(1)]);
    expect(hashed.headers["content-type"]).toBe("text/javascript; charset=utf-8");
    expect(hashed.headers["cache-control"]).toBe("public, max-age=31536000, immutable");
    for (const path of ["/", "/index.html", "/mark.svg"]) {
      const answer = await ask(bench.base, { path });
      expect(answer.headers["cache-control"]).toBe("no-cache");
      const { etag } = answer.headers;
      const again = await ask(bench.base, { path, headers: { "if-none-match": etag! } });
      expect([again.status, again.text]).toEqual([304, ""]);
      const changed = await ask(bench.base, { path, headers: { "if-none-match": '"x"' } });
      expect(changed.status).toBe(200);
    }
  });

  test("it is packed for those who take it so", async () => {
    const packed = await new Promise<Buffer>((resolve, reject) => {
      const headers = { "accept-encoding": "gzip, br" };
      request(`${bench.base}${HASHED}`, { headers }, (response) => {
        expect(response.headers["content-encoding"]).toBe("gzip");
        const pieces: Buffer[] = [];
        response.on("data", (piece) => pieces.push(piece));
        response.on("end", () => resolve(Buffer.concat(pieces)));
      })
        .on("error", reject)
        .end();
    });
    expect(gunzipSync(packed).toString()).toBe(WEB_FILES[HASHED.slice(1)]);
    expect(packed.length).toBeLessThan(1000);
  });

  test("what was packed when it was built goes out as it is, to those who take it so", async () => {
    const folder = join(bench.folder, "packed");
    mkdirSync(join(folder, "assets"), { recursive: true });
    writeFileSync(join(folder, HASHED), "let a = 1;");
    writeFileSync(join(folder, `${HASHED}.br`), brotliCompressSync("let a = 1;"));
    writeFileSync(join(folder, "mark.svg"), "<svg/>");
    writeFileSync(join(folder, "mark.svg.br"), brotliCompressSync("<svg>of before</svg>"));
    const files = webFiles(folder);
    const asked = async (path: string, accepted: string) => {
      const answer = await files.answer(path, { accepted, ifNoneMatch: undefined });
      return answer && { encoding: answer.headers.get("content-encoding"), answer };
    };
    const packed = await asked(HASHED, "gzip, deflate, br, zstd");
    expect(packed?.encoding).toBe("br");
    const bytes = new Uint8Array(await packed!.answer.arrayBuffer());
    expect(brotliDecompressSync(bytes).toString()).toBe("let a = 1;");
    expect(await (await asked(HASHED, "gzip"))?.answer.text()).toBe("let a = 1;");
    expect(await (await asked("/mark.svg", "br"))?.answer.text()).toBe("<svg/>");
    expect(await asked(`${HASHED}.br`, "br")).toBeNull();
  });

  test.each([
    "/../package.json",
    "/assets/../../work/bench.sqlite",
    "/..%2f..%2fetc%2fpasswd",
    "/%2e%2e/%2e%2e/etc/passwd.txt",
    "/assets/..%5c..%5cwork%5cbench.sqlite",
    "/assets//main-Ab3dEf9h.js",
    "/ASSETS/main-Ab3dEf9h.js",
    "/assets/main-Ab3dEf9h.js/",
    "/assets/main-Ab3dEf9h.js%00.html",
    "/notes.secret",
    "/door/devices.json",
    "/assets/none-12345678.js",
    "/%ff.js",
    "/%",
  ])("no path climbs out or finds what is not the app's: %s", async (path) => {
    const answer = await ask(bench.base, { path });
    // Either nothing, or the app's page, which makes of an address what it can.
    if (answer.status === 200) expect(answer.text).toBe(WEB_FILES["index.html"]);
    else expect([answer.status, answer.json.ok]).toEqual([404, false]);
  });

  test("an address of the app's own making brings its page; the interface's does not", async () => {
    for (const path of ["/jobs", "/job/abc/try", "/?x=1"]) {
      const answer = await ask(bench.base, { path });
      expect([answer.status, answer.text]).toEqual([200, WEB_FILES["index.html"]]);
    }
    const cookie = await bench.signIn();
    for (const path of ["/api/none", "/api/", "/api/jobs/none/none"]) {
      const answer = await ask(bench.base, { path, cookie });
      expect([answer.status, answer.json?.ok]).toEqual([404, false]);
    }
  });

  test("links are no files of the app, whatever they point at", async () => {
    const folder = join(bench.folder, "linked");
    mkdirSync(folder);
    writeFileSync(join(bench.folder, "outside.js"), "outside");
    writeFileSync(join(folder, "index.html"), "inside");
    symlinkSync(join(bench.folder, "outside.js"), join(folder, "outside.js"));
    const files = webFiles(folder);
    const asked = { accepted: "", ifNoneMatch: undefined };
    expect(files.isBuilt).toBe(true);
    expect(await (await files.answer("/index.html", asked))?.text()).toBe("inside");
    expect(await files.answer("/outside.js", asked)).toBeNull();
    expect(webFiles(join(bench.folder, "none")).isBuilt).toBe(false);
  });
});

describe("every answer", () => {
  test("says what the page may do, whatever the answer is", async () => {
    const cookie = await bench.signIn();
    const answers = await Promise.all([
      ask(bench.base),
      ask(bench.base, { path: HASHED }),
      ask(bench.base, { path: "/none.js" }),
      ask(bench.base, { path: "/api/session", cookie }),
      ask(bench.base, { path: "/api/session" }),
      ask(bench.base, { path: "/api/demos", cookie }),
      ask(bench.base, { path: "/api/session", body: "{", headers: { origin: "null" } }),
      ask(bench.base, { path: "/authority" }),
      ask(bench.base, { headers: { host: "elsewhere.example" } }),
    ]);
    expect(new Set(answers.map(({ status }) => status)).size).toBeGreaterThan(4);
    for (const { headers } of answers) {
      const policy = headers["content-security-policy"]?.toString().split("; ");
      expect(policy).toEqual([
        "default-src 'none'",
        "script-src 'self' 'wasm-unsafe-eval'",
        "style-src 'self'",
        "img-src 'self' blob: data:",
        "connect-src 'self'",
        "worker-src 'self'",
        "manifest-src 'self'",
        "font-src 'self'",
        "frame-ancestors 'none'",
        "base-uri 'none'",
        "form-action 'none'",
      ]);
      expect(headers["x-content-type-options"]).toBe("nosniff");
      expect(headers["referrer-policy"]).toBe("no-referrer");
      expect(headers["cross-origin-opener-policy"]).toBe("same-origin");
      expect(headers["cross-origin-resource-policy"]).toBe("same-origin");
      expect(headers["x-powered-by"]).toBeUndefined();
    }
  });

  test("of the interface is kept by no cache", async () => {
    const cookie = await bench.signIn();
    for (const path of ["/api/session", "/api/jobs", "/api/none"]) {
      expect((await ask(bench.base, { path, cookie })).headers["cache-control"]).toBe("no-store");
    }
  });
});
