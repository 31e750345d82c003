import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { nodeWorld } from "../nodeWorld.ts";
import { runCommandLine } from "../runCommandLine.ts";
import type { World } from "../world.ts";

const JOB = new URL("../../../demos/accessory-five-wires.json", import.meta.url).pathname;

/** A shell whose folders are in memory; fonts and jobs come from the real disk. */
function shell(folders: Map<string, Map<string, Uint8Array>>, writes = true) {
  const said = { out: "", err: "" };
  const world: World = {
    ...nodeWorld,
    readText: (path) => {
      const cut = path.lastIndexOf("/");
      const bytes = folders.get(path.slice(0, cut))?.get(path.slice(cut + 1));
      if (bytes !== undefined) return { ok: true, text: new TextDecoder().decode(bytes) };
      return nodeWorld.readText(path);
    },
    listFolder: (path) => [...(folders.get(path)?.keys() ?? [])],
    replaceFolder: (path, files) => {
      if (!writes) return { ok: false, why: "the disk is full" };
      folders.set(path, new Map(files));
      return { ok: true };
    },
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
  };
  return { said, run: (...words: string[]) => runCommandLine(world, words) };
}

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

describe("pack", () => {
  it("writes into a new folder, says where, and writes again over its own pack", async () => {
    const folders = new Map<string, Map<string, Uint8Array>>();
    const { said, run } = shell(folders);
    expect(await run("pack", JOB, "--out", "out")).toBe(0);
    expect(said.out).toContain("to out");
    expect(said.out).toContain("FIT");
    const first = folders.get("out")!;
    expect([...first.keys()]).toContain("04-wire-list.pdf");
    expect(await run("pack", JOB, "--out", "out", "--paper", "letter")).toBe(0);
    expect(folders.get("out")).not.toBe(first);
  });

  it("refuses a folder with things in it that are not of a pack, and leaves them", async () => {
    const folders = new Map([["out", new Map([["letter.txt", bytes("mine")]])]]);
    const { said, run } = shell(folders);
    expect(await run("pack", JOB, "--out", "out")).toBe(2);
    expect(said.err).toContain("letter.txt");
    expect(folders.get("out")!.get("letter.txt")).toEqual(bytes("mine"));
    folders.get("out")!.set("pack.json", bytes('{"copperwrightPack":1,"files":[]}'));
    expect(await run("pack", JOB, "--out", "out")).toBe(2);
    expect([...folders.get("out")!.keys()]).toContain("letter.txt");
  });

  it("leaves the former pack where the new one cannot be written", async () => {
    const former = new Map([["pack.json", bytes('{"copperwrightPack":1,"files":[]}')]]);
    const folders = new Map([["out", former]]);
    const { said, run } = shell(folders, false);
    expect(await run("pack", JOB, "--out", "out")).toBe(2);
    expect(said.err).toContain("the disk is full");
    expect(folders.get("out")).toBe(former);
  });

  it("with --json prints one object, refusals included", async () => {
    const { said, run } = shell(new Map());
    expect(await run("pack", JOB, "--out", "out", "--paper", "b5", "--json")).toBe(2);
    expect(JSON.parse(said.out)).toMatchObject({
      contract: "copperwright/pack/1",
      refusals: [{ pointer: "--paper", found: "b5" }],
    });
    const well = shell(new Map());
    expect(await well.run("pack", JOB, "--out", "out", "--json")).toBe(0);
    const answer = JSON.parse(well.said.out);
    expect(answer).toMatchObject({ verdict: "fit", out: "out", refusals: [] });
    expect(answer.job.id).toBe(JSON.parse(readFileSync(JOB, "utf8")).id);
  });
});
