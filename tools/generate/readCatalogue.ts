import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { ROOT } from "../sourceFiles.ts";

const FOLDER = "engine/messages/catalogue";
const SEVERITIES = ["stop", "not-proven", "mend", "advise"];

export interface CatalogueEntry {
  readonly code: string;
  /** Heading of the file it stands in. */
  readonly subject: string;
  readonly severities: readonly string[];
  readonly lines: readonly { readonly text: string; readonly optional: boolean }[];
  /** Kind of remedy → its words. */
  readonly remedies: Readonly<Record<string, string>>;
  readonly explanation: readonly string[];
}

/** Every entry of the catalogue in prose, by code. Refuses an entry that is not complete. */
export function readCatalogue(): readonly CatalogueEntry[] {
  const files = readdirSync(join(ROOT, FOLDER)).filter(
    (name) => name.endsWith(".md") && name !== "README.md",
  );
  const entries = files
    .sort()
    .flatMap((name) => entriesOf(name, readFileSync(join(ROOT, FOLDER, name), "utf8")));
  const codes = entries.map(({ code }) => code);
  const twice = codes.find((code, i) => codes.indexOf(code) !== i);
  if (twice !== undefined) throw new Error(`catalogue: ${twice} stands twice`);
  return entries.sort((a, b) => (a.code < b.code ? -1 : 1));
}

/** Entries of one Markdown file: `# subject`, then `## code` sections. */
export function entriesOf(file: string, text: string): readonly CatalogueEntry[] {
  const [head, ...sections] = text.split(/^## /m);
  const subject = /^# (.+)$/m.exec(head ?? "")?.[1];
  if (subject === undefined) throw new Error(`${file}: no heading`);
  return sections.map((section) => entryOf(file, subject, section));
}

function entryOf(file: string, subject: string, section: string): CatalogueEntry {
  const [first = "", ...rest] = section.split("\n");
  const code = first.trim();
  const wrong = (what: string): Error => new Error(`${file}, ${code}: ${what}`);
  if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(code)) throw wrong("a code is small letters and hyphens");
  const severities = (rest.find((line) => line.startsWith("severity:")) ?? "")
    .slice("severity:".length)
    .split(",")
    .map((word) => word.trim());
  if (!severities.every((word) => SEVERITIES.includes(word))) throw wrong("severity");
  const lines = rest
    .filter((line) => line.startsWith(">"))
    .map((line) => {
      const text = line.slice(1).trim();
      const optional = text.startsWith("?");
      return { text: optional ? text.slice(1).trim() : text, optional };
    });
  if (!lines.some((line) => !line.optional)) throw wrong("no sentence");
  const remedies = Object.fromEntries(
    rest.flatMap((line) => {
      const match = /^- ([a-z-]+): (.+)$/.exec(line);
      return match === null ? [] : [[match[1]!, match[2]!]];
    }),
  );
  const prose = rest.filter((line) => !/^(>|severity:|- [a-z-]+: )/.test(line)).join("\n");
  const explanation = prose
    .split(/\n\s*\n/)
    .map((paragraph) => paragraph.replace(/\s+/g, " ").trim())
    .filter((paragraph) => paragraph !== "");
  if (explanation.length === 0) throw wrong("no explanation");
  return { code, subject, severities, lines, remedies, explanation };
}
