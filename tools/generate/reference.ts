import { type CatalogueEntry, readCatalogue } from "./readCatalogue.ts";

const INTRODUCTION = `# Findings

Every finding \`check\` can answer, from the catalogue in \`engine/messages/catalogue\`. Do not edit this page: \`npm run generate\` makes it.

| severity | meaning |
|---|---|
| stop | the battery must not be connected; cannot be accepted |
| not-proven | only a remembered figure could decide a question of safety |
| mend | put right before the machine is used; may be accepted with a reason |
| advise | worth knowing; does not keep a machine from being fit |

Words between percent signs are filled in from the finding's \`numbers\`; lines in brackets stand only where they apply.
`;

/** The manual page of findings. */
export function generateReference(): ReadonlyMap<string, string> {
  const entries = readCatalogue();
  const subjects = [...new Set(entries.map(({ subject }) => subject))].sort();
  const sections = subjects.map((subject) => {
    const own = entries.filter((entry) => entry.subject === subject);
    return [`## ${subject}`, ...own.map(sectionOf)].join("\n\n");
  });
  const text = `${[INTRODUCTION, ...sections].join("\n")}\n`;
  return new Map([["docs/reference/findings.md", text]]);
}

function sectionOf({ code, severities, lines, remedies, explanation }: CatalogueEntry): string {
  const words = lines
    .map(({ text, optional }) => `> ${optional ? `[${ofMany(text)}]` : ofMany(text)}`)
    .join("\n");
  const cures = Object.values(remedies).map((text) => `- ${ofMany(text)}`);
  const remedy = cures.length > 0 ? [`Remedies tried:\n\n${cures.join("\n")}`] : [];
  return [`### ${code}`, `*${severities.join(", ")}*`, words, ...explanation, ...remedy].join(
    "\n\n",
  );
}

/** Words that differ between one thing and many, as they are for many. */
const ofMany = (text: string): string => text.replace(/\[[^|\]]*\|([^\]]*)\]/g, "$1");
