import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { Agent, request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { startPostgres } from "../../apps/server/storage/postgresForTests.fixture.ts";
import { ROOT } from "../sourceFiles.ts";

const CLIENTS = 200;
/** As often as the web app asks, ms. */
const POLL_MS = 2000;
const LASTING_MS = 20_000;
const WITHOUT_PAUSE_MS = 5000;
/** Unit of processor time in /proc on Linux, ms. */
const TICK_MS = 10;
const DEMO = "brenzach-twin";

interface Bench {
  readonly process: ChildProcess;
  readonly base: URL;
  readonly token: string;
}

/** The bench as a person starts it, in a process of its own. */
function start(words: readonly string[]): Promise<Bench> {
  const command = join(ROOT, "node_modules/.bin/copperwright");
  const server = spawn(command, ["open", ...words, "--port", "0", "--no-browser"], { cwd: ROOT });
  return new Promise((resolve, reject) => {
    let said = "";
    const listen = (bytes: Buffer): void => {
      said += bytes;
      const found = /(http:\/\/\S+?)\/?#token=(\S+)/.exec(said);
      if (found) resolve({ process: server, base: new URL(found[1]!), token: found[2]! });
    };
    server.stdout.on("data", listen);
    server.stderr.on("data", listen);
    server.once("exit", () => reject(new Error(`the bench did not start: ${said}`)));
  });
}

interface Answer {
  readonly status: number;
  readonly cookie: string;
  // biome-ignore lint/suspicious/noExplicitAny: looked into field by field
  readonly body: any;
  readonly tookMs: number;
}

function asker(base: URL, agent: Agent, cookie: string) {
  return (path: string, body?: unknown): Promise<Answer> =>
    new Promise((resolve, reject) => {
      const from = performance.now();
      const text = body === undefined ? undefined : JSON.stringify(body);
      const headers = {
        ...(cookie === "" ? {} : { cookie }),
        ...(text === undefined
          ? {}
          : {
              "content-type": "application/json",
              "x-copperwright": "1",
              origin: base.origin,
              "content-length": Buffer.byteLength(text),
            }),
      };
      const method = text === undefined ? "GET" : "POST";
      const { hostname, port } = base;
      const sent = request({ hostname, port, path: `/api${path}`, method, headers, agent });
      sent.once("error", reject);
      sent.once("response", (response) => {
        let whole = "";
        response.setEncoding("utf8");
        response.on("data", (piece) => {
          whole += piece;
        });
        response.once("end", () => {
          const [set = ""] = response.headers["set-cookie"] ?? [];
          const tookMs = performance.now() - from;
          const status = response.statusCode ?? 0;
          if (status !== 200) return reject(new Error(`${path}: ${status} ${whole}`));
          resolve({ status, cookie: set.split(";")[0]!, body: JSON.parse(whole), tookMs });
        });
      });
      sent.end(text);
    });
}

type Ask = ReturnType<typeof asker>;

const rest = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** One device: asks what was saved since it last asked, in its own rhythm. */
async function poll(ask: Ask, pauseMs: number, untilMs: number): Promise<readonly number[]> {
  const times: number[] = [];
  let cursor = "0";
  await rest(Math.random() * pauseMs);
  while (performance.now() < untilMs) {
    const { body, tookMs } = await ask(`/changes?since=${cursor}`);
    cursor = String(body.cursor);
    times.push(tookMs);
    if (pauseMs > 0) await rest(pauseMs);
  }
  return times;
}

/** Somebody who works meanwhile: one save a second, so that the polls have something to tell. */
async function work(ask: Ask, key: string, wire: string, untilMs: number) {
  const times: number[] = [];
  for (let revision = 1; performance.now() < untilMs; revision++) {
    const { tookMs } = await ask(`/jobs/${key}/changes`, {
      changeId: `bench-${key.slice(0, 8)}-${revision}`,
      baseRevision: revision,
      jobVersion: 1,
      operations: [{ op: "set", list: "wires", id: wire, path: ["note"], value: `n${revision}` }],
      what: "note",
    });
    times.push(tookMs);
    await rest(1000);
  }
  return times;
}

function quantile(values: readonly number[], share: number): number {
  const rising = [...values].sort((a, b) => a - b);
  return rising[Math.min(rising.length - 1, Math.floor(rising.length * share))]!;
}

/** Memory of a process, MB: now, and the most it ever had. Source: proc(5), VmRSS and VmHWM. */
function memoryMB(pid: number): { readonly now: number; readonly most: number } {
  const status = readFileSync(`/proc/${pid}/status`, "utf8");
  const field = (name: string) =>
    Number(new RegExp(`${name}:\\s+(\\d+) kB`).exec(status)?.[1]) / 1e3;
  return { now: field("VmRSS"), most: field("VmHWM") };
}

/** Processor time a process has had, ms: what it takes, whatever else the machine is doing. Source: proc(5), utime and stime. */
function processorMs(pid: number): number {
  const words = readFileSync(`/proc/${pid}/stat`, "utf8").split(") ")[1]!.split(" ");
  return (Number(words[11]) + Number(words[12])) * TICK_MS;
}

async function measure(label: string, words: readonly string[]) {
  const bench = await start(words);
  const agents = Array.from({ length: CLIENTS + 1 }, () => new Agent({ keepAlive: true }));
  try {
    const fresh = memoryMB(bench.process.pid!).now;
    const [own, ...others] = agents;
    const { cookie } = await asker(bench.base, own!, "")("/session", { token: bench.token });
    const ask = asker(bench.base, own!, cookie);
    const { key } = (await ask("/jobs", { from: "demo", name: DEMO })).body;
    const wire = JSON.parse((await ask(`/jobs/${key}`)).body.text).wires[0].id;
    const asks = others.map((agent) => asker(bench.base, agent, cookie));

    const beforeMs = processorMs(bench.process.pid!);
    const untilMs = performance.now() + LASTING_MS;
    const [saves, ...polls] = await Promise.all([
      work(ask, key, wire, untilMs),
      ...asks.map((one) => poll(one, POLL_MS, untilMs)),
    ]);
    const busyMs = processorMs(bench.process.pid!) - beforeMs;
    const often = performance.now() + WITHOUT_PAUSE_MS;
    const crowded = (await Promise.all(asks.map((one) => poll(one, 0, often)))).flat();
    const crowdedMs = processorMs(bench.process.pid!) - beforeMs - busyMs;
    const memory = memoryMB(bench.process.pid!);
    const times = polls.flat();
    const ms = (name: string, value: number, target?: number) => ({
      name: `${label}: ${name}`,
      value,
      unit: "ms",
      ...(target === undefined ? {} : { target }),
    });
    const MB = (name: string, value: number, target?: number) => ({
      ...ms(name, value, target),
      unit: "MB",
    });
    return [
      ms(`poll, ${CLIENTS} devices every ${POLL_MS / 1000} s, median`, quantile(times, 0.5), 50),
      ms("the same, 95th percentile", quantile(times, 0.95)),
      ms("save meanwhile, median", quantile(saves!, 0.5)),
      {
        ...ms("processor taken by all of them and the saves", (100 * busyMs) / LASTING_MS),
        unit: "% of one",
      },
      ms(`poll, ${CLIENTS} devices without a pause, median`, quantile(crowded, 0.5)),
      ms("the same, 95th percentile", quantile(crowded, 0.95)),
      {
        name: `${label}: polls a second without a pause`,
        value: crowded.length / (WITHOUT_PAUSE_MS / 1000),
        unit: "",
      },
      ms("processor time a poll", crowdedMs / crowded.length),
      MB("server just started", fresh, 150),
      MB("server after all that", memory.now, 150),
      MB("the most it ever had", memory.most, 150),
    ];
  } finally {
    for (const agent of agents) agent.destroy();
    bench.process.removeAllListeners("exit");
    bench.process.kill("SIGTERM");
  }
}

/** Many devices on one shop's server, and what it takes of memory; on both kinds of storage. */
export async function run() {
  const folder = mkdtempSync(join(tmpdir(), "copperwright-bench-"));
  const postgres = await startPostgres();
  try {
    const url = await postgres.freshUrl();
    return [
      ...(await measure("embedded", [join(folder, "embedded")])),
      ...(await measure("PostgreSQL", [join(folder, "door"), "--postgres", url])),
    ];
  } finally {
    postgres.stop();
    rmSync(folder, { recursive: true, force: true });
  }
}
