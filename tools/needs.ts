import { spawnSync } from "node:child_process";
import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";

/** Programs the tests run beside Node, each with the Debian package that brings it and what it is for. */
export const NEEDS = [
  {
    program: "ngspice",
    debianPackage: "ngspice",
    why: "general circuit simulator the network is compared with",
  },
  { program: "pdftotext", debianPackage: "poppler-utils", why: "reads the PDFs back" },
  { program: "pdftoppm", debianPackage: "poppler-utils", why: "draws PDF pages as pictures" },
  { program: "initdb", debianPackage: "postgresql", why: "database the storage is tested on" },
  { program: "chromium", debianPackage: "chromium", why: "browser the web app is tested in" },
] as const;

/** Debian keeps PostgreSQL's own programs off the search path, one folder a version. */
const POSTGRESQL = "/usr/lib/postgresql";

function isThere(program: string): boolean {
  const versions = existsSync(POSTGRESQL) ? readdirSync(POSTGRESQL) : [];
  if (versions.some((version) => existsSync(join(POSTGRESQL, version, "bin", program))))
    return true;
  return spawnSync("which", [program], { stdio: "ignore" }).status === 0;
}

export function missingNeeds(): readonly (typeof NEEDS)[number][] {
  return NEEDS.filter(({ program }) => !isThere(program));
}

/** Installs what is missing with Debian's package manager where that is possible; returns what is still missing. */
export function installNeeds(): readonly (typeof NEEDS)[number][] {
  const missing = missingNeeds();
  if (missing.length === 0) return [];
  const packages = [...new Set(missing.map(({ debianPackage }) => debianPackage))];
  const asRoot = typeof process.getuid === "function" && process.getuid() === 0;
  if (!isThere("apt-get") || !(asRoot || isThere("sudo"))) return missing;
  const before = asRoot ? [] : ["sudo", "-n"];
  const run = (...words: string[]) => {
    const [command, ...rest] = [...before, ...words];
    return spawnSync(command!, rest, {
      stdio: ["ignore", "inherit", "inherit"],
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    });
  };
  console.error(`Installing ${packages.join(", ")} for the tests`);
  run("apt-get", "update", "-qq");
  run("apt-get", "install", "-y", "-qq", "--no-install-recommends", ...packages);
  return missingNeeds();
}
