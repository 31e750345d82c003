import { existsSync, mkdirSync } from "node:fs";
import { join } from "node:path";
import { type BuildOptions, build, type Plugin } from "esbuild";
import { packedBeside } from "./packedBeside.ts";
import { ROOT } from "./sourceFiles.ts";

const COMMAND_FOLDER = join(ROOT, "apps/cli/dist");
const WEB_FOLDER = join(ROOT, "apps/web");

/** The command loads the server from a bundle of its own, and only when the bench is opened. */
const serverBeside: Plugin = {
  name: "server-beside",
  setup: ({ onResolve }) => {
    onResolve({ filter: /^@copperwright\/server$/ }, () => ({
      path: "./server.mjs",
      external: true,
    }));
  },
};

function bundle(folder: string): BuildOptions {
  return {
    outdir: folder,
    outExtension: { ".js": ".mjs" },
    bundle: true,
    splitting: false,
    platform: "node",
    target: "node20",
    format: "esm",
    // Prefer a library's module build: the other kind may look for its own files at run time, which a bundle does not have.
    mainFields: ["module", "main"],
    logLevel: "warning",
    banner: {
      js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);",
    },
  };
}

/** Bundles the command into one file so that it starts quickly. The PDF library stays outside: only `pack` loads it. */
export async function buildCommand(folder: string = COMMAND_FOLDER): Promise<void> {
  mkdirSync(folder, { recursive: true });
  const command = build({
    ...bundle(folder),
    // The proof's second thread is a program of its own.
    entryPoints: [join(ROOT, "apps/cli/main.ts"), join(ROOT, "apps/cli/proveWorker.ts")],
    external: ["pdfkit", "fontkit"],
    plugins: [serverBeside],
  });
  const server = build({
    ...bundle(folder),
    entryPoints: { server: join(ROOT, "apps/server/index.ts") },
    // What has a part of its own for each kind of machine stays outside.
    external: ["better-sqlite3", "sharp", "pg-native", "pdfkit", "fontkit"],
  });
  await Promise.all([command, server]);
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
