import { createHash, X509Certificate } from "node:crypto";
import { readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import type { AddressInfo } from "node:net";
import { join } from "node:path";
import { connect, createServer, type PeerCertificate } from "node:tls";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { ask, type BenchUnderTest, cookieOf, LAN, startBench } from "../benchForTests.fixture.ts";
import { makeAuthority, makeLeaf } from "./authority.ts";

const DAY_MS = 86_400_000;
let bench: BenchUnderTest;
let owner: string;
beforeAll(async () => {
  bench = await startBench();
  owner = await bench.signIn();
});
afterAll(() => bench.close());

const post = (path: string, body: unknown, cookie = owner) =>
  ask(bench.base, { path, body, cookie });

interface Seen {
  readonly isTrusted: boolean;
  readonly why: string | null;
  readonly protocol: string | null;
  readonly certificate: PeerCertificate;
}

/** What a device sees that trusts one authority and nobody else. */
function seenBy(ca: string, port: number, servername: string): Promise<Seen> {
  return new Promise((resolve, reject) => {
    const socket = connect(
      {
        host: LAN,
        port,
        ca,
        rejectUnauthorized: false,
        // An address is never sent as a name; the certificate is compared with it all the same.
        ...(/^[\d.]+$/.test(servername) ? {} : { servername }),
      },
      () => {
        const { authorized, authorizationError } = socket;
        const seen = {
          isTrusted: authorized,
          why: authorizationError ? String(authorizationError) : null,
          protocol: socket.getProtocol(),
          certificate: socket.getPeerCertificate(true),
        };
        socket.end();
        resolve(seen);
      },
    );
    socket.once("error", reject);
  });
}

/** The authority a device fetches, as text. */
async function fetchedAuthority(base: string): Promise<{ pem: string; bytes: Buffer }> {
  const response = await fetch(`${base}/authority.crt`);
  expect(response.status).toBe(200);
  expect(response.headers.get("content-type")).toBe("application/x-x509-ca-cert");
  const bytes = Buffer.from(await response.arrayBuffer());
  return { pem: new X509Certificate(bytes).toString(), bytes };
}

async function secure() {
  await post("/api/sharing", { isOn: true });
  const { json } = await post("/api/sharing/authority", {});
  const { pem, bytes } = await fetchedAuthority(json.plainAddress);
  return { state: json, ca: pem, bytes, port: Number(new URL(json.secureAddress).port) };
}

describe("the bench's own authority", () => {
  test("there is none before it is asked for", async () => {
    const other = await startBench();
    try {
      const cookie = await other.signIn();
      const state = await ask(other.base, { path: "/api/sharing", cookie });
      expect(state.json).toMatchObject({ authority: null, secureAddress: null });
      expect((await ask(other.base, { path: "/authority.crt" })).status).toBe(404);
      const body = { isOn: true, tls: "own-authority" };
      const refused = await ask(other.base, { path: "/api/sharing", body, cookie });
      expect([refused.status, refused.json.code]).toEqual([409, "no-authority"]);
      expect(readdirSync(join(other.folder, "door"))).toEqual([]);
    } finally {
      await other.close();
    }
  });

  test("a device that trusts it trusts the server, by address and by name; another device does not", async () => {
    const { ca, port } = await secure();
    for (const name of [LAN, "bench-under-test.local"]) {
      const seen = await seenBy(ca, port, name);
      expect([seen.isTrusted, seen.why]).toEqual([true, null]);
      expect(seen.protocol).toBe("TLSv1.3");
      expect(seen.certificate.subjectaltname).toBe(`IP Address:${LAN}, DNS:bench-under-test.local`);
    }
    const { certificate: stranger } = await makeAuthority(
      { addresses: [LAN], names: [] },
      new Date(),
    );
    expect((await seenBy(stranger, port, LAN)).isTrusted).toBe(false);
    await expect(ask(`https://${LAN}:${port}`)).rejects.toThrow(/verify|self-signed|unable/);
    expect((await ask(`https://${LAN}:${port}`, { ca })).status).toBe(200);
  });

  test("what is fetched is the certificate alone, and its fingerprint is the one the owner sees", async () => {
    const { state, bytes } = await secure();
    const sha256 = createHash("sha256").update(bytes).digest("hex").toUpperCase();
    expect(state.authority.sha256.replaceAll(":", "")).toBe(sha256);
    const page = await ask(state.plainAddress, { path: "/authority" });
    // Who alters the certificate on its way could alter a fingerprint beside it.
    expect(page.text).not.toContain(state.authority.sha256);
    expect(page.text).toContain(state.secureAddress);
    for (const platform of ["iPhone", "Android", "Windows", "macOS", "Linux"]) {
      expect(page.text).toContain(platform);
    }
    expect(page.text).toContain("To take it away again");
    expect(page.text).not.toContain("PRIVATE KEY");
  });

  test("keys are in files only the owner can read", async () => {
    await secure();
    const door = join(bench.folder, "door");
    expect(statSync(door).mode & 0o777).toBe(0o700);
    expect(statSync(bench.folder).mode & 0o777).toBe(0o700);
    const names = readdirSync(door);
    expect(names).toEqual(expect.arrayContaining(["authority.json", "leaf.json"]));
    for (const name of names) expect(statSync(join(door, name)).mode & 0o777).toBe(0o600);
  });

  test("it can vouch for the workshop and for nothing else", async () => {
    const now = new Date();
    const authority = await makeAuthority({ addresses: [LAN], names: ["bench.local"] }, now);
    expect(new X509Certificate(authority.certificate).ca).toBe(true);
    /** Node's own check of a server that stands with such a certificate. */
    const verdictOn = async (addresses: readonly string[], names: readonly string[]) => {
      const { certificate, key } = await makeLeaf(authority, { addresses, names }, now);
      const server = createServer({ cert: certificate, key });
      await new Promise<void>((done) => server.listen(0, LAN, done));
      const { port } = server.address() as AddressInfo;
      const seen = await seenBy(authority.certificate, port, names[0] ?? addresses[0]!);
      server.close();
      if (!seen.isTrusted) expect(seen.why).toMatch(/permitted subtree violation|UNSPECIFIED/);
      return seen.isTrusted;
    };
    expect(await verdictOn([LAN], ["bench.local"])).toBe(true);
    const inside = ["192.168.7.9", "10.1.2.3", "172.20.0.1"];
    expect(await verdictOn(inside, ["bench.local"])).toBe(true);
    expect(await verdictOn([LAN], ["bank.example"])).toBe(false);
    expect(await verdictOn([LAN], ["bench.local", "bank.example"])).toBe(false);
    for (const outside of ["203.0.113.7", "172.32.0.1", "127.0.0.3"]) {
      expect(await verdictOn([outside], ["bench.local"])).toBe(false);
    }
  });

  test("the server's certificate is renewed while the bench is open, long before its end", async () => {
    const { ca, port } = await secure();
    const before = (await seenBy(ca, port, LAN)).certificate;
    expect(new Date(before.valid_to).getTime() - Date.now()).toBeLessThan(31 * DAY_MS);
    bench.clock.nowMs += 10 * DAY_MS;
    await bench.tend();
    expect((await seenBy(ca, port, LAN)).certificate.serialNumber).toBe(before.serialNumber);
    bench.clock.nowMs += 6 * DAY_MS;
    await bench.tend();
    const after = await seenBy(ca, port, LAN);
    expect(after.certificate.serialNumber).not.toBe(before.serialNumber);
    expect(new Date(after.certificate.valid_to) > new Date(before.valid_to)).toBe(true);
    bench.clock.nowMs = Date.now();
  });

  test("made anew, what trusted the former one no longer trusts the bench; taken away, the door shuts", async () => {
    const former = await secure();
    const latter = await secure();
    expect(latter.ca).not.toBe(former.ca);
    expect((await seenBy(former.ca, latter.port, LAN)).isTrusted).toBe(false);
    expect((await seenBy(latter.ca, latter.port, LAN)).isTrusted).toBe(true);
    const removed = await post("/api/sharing/authority/remove", {});
    expect(removed.json).toMatchObject({ tls: "none", authority: null, secureAddress: null });
    expect((await ask(bench.base, { path: "/authority.crt" })).status).toBe(404);
    await expect(seenBy(latter.ca, latter.port, LAN)).rejects.toThrow("ECONNREFUSED");
    const left = readdirSync(join(bench.folder, "door"));
    expect(left).not.toContain("authority.json");
    expect(left).not.toContain("leaf.json");
  });
});

describe("a device at the secure door", () => {
  async function paired(base: string, ca: string | undefined, deviceName: string) {
    const { code } = (await post("/api/sharing/codes", { role: "edit" })).json;
    return ask(base, { path: "/api/pair", body: { code, deviceName }, ...(ca && { ca }) });
  }

  test("edits, with a cookie that is never sent in the clear", async () => {
    const { state, ca } = await secure();
    const answer = await paired(state.secureAddress, ca, "secure phone");
    expect(answer.headers["set-cookie"]?.[0]).toMatch(/; HttpOnly; Secure; SameSite=Strict$/);
    const cookie = cookieOf(answer);
    const session = await ask(state.secureAddress, { path: "/api/session", cookie, ca });
    expect(session.json).toMatchObject({ role: "edit", isSecure: true, whyLimited: null });
    const body = { from: "demo", name: "accessory-five-wires" };
    const made = await ask(state.secureAddress, { path: "/api/jobs", body, cookie, ca });
    expect(made.status).toBe(200);
    const fromPlain = await ask(state.secureAddress, {
      path: "/api/jobs",
      body,
      cookie,
      ca,
      headers: { origin: state.plainAddress },
    });
    expect(fromPlain.json.code).toBe("wrong-origin");
  });

  test("a cookie of one door opens nothing at the other", async () => {
    const { state, ca } = await secure();
    const renamed = (cookie: string, base: string) =>
      cookie.replace(/_\d+=/, `_${new URL(base).port}=`);
    const plain = cookieOf(await paired(state.plainAddress, undefined, "plain phone"));
    const atSecure = renamed(plain, state.secureAddress);
    const up = await ask(state.secureAddress, { path: "/api/jobs", cookie: atSecure, ca });
    expect(up.status).toBe(401);
    const safe = cookieOf(await paired(state.secureAddress, ca, "other phone"));
    const atPlain = renamed(safe, state.plainAddress);
    expect((await ask(state.plainAddress, { path: "/api/jobs", cookie: atPlain })).status).toBe(
      401,
    );
  });
});

describe("the shop's certificate", () => {
  const put = (name: string, text: string) => writeFileSync(join(bench.folder, "door", name), text);

  test("is used where it is whole, and refused where it is not", async () => {
    await post("/api/sharing", { isOn: true, tls: "none" });
    const use = () => post("/api/sharing", { isOn: true, tls: "shop" });
    expect((await use()).json.code).toBe("no-shop-certificate");
    const now = new Date();
    const shop = await makeAuthority({ addresses: [LAN], names: ["shop.example"] }, now);
    const leaf = await makeLeaf(shop, { addresses: [LAN], names: ["shop.example"] }, now);
    const other = await makeLeaf(shop, { addresses: [LAN], names: ["shop.example"] }, now);
    put("certificate.pem", leaf.certificate);
    for (const key of ["nonsense", other.key]) {
      put("certificate-key.pem", key);
      expect((await use()).json.code).toBe("bad-shop-certificate");
    }
    const past = new Date(now.getTime() - 100 * DAY_MS);
    const old = await makeLeaf(shop, { addresses: [LAN], names: [] }, past);
    put("certificate.pem", old.certificate);
    put("certificate-key.pem", old.key);
    expect((await use()).json.code).toBe("bad-shop-certificate");
    put("certificate.pem", leaf.certificate);
    put("certificate-key.pem", leaf.key);
    const { json } = await use();
    expect(json).toMatchObject({ isOn: true, tls: "shop" });
    const ca = shop.certificate;
    const { port } = new URL(json.secureAddress);
    expect((await seenBy(ca, Number(port), "shop.example")).isTrusted).toBe(true);
    const named = { ca, headers: { host: `shop.example:${port}` } };
    expect((await ask(json.secureAddress, named)).status).toBe(200);
    const strange = {
      ca,
      servername: "shop.example",
      headers: { host: `bench-under-test.local:${port}` },
    };
    expect((await ask(json.secureAddress, strange)).status).toBe(421);
    expect(readFileSync(join(bench.folder, "door", "sharing.json"), "utf8")).not.toContain("KEY");
  });
});
