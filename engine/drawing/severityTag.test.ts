import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, it } from "vitest";
import { documentToPdf } from "./documentToPdf.ts";
import { palettes } from "./palette.ts";
import { readPaperFonts } from "./readPaperFonts.fixture.ts";
import { type PolylineMark, point } from "./scene.ts";
import { SEVERITY_TAG_HEIGHT_MM, severityTag, severityTagWidthMm } from "./severityTag.ts";

const severities = ["stop", "mend", "advise"] as const;

it("cuts more corners the more serious it is", () => {
  const corners = severities.map((severity) => {
    const group = severityTag(severity, point(0, 0))[0]!;
    const outline = (group.kind === "group" ? group.marks[0] : group) as PolylineMark;
    const bare = outline.points.filter(
      ({ xMm, yMm }) =>
        [0, severityTagWidthMm(severity)].some((edge) => Math.abs(xMm - edge) < 1e-9) &&
        [0, SEVERITY_TAG_HEIGHT_MM].some((edge) => Math.abs(yMm - edge) < 1e-9),
    );
    return 4 - new Set(bare.map(({ xMm, yMm }) => `${xMm} ${yMm}`)).size;
  });
  expect(corners).toEqual([4, 2, 0]);
});

it("has more ink the more serious it is, in black alone", async () => {
  const fonts = readPaperFonts();
  const folder = mkdtempSync(join(tmpdir(), "tag-"));
  const shares: number[] = [];
  for (const severity of severities) {
    const widthMm = severityTagWidthMm(severity);
    const page = {
      widthMm,
      heightMm: SEVERITY_TAG_HEIGHT_MM,
      title: "",
      bookmark: [],
      marks: severityTag(severity, point(0, 0)),
    };
    const document = { title: "", subject: "", date: "2026-01-01", pages: [page] };
    const path = join(folder, severity);
    writeFileSync(
      `${path}.pdf`,
      await documentToPdf(document, fonts, { palette: palettes.printBlack }),
    );
    execFileSync("pdftoppm", ["-r", "300", "-gray", "-singlefile", `${path}.pdf`, path]);
    const image = readFileSync(`${path}.pgm`);
    const header = /^P5\s+\d+\s+\d+\s+255\s/.exec(image.subarray(0, 40).toString("latin1"))!;
    const dots = image.subarray(header[0].length);
    shares.push(dots.reduce((sum, grey) => sum + (255 - grey), 0) / dots.length / 255);
  }
  expect(shares[0]! - shares[1]!).toBeGreaterThan(0.1);
  expect(shares[1]! - shares[2]!).toBeGreaterThan(0.1);
});
