import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import { ROOT } from "../../../tools/sourceFiles.ts";
import { webIsCurrent } from "../../../tools/webIsCurrent.ts";

/** The real server on a folder of its own, and a real browser. */
export interface RunningBench {
  /** Address with the key of this start. */
  readonly address: string;
  readonly origin: string;
  readonly folder: string;
  readonly browser: Browser;
  /** A device that has been let in, its own storage and all. */
  device(
    options?: DeviceOptions,
  ): Promise<{ readonly context: BrowserContext; readonly page: Page }>;
  /** Kills the server outright, as a power cut would. */
  kill(): Promise<void>;
  /** Starts it again on the same folder and port. */
  restart(): Promise<string>;
  end(): Promise<void>;
}

export interface DeviceOptions {
  readonly width?: number;
  readonly height?: number;
  readonly palette?: "paper" | "night" | "sun";
  readonly touch?: boolean;
}

const CHROMIUM = "/usr/bin/chromium";
const QUIET = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--no-first-run",
];

/** The app as its sources are now: pictures of one built before a change would be of nothing that is there. */
function buildWhereStale(): void {
  if (webIsCurrent()) return;
  const { status } = spawnSync("npx", ["tsx", "tools/build.ts"], { cwd: ROOT, stdio: "inherit" });
  if (status !== 0) throw new Error("the web app could not be built");
}

export async function startBench(): Promise<RunningBench> {
  buildWhereStale();
  const folder = mkdtempSync(join(tmpdir(), "bench-"));
  let server = await startServer(folder, 0);
  const browser = await chromium.launch({ executablePath: CHROMIUM, args: QUIET });
  const { port } = new URL(server.address);
  return {
    get address() {
      return server.address;
    },
    origin: new URL(server.address).origin,
    folder,
    browser,
    device: (options = {}) => letIn(browser, server.address, options),
    kill: () => stopped(server.process, "SIGKILL"),
    async restart() {
      server = await startServer(folder, Number(port));
      return server.address;
    },
    async end() {
      await browser.close();
      await stopped(server.process, "SIGTERM");
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function letIn(
  browser: Browser,
  address: string,
  { width = 1440, height = 900, palette = "paper", touch = false }: DeviceOptions,
): Promise<{ context: BrowserContext; page: Page }> {
  const context = await browser.newContext({ viewport: { width, height }, hasTouch: touch });
  await context.addInitScript(`localStorage.setItem("copperwright-palette", "${palette}")`);
  const page = await context.newPage();
  await page.goto(address);
  await page.getByRole("heading", { name: "Jobs", exact: true }).waitFor();
  return { context, page };
}

function startServer(
  folder: string,
  port: number,
): Promise<{ process: ChildProcess; address: string }> {
  const words = [
    "apps/cli/bin/copperwright.mjs",
    "open",
    folder,
    "--port",
    String(port),
    "--no-browser",
  ];
  const child = spawn(process.execPath, words, { cwd: ROOT, stdio: ["ignore", "pipe", "pipe"] });
  return new Promise((resolve, reject) => {
    let printed = "";
    const read = (bytes: Buffer): void => {
      printed += bytes.toString();
      const address = /http:\/\/\S+#token=\S+/.exec(printed)?.[0];
      if (address !== undefined) resolve({ process: child, address });
    };
    child.stdout.on("data", read);
    child.stderr.on("data", read);
    child.on("exit", (code) => reject(new Error(`the server ended with ${code}: ${printed}`)));
  });
}

function stopped(child: ChildProcess, signal: NodeJS.Signals): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((resolve) => {
    child.once("exit", () => resolve());
    child.kill(signal);
  });
}

/** A new job from a demo by its first words, on the bench with its verdict worked out. */
export async function openDemo(page: Page, words: string): Promise<void> {
  await page
    .getByRole("button", { name: new RegExp(`^${words}`) })
    .first()
    .click();
  await page.waitForURL(/#\/job\//);
  await settled(page);
}

/** The verdict belongs to the job as it stands. */
export async function settled(page: Page): Promise<void> {
  await page.locator(".stamp:visible[data-checking=false]").first().waitFor({ timeout: 60_000 });
}

/** Everything done so far is on the server. */
export async function saved(page: Page): Promise<void> {
  await page.waitForFunction(
    () => document.querySelector(".saved")?.getAttribute("data-mark") === "saved",
    null,
    {
      timeout: 30_000,
    },
  );
}

export async function goToStep(page: Page, step: string): Promise<void> {
  await page.evaluate((word) => {
    location.hash = location.hash.replace(/[^/]*$/, word);
  }, step);
  await page.locator(`.frame[data-step="${step}"]`).waitFor();
}
