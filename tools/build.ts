import { existsSync, mkdirSync, readdirSync, rmSync } from "node:fs";
import { basename, join } from "node:path";
import { build, type Plugin } from "esbuild";
import { packedBeside } from "./packedBeside.ts";
import { ROOT } from "./sourceFiles.ts";

const COMMAND_FOLDER = join(ROOT, "apps/cli/dist");
const WEB_FOLDER = join(ROOT, "apps/web");

/** The command loads the server from a file of its own, and only when the bench is opened. */
const serverBeside: Plugin = {
  name: "server-beside",
  setup: ({ onResolve }) => {
    onResolve({ filter: /^@copperwright\/server$/ }, () => ({
      path: "./server.mjs",
      external: true,
    }));
  },
};

/**
 * Bundles the command so that it starts quickly. What the command, the proof's second thread and the server all need stands in files they share: opened by the
 * command, the server would otherwise hold the engine twice.
 */
export async function buildCommand(folder: string = COMMAND_FOLDER): Promise<void> {
  mkdirSync(folder, { recursive: true });
  const { metafile } = await build({
    entryPoints: {
      main: join(ROOT, "apps/cli/main.ts"),
      proveWorker: join(ROOT, "apps/cli/proveWorker.ts"),
      proveBesideWorker: join(ROOT, "apps/cli/proveBesideWorker.ts"),
      server: join(ROOT, "apps/server/index.ts"),
    },
    outdir: folder,
    outExtension: { ".js": ".mjs" },
    chunkNames: "shared-[hash]",
    bundle: true,
    splitting: true,
    metafile: true,
    platform: "node",
    target: "node20",
    format: "esm",
    // Prefer a library's module build: the other kind may look for its own files at run time, which a bundle does not have.
    mainFields: ["module", "main"],
    // The PDF library is loaded by `pack` alone; what has a part of its own for each kind of machine stays outside too.
    external: ["pdfkit", "fontkit", "better-sqlite3", "sharp", "pg-native"],
    logLevel: "warning",
    banner: {
      js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);",
    },
    plugins: [serverBeside],
  });
  const made = new Set(Object.keys(metafile.outputs).map((path) => basename(path)));
  for (const name of readdirSync(folder)) {
    if (/^shared-.*\.mjs$/.test(name) && !made.has(name)) rmSync(join(folder, name));
  }
}

/** Builds the web app the server serves. */
export async function buildWeb(): Promise<void> {
  const configFile = join(WEB_FOLDER, "vite.config.ts");
  if (!existsSync(configFile)) return;
  const vite = await import("vite");
  await vite.build({ configFile, root: WEB_FOLDER, logLevel: "warn" });
  await packedBeside(join(WEB_FOLDER, "dist/assets"));
}

/** `--command`: without the web app, for the command that makes itself anew when a source has changed. */
if (process.argv[1]?.endsWith("build.ts")) {
  await buildCommand();
  if (!process.argv.includes("--command")) await buildWeb();
}
