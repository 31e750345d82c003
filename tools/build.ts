import { mkdirSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const root = join(dirname(fileURLToPath(import.meta.url)), "..");

/** Bundles the command into one file so that it starts quickly. The PDF library stays outside: only `pack` loads it. */
export async function buildCommand(): Promise<void> {
  mkdirSync(join(root, "apps/cli/dist"), { recursive: true });
  await build({
    // The proof's second thread is a program of its own.
    entryPoints: [join(root, "apps/cli/main.ts"), join(root, "apps/cli/proveWorker.ts")],
    outdir: join(root, "apps/cli/dist"),
    outExtension: { ".js": ".mjs" },
    bundle: true,
    splitting: false,
    platform: "node",
    target: "node20",
    format: "esm",
    // Prefer a library's module build: the other kind may look for its own files at run time, which a bundle does not have.
    mainFields: ["module", "main"],
    external: ["pdfkit", "fontkit"],
    logLevel: "warning",
    banner: {
      js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);",
    },
  });
}

await buildCommand();
