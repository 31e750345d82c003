import { describe, expect, test } from "vitest";
import { runWith } from "./worldForTests.fixture.ts";

const job = "demos/accessory-five-wires.json";
const kept = (text: string | undefined) => JSON.parse(text!).printers;
const pack = (words: readonly string[], settings: Readonly<Record<string, string>> = {}) =>
  runWith(["pack", job, "--out", "out", "--json", ...words], {}, {}, settings);

/** Width of the first sheet of the board's whole drawing, as its SVG says, mm. */
function boardWidthMm(files: ReadonlyMap<string, Uint8Array>): number {
  const [, bytes] = [...files].find(([name]) => /^14-board-.*-whole\.svg$/.test(name))!;
  return Number(/width="([\d.]+)mm"/.exec(new TextDecoder().decode(bytes))![1]);
}

describe("a printer's readings of the 100 mm bar", () => {
  test("are kept under its name and used again; on a corrected sheet they add to what was kept", async () => {
    const plain = await pack([]);
    const first = await pack([
      "--printer",
      "garage",
      "--bar-across",
      "98",
      "--bar-down",
      "99,5 mm",
    ]);
    expect(kept(first.settings.get("printers.json"))).toEqual({
      garage: { readAcrossMm: 98, readDownMm: 99.5 },
    });
    const files = (ran: typeof plain) => ran.folders.get("out")!;
    const drawnMm = (ran: typeof plain) => boardWidthMm(files(ran)) - 20;
    // The margins stay; everything between them grows by what the printer shrinks.
    expect(drawnMm(first) * 0.98).toBeCloseTo(drawnMm(plain), 2);
    const again = await pack(["--printer", "garage"], Object.fromEntries(first.settings));
    expect(drawnMm(again)).toBe(drawnMm(first));
    expect(JSON.parse(again.out).board).toMatchObject({ printer: "garage", readAcrossMm: 98 });
    const finer = await pack(
      ["--printer", "garage", "--bar-across", "100.5", "--bar-down", "100"],
      Object.fromEntries(first.settings),
    );
    const { readAcrossMm, readDownMm } = kept(finer.settings.get("printers.json")).garage;
    expect(readAcrossMm).toBeCloseTo(98.49, 9);
    expect(readDownMm).toBeCloseTo(99.5, 9);
    const anew = await pack(
      ["--printer", "garage", "--anew", "--bar-across", "100.5", "--bar-down", "100"],
      Object.fromEntries(first.settings),
    );
    expect(kept(anew.settings.get("printers.json")).garage.readAcrossMm).toBeCloseTo(100.5, 9);
  });

  test.each([
    ["no reading of this bar", ["--printer", "a", "--bar-across", "72", "--bar-down", "100"]],
    ["one way only", ["--printer", "a", "--bar-across", "99"]],
    ["no printer", ["--bar-across", "99", "--bar-down", "99"]],
    ["a name nobody gave", ["--printer", "a"]],
    ["no number", ["--printer", "a", "--bar-across", "wide", "--bar-down", "100"]],
    ["margin wider than paper", ["--margin", "300"]],
    ["sheets that do not lie over each other", ["--overlap", "0"]],
    ["no ink", ["--ink", "green"]],
    ["a board narrower than its notes", ["--board-width", "100"]],
  ])("%s: refused, nothing written, nothing kept", async (_, words) => {
    const ran = await pack(words);
    expect(ran.code).toBe(2);
    expect(JSON.parse(ran.out).refusals.length).toBeGreaterThan(0);
    expect(ran.folders.size).toBe(0);
    expect(ran.settings.size).toBe(0);
  });

  test("a file of settings that is not ours is refused and left as it is", async () => {
    const before = { "printers.json": "[1, 2]" };
    const ran = await pack(["--printer", "a", "--bar-across", "99", "--bar-down", "99"], before);
    expect(ran.code).toBe(2);
    expect(ran.settings.get("printers.json")).toBe("[1, 2]");
  });
});

describe("board and ink", () => {
  test("a wider overlap takes no fewer sheets; black ink leaves no colour in any drawing", async () => {
    const plain = await pack([]);
    const wide = await pack(["--overlap", "40", "--margin", "15", "--ink", "black"]);
    const tilesOf = (ran: typeof plain): number =>
      JSON.parse(ran.out).files.find(
        ({ name }: { name: string }) =>
          name.startsWith("14-board") && name.endsWith(".pdf") && !name.includes("whole"),
      ).pages;
    expect(tilesOf(wide)).toBeGreaterThanOrEqual(tilesOf(plain));
    const colours = new Set<string>();
    for (const [name, bytes] of wide.folders.get("out")!) {
      if (!name.endsWith(".svg")) continue;
      for (const [colour] of new TextDecoder().decode(bytes).matchAll(/#[0-9A-Fa-f]{6}/g)) {
        colours.add(colour.toUpperCase());
      }
    }
    expect([...colours].sort()).toEqual(["#000000", "#FFFFFF"]);
  });
});
