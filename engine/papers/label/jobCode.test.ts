import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import jsQR from "jsqr";
import { expect, it } from "vitest";
import { documentToPdf } from "../../drawing/documentToPdf.ts";
import { framedDocument } from "../../drawing/index.ts";
import { readPaperFonts } from "../../drawing/readPaperFonts.fixture.ts";
import { fingerprint } from "../../job/index.ts";
import { checkedJob } from "../../judge/index.ts";
import { coverSheets } from "../coverSheets.ts";
import { demo } from "../demoJob.fixture.ts";
import { paperInput } from "../paperInput.ts";

/** A page of a PDF as a printer at so many dots to the inch would make it: four bytes a dot. */
function rendered(pdf: Uint8Array, dotsPerInch: number) {
  const folder = mkdtempSync(join(tmpdir(), "cover-"));
  try {
    writeFileSync(join(folder, "a.pdf"), pdf);
    const words = ["-r", `${dotsPerInch}`, "-f", "1", "-l", "1", "-singlefile", "-gray"];
    execFileSync("pdftoppm", [...words, join(folder, "a.pdf"), join(folder, "a")]);
    const bytes = readFileSync(join(folder, "a.pgm"));
    const head = /^P5\s(\d+)\s(\d+)\s(\d+)\s/.exec(bytes.toString("latin1", 0, 40))!;
    const [width, height] = [Number(head[1]), Number(head[2])];
    const grey = bytes.subarray(head[0].length);
    const dots = new Uint8ClampedArray(4 * width * height);
    for (let i = 0; i < width * height; i++) dots.set([grey[i]!, grey[i]!, grey[i]!, 255], 4 * i);
    return { dots, width, height };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

it.each([150, 200, 300])(
  "is read back from the printed cover at %i dots to the inch",
  async (dpi) => {
    const job = demo("minazuru-four");
    const { design, result } = checkedJob(job);
    const print = fingerprint(job);
    const input = paperInput(design, result, { fingerprint: print, paper: "a4" });
    const document = framedDocument(input.info, "Cover", coverSheets(input, []));
    const { dots, width, height } = rendered(await documentToPdf(document, readPaperFonts()), dpi);
    const read = jsQR(dots, width, height);
    // Which job, which revision, which text of it: nothing about its owner.
    expect(read?.data).toBe(`${job.id} rev ${job.revision} ${print}`);
  },
);
