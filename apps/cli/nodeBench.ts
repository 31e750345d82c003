import { spawn } from "node:child_process";
import { homedir, hostname, userInfo } from "node:os";
import { join, resolve } from "node:path";
import type { BenchWorld } from "./world.ts";

/** The bench on the machine the command runs on. The server is loaded when it is opened and by no other command. */
export function nodeBench(webFolder: string): BenchWorld {
  return {
    environment: (name) => process.env[name],
    defaultFolder: () =>
      join(process.env.XDG_DATA_HOME || join(homedir(), ".local/share"), "copperwright"),
    open: async ({ folder, postgresUrl, port }) => {
      try {
        const { modestMemory, openBench } = await import("@copperwright/server");
        const bench = await openBench({
          folder: resolve(folder),
          port,
          webFolder,
          owner: { who: ownName(), device: hostname() },
          say: (line) => void process.stderr.write(`${line}\n`),
          ...(postgresUrl === undefined ? {} : { postgresUrl }),
        });
        modestMemory();
        return { ok: true, bench };
      } catch (error) {
        const why = whyNotOpened(error, port);
        if (why === null) throw error;
        return { ok: false, why };
      }
    },
    show: (address) => {
      const browser = browserWords(address);
      if (browser === null) return false;
      const [program, ...words] = browser;
      // Without a browser the address is printed all the same.
      spawn(program!, words, { detached: true, stdio: "ignore" })
        .on("error", () => {})
        .unref();
      return true;
    },
    untilStopped: () =>
      new Promise((done) => {
        for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) {
          process.once(signal, () => done());
        }
      }),
  };
}

function ownName(): string {
  try {
    return userInfo().username;
  } catch {
    return "owner";
  }
}

/** In words, where a person can mend it; null for a fault of ours. */
function whyNotOpened(error: unknown, port: number): string | null {
  const { code, name, message } = error as { code?: string; name?: string; message: string };
  if (name === "StorageTrouble") return message;
  if (code === "EADDRINUSE") {
    return `Port ${port} is in use. Perhaps the bench is open already: look for its window. Else give another with --port, such as --port ${port + 10}.`;
  }
  if (code === "EACCES" || code === "EPERM" || code === "EROFS") {
    return `The bench could not be opened, because permission was refused (${message}). Name a folder of your own, and a port of 1024 or more.`;
  }
  if (code === "ENOTDIR" || code === "EEXIST" || code === "ENOSPC") {
    return `The folder cannot be used (${message}). Name another one.`;
  }
  if (
    code === "ERR_MODULE_NOT_FOUND" ||
    code === "MODULE_NOT_FOUND" ||
    code === "ERR_DLOPEN_FAILED"
  ) {
    return `A library the bench needs is not installed for this machine (${message.split("\n")[0]}). Run npm ci in the program's folder. The other commands work without it.`;
  }
  return null;
}

/** How this system opens an address; null where there is no screen to show it on. */
function browserWords(address: string): readonly string[] | null {
  if (process.platform === "darwin") return ["open", address];
  if (process.platform === "win32") return ["rundll32", "url.dll,FileProtocolHandler", address];
  const hasScreen = Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
  return hasScreen ? ["xdg-open", address] : null;
}
