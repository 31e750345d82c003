import { readFileSync } from "node:fs";
import { dirname, join, normalize } from "node:path";
import { describe, expect, test } from "vitest";
import { filesBelow, ROOT } from "../sourceFiles.ts";
import { isForTests } from "./isBeside.ts";
import { PURE_ROOMS, ROOMS } from "./rooms.ts";

const IMPORT = /(?:import|export)[^;'"]*?from\s+"([^"]+)"/g;
const NODE_OR_DISK = /^(node:|fs$|path$|os$|crypto$|child_process$)/;

function importsOf(path: string): readonly string[] {
  return [...readFileSync(join(ROOT, path), "utf8").matchAll(IMPORT)].map((match) => match[1]!);
}

/** Room of a file of the engine; null for the front doors. */
function roomOf(path: string): string | null {
  const parts = path.split("/");
  return parts[0] === "engine" && parts.length > 2 ? parts[1]! : null;
}

const engineSources = filesBelow("engine", [".ts"]).filter((path) => !isForTests(path));

describe("import map", () => {
  test("rooms import only rooms before them, through their index", () => {
    const wrong: string[] = [];
    for (const path of engineSources) {
      const room = roomOf(path);
      if (room === null) continue;
      for (const target of importsOf(path)) {
        if (!target.startsWith(".")) continue;
        const to = normalize(join(dirname(path), target)).replaceAll("\\", "/");
        const toRoom = roomOf(to);
        if (toRoom === room) continue;
        if (toRoom === null) wrong.push(`${path} imports the front door ${to}`);
        else if (ROOMS.indexOf(toRoom as never) >= ROOMS.indexOf(room as never)) {
          wrong.push(`${path} imports ${toRoom}, which stands after ${room}`);
        } else if (PURE_ROOMS[room] && !PURE_ROOMS[room].includes(toRoom)) {
          wrong.push(`${path}: ${room} may not know ${toRoom}`);
        }
      }
    }
    expect(wrong).toEqual([]);
  });

  test("every folder of the engine is a room", () => {
    const rooms = new Set(engineSources.map(roomOf).filter((room) => room !== null));
    expect([...rooms].filter((room) => !ROOMS.includes(room as never))).toEqual([]);
  });

  test("the engine touches no disk, clock, network or chance", () => {
    const wrong: string[] = [];
    for (const path of engineSources) {
      const text = readFileSync(join(ROOT, path), "utf8");
      for (const target of importsOf(path)) {
        if (NODE_OR_DISK.test(target)) wrong.push(`${path} imports ${target}`);
      }
      for (const forbidden of [
        "Math.random(",
        "Date.now(",
        "new Date()",
        "performance.now(",
        "fetch(",
        "process.",
      ]) {
        if (text.includes(forbidden)) wrong.push(`${path} uses ${forbidden}`);
      }
    }
    expect(wrong).toEqual([]);
  });

  test("no face computes: they import the engine's front doors only", () => {
    const { exports } = JSON.parse(readFileSync(join(ROOT, "engine/package.json"), "utf8"));
    const doors = Object.keys(exports).map((door) => `@copperwright/engine${door.slice(1)}`);
    const wrong: string[] = [];
    for (const path of filesBelow("apps", [".ts", ".tsx"])) {
      // The build puts the engine's version into the app.
      if (path === "apps/web/vite.config.ts") continue;
      for (const target of importsOf(path)) {
        const isInside =
          target.startsWith(".") && normalize(join(dirname(path), target)).startsWith("engine/");
        const isBeside = target.startsWith("@copperwright/engine") && !doors.includes(target);
        if (isInside || isBeside) wrong.push(`${path} imports ${target}`);
      }
    }
    expect(wrong).toEqual([]);
  });
});
