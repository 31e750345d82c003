import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { readPaperFonts } from "../../engine/drawing/readPaperFonts.fixture.ts";
import type { Job } from "../../engine/job/index.ts";
import { checkedJob } from "../../engine/judge/index.ts";
import { packFiles, packSheets, packSheetsToPdf } from "../../engine/paper.ts";
import { checkedDemo, DEMOS, demoJob, papersOf } from "./packed.fixture.ts";

const fonts = readPaperFonts();
const text = (bytes: Uint8Array | undefined): string => new TextDecoder().decode(bytes);

const packed = (checked: Parameters<typeof packFiles>[0], paper: "a4" | "a3" | "letter" = "a4") =>
  packFiles(checked, { fingerprint: "0".repeat(64), paper, fonts });

/** What a PDF reader finds on the pages: set apart by poppler, not by us. */
function readBack(pdf: Uint8Array | undefined): string {
  const folder = mkdtempSync(join(tmpdir(), "pack-"));
  try {
    writeFileSync(join(folder, "paper.pdf"), pdf!);
    return execFileSync("pdftotext", ["-layout", join(folder, "paper.pdf"), "-"], {
      encoding: "utf8",
      maxBuffer: 64e6,
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const rowsOf = (bytes: Uint8Array | undefined): readonly Readonly<Record<string, string>>[] =>
  parse(text(bytes), { columns: true });

const counted = (words: readonly string[]): ReadonlyMap<string, number> =>
  words.reduce((map, word) => map.set(word, (map.get(word) ?? 0) + 1), new Map<string, number>());

describe("a pack", () => {
  it("holds the same bytes when it is made again", async () => {
    const [first, second] = [
      await packed(checkedJob(demoJob("aldreth-single"))),
      await packed(checkedJob(demoJob("aldreth-single"))),
    ];
    expect([...second.keys()]).toEqual([...first.keys()]);
    for (const [name, bytes] of first)
      expect(Buffer.compare(bytes, second.get(name)!), name).toBe(0);
  });

  it("gives one PDF alone the bytes it has in the pack, in colour and in black", async () => {
    const checked = checkedJob(demoJob("accessory-five-wires"));
    for (const ink of ["colour", "black"] as const) {
      const asked = { fingerprint: "0".repeat(64), paper: "a4", ink } as const;
      const files = await packFiles(checked, { ...asked, fonts });
      const sheets = packSheets(checked, asked);
      expect(sheets.map(({ name }) => `${name}.pdf`)).toEqual(
        [...files.keys()].filter((name) => name.endsWith(".pdf")),
      );
      for (const one of sheets) {
        const alone = await packSheetsToPdf(one, fonts);
        expect(Buffer.compare(alone, files.get(`${one.name}.pdf`)!), one.name).toBe(0);
      }
    }
  });

  it("says which revision it is made of and what is not saved, on every title block and on the cover", async () => {
    const checked = checkedJob(demoJob("accessory-five-wires"));
    const made = async (unsavedCount: number) => {
      const issue = { revision: 7, date: "2026-03-04", unsavedCount };
      const asked = { fingerprint: "0".repeat(64), paper: "a4", issue, fonts } as const;
      const files = await packFiles(checked, asked);
      const { job } = JSON.parse(text(files.get("pack.json")));
      return {
        job,
        cover: readBack(files.get("00-cover.pdf")),
        list: readBack(files.get("04-wire-list.pdf")),
      };
    };
    const saved = await made(0);
    expect(saved.job).toMatchObject({ revision: 7, date: "2026-03-04" });
    expect(saved.job).not.toHaveProperty("unsavedCount");
    expect(saved.cover).toMatch(/revision 7, 2026-03-04/);
    expect(saved.list).toMatch(/rev 7\b(?!\+)/);
    expect(saved.list).toContain("4 Mar 2026");
    const ahead = await made(2);
    expect(ahead.job).toMatchObject({ revision: 7, unsavedCount: 2 });
    expect(ahead.cover.replace(/\s+/g, " ")).toMatch(/revision 7 and 2 changes .*not yet saved/);
    expect(ahead.list).toContain("rev 7+2");
  });

  it("lists every file with its sum and its sheets", async () => {
    const files = await packed(checkedDemo("aldreth-single"), "letter");
    const list = JSON.parse(text(files.get("pack.json")));
    expect(list.files.map(({ name }: { name: string }) => name).sort()).toEqual(
      [...files.keys()].filter((name) => name !== "pack.json").sort(),
    );
    for (const { name, sha256, pages, kind } of list.files) {
      expect(createHash("sha256").update(files.get(name)!).digest("hex"), name).toBe(sha256);
      if (kind === "pdf")
        expect(readBack(files.get(name)).split("\f").length - 1, name).toBe(pages);
    }
  });

  it("shows every wire once in the wire list and the new ones once in the cut list, with the check's lengths", async () => {
    const checked = checkedDemo("brenzach-twin");
    const { job } = checked.design;
    const files = await packed(checked);
    const numberOf = (wire: Job["wires"][number]): string => wire.number ?? wire.id;
    const cut = new Map(checked.result.wires.map((row) => [row.wire, row.cutMm?.total]));
    const listed = rowsOf(files.get("04-wire-list.csv"));
    expect(listed.map(({ wire }) => wire).sort()).toEqual(job.wires.map(({ id }) => id).sort());
    const toCut = rowsOf(files.get("05-cut-list.csv"));
    const fresh = job.wires.filter(({ status }) => status === "new");
    expect(fresh.length).toBeLessThan(job.wires.length);
    expect(toCut.map(({ wire }) => wire).sort()).toEqual(fresh.map(({ id }) => id).sort());
    for (const { wire, cutMm } of toCut) expect(Number(cutMm), wire).toBe(cut.get(wire!));

    const wireWords = counted(readBack(files.get("04-wire-list.pdf")).split(/\s+/));
    for (const wire of job.wires) expect(wireWords.get(numberOf(wire)), numberOf(wire)).toBe(1);
    const cutLines = readBack(files.get("05-cut-list.pdf")).replace(/(\d)\s(\d{3})\b/gu, "$1$2");
    for (const wire of fresh) {
      const mm = cut.get(wire.id);
      expect(cutLines, wire.id).toMatch(new RegExp(`${numberOf(wire)} +${mm} `));
    }
  });

  it("draws every wire of a circuit on its sheets", () => {
    for (const demo of DEMOS) {
      const checked = checkedDemo(demo);
      const papers = papersOf(checked, "a4");
      const { sheets, drawings } = papers.find(({ name }) => name === "03-circuit-sheets")!;
      for (const circuit of checked.design.job.circuits) {
        const isOwn = new RegExp(`^03-circuit-${circuit.id}(-\\d+)?$`);
        const own = sheets.filter((_, i) => isOwn.test(drawings![i]!));
        const drawn = JSON.stringify(own.map(({ marks }) => marks));
        const missing = checked.design.job.wires
          .filter((wire) => wire.circuit === circuit.id)
          .filter(({ id }) => !drawn.includes(`"id":"${id}"`));
        expect(
          missing.map(({ id }) => id),
          `${demo} ${circuit.id}`,
        ).toEqual([]);
      }
    }
  });
});

/** A job somebody named as badly as the document allows. */
function hostileJob(): Job {
  const job = demoJob("accessory-five-wires");
  const long = "Ω Ελληνικά Кириллица <script>alert(1)</script> ".repeat(4).slice(0, 200);
  return {
    ...job,
    name: "=1+1",
    machine: { ...job.machine, maker: '=HYPERLINK("x")', model: long },
    parts: job.parts.map((part) => ({ ...part, name: part.kind === "fuse" ? "=1+1" : long })),
    circuits: job.circuits.map((circuit) => ({ ...circuit, name: `<b>${long}`.slice(0, 200) })),
    wires: job.wires.map((wire, i) => ({
      ...wire,
      number: ["=1+1", "@SUM", "-5", "+W", "WWWWWWWWWWWW"][i]!,
    })),
  };
}

describe("names that could do harm", () => {
  it("pack, and no cell is taken for a formula", async () => {
    const files = await packed(checkedJob(hostileJob()));
    for (const [name, bytes] of files) {
      if (!name.endsWith(".csv")) continue;
      const cells: string[][] = parse(text(bytes));
      for (const cell of cells.flat())
        if (!/^-?\d+(\.\d+)?(e-?\d+)?$/.test(cell)) expect(cell, name).not.toMatch(/^\s*[=+\-@]/);
    }
    for (const [name, bytes] of files)
      if (name.endsWith(".svg")) expect(text(bytes), name).not.toContain("<script");
    const words = readBack(files.get("04-wire-list.pdf"));
    for (const number of ["=1+1", "@SUM", "-5", "+W"]) expect(words).toContain(number);
    expect(readBack(files.get("00-cover.pdf"))).toContain("Кириллица");
  });
});

describe("a job with lengths nobody measured", () => {
  it("says that its cut list is not final, and leaves the length empty", async () => {
    const job = demoJob("accessory-five-wires");
    const unmeasured = {
      ...job,
      wires: job.wires.map(({ lengthMm, ...wire }) =>
        wire.id === "W2" ? wire : { ...wire, ...(lengthMm && { lengthMm }) },
      ),
    };
    const files = await packed(checkedJob(unmeasured));
    expect(readBack(files.get("05-cut-list.pdf"))).toContain("NOT FINAL");
    expect(readBack(files.get("09-shopping-list.pdf"))).toContain("NOT FINAL");
    const row = rowsOf(files.get("05-cut-list.csv")).find(({ wire }) => wire === "W2")!;
    expect(row.cutMm).toBe("");
    expect(row.why).not.toBe("");
    const whole = await packed(checkedJob(job));
    expect(readBack(whole.get("05-cut-list.pdf"))).not.toContain("NOT FINAL");
  });
});
