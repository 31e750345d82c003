import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { type IncomingHttpHeaders, request } from "node:http";
import { request as secureRequest } from "node:https";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BenchOptions, type OpenBench, openBench } from "./openBench.ts";

/** A second loopback address, in the place of one on the workshop's network. */
export const LAN = "127.0.0.2";

export interface Answered {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly text: string;
  // biome-ignore lint/suspicious/noExplicitAny: what a server answers is looked at, not trusted
  readonly json: any;
}

export interface Asked {
  readonly method?: string;
  readonly path?: string;
  readonly body?: unknown;
  /** Sent as they are; null takes away what would be sent otherwise. */
  readonly headers?: Readonly<Record<string, string | null>>;
  readonly cookie?: string;
  readonly ca?: string | undefined;
  /** The host the certificate is compared with, where it is not the one the request names. */
  readonly servername?: string;
}

/** One request over a real socket, with the headers the bench's own page would send. `base` is a door's address. */
export function ask(base: string, asked: Asked = {}): Promise<Answered> {
  const {
    method = asked.body === undefined ? "GET" : "POST",
    path = "/",
    body,
    cookie,
    ca,
    servername,
  } = asked;
  const { hostname, port, protocol } = new URL(base);
  const text = typeof body === "string" || body === undefined ? body : JSON.stringify(body);
  const usual: Record<string, string | null> = {
    ...(method === "POST"
      ? { origin: new URL(base).origin, "content-type": "application/json", "x-copperwright": "1" }
      : {}),
    ...(text === undefined ? {} : { "content-length": String(Buffer.byteLength(text)) }),
    ...(cookie === undefined ? {} : { cookie }),
  };
  const headers = Object.fromEntries(
    Object.entries({ ...usual, ...asked.headers }).filter(([, value]) => value !== null),
  ) as Record<string, string>;
  const options = {
    hostname: hostname.replace(/[[\]]/g, ""),
    port,
    path,
    method,
    headers,
    agent: false,
  };
  return new Promise((resolve, reject) => {
    const sent =
      protocol === "https:"
        ? secureRequest({ ...options, ca, ...(servername === undefined ? {} : { servername }) })
        : request(options as object);
    sent.once("error", reject);
    sent.once("response", (response) => {
      const pieces: Buffer[] = [];
      response.on("data", (piece: Buffer) => pieces.push(piece));
      response.once("end", () => {
        const whole = Buffer.concat(pieces).toString("utf8");
        resolve({
          status: response.statusCode ?? 0,
          headers: response.headers,
          text: whole,
          json: readJson(whole),
        });
      });
      response.once("error", reject);
    });
    sent.end(text);
  });
}

function readJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

/** The cookie an answer set, as it is sent back. */
export function cookieOf({ headers }: Answered): string {
  return (headers["set-cookie"]?.[0] ?? "").split(";")[0] ?? "";
}

export interface BenchUnderTest extends OpenBench {
  readonly base: string;
  readonly token: string;
  readonly folder: string;
  /** What the bench said in its window. */
  readonly said: readonly string[];
  /** The clock the bench goes by; tests put it forward. */
  readonly clock: { nowMs: number };
  /** A session of the owner. */
  signIn(): Promise<string>;
  /** Closes it and leaves the folder, for a second start. */
  stop(): Promise<void>;
}

export const WEB_FILES: Readonly<Record<string, string>> = {
  "index.html": "<!doctype html><title>page of the bench</title>",
  "assets/main-Ab3dEf9h.js": `export const long = "${"x".repeat(4000)}";`,
  "mark.svg": "<svg xmlns='http://www.w3.org/2000/svg'/>",
  "notes.secret": "not a kind of file the web app has",
};

/** A real bench on free ports, with its work in a scratch folder and a second loopback address as its network. */
export async function startBench(
  given: Pick<Partial<BenchOptions>, "folder" | "addresses" | "sharedPorts"> = {},
): Promise<BenchUnderTest> {
  const scratch = mkdtempSync(join(tmpdir(), "copperwright-door-"));
  const folder = given.folder ?? join(scratch, "work");
  const webFolder = join(scratch, "web");
  mkdirSync(join(webFolder, "assets"), { recursive: true });
  for (const [name, text] of Object.entries(WEB_FILES)) writeFileSync(join(webFolder, name), text);
  const said: string[] = [];
  const clock = { nowMs: Date.now() };
  const bench = await openBench({
    folder,
    port: 0,
    webFolder,
    owner: { who: "keeper", device: "bench machine" },
    say: (line) => said.push(line),
    clock: () => new Date(clock.nowMs),
    addresses: given.addresses ?? (() => [LAN]),
    ...(given.sharedPorts === undefined ? {} : { sharedPorts: given.sharedPorts }),
    names: () => ["bench-under-test.local"],
  });
  const base = `http://127.0.0.1:${bench.port}`;
  const token = bench.address.split("#token=")[1]!;
  return {
    ...bench,
    base,
    token,
    folder,
    said,
    clock,
    signIn: async () => cookieOf(await ask(base, { path: "/api/session", body: { token } })),
    stop: bench.close,
    close: async () => {
      await bench.close();
      rmSync(scratch, { recursive: true, force: true });
    },
  };
}
