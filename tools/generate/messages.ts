import { readCatalogue } from "./readCatalogue.ts";

/** The catalogue of findings as a module, from its prose. */
export function generateMessages(): ReadonlyMap<string, string> {
  const entries = readCatalogue().map(
    ({ code, severities, lines, remedies, explanation }) =>
      `  ${JSON.stringify(code)}: ${JSON.stringify({ severities, lines, remedies, explanation })},`,
  );
  const text = [
    "// Made by tools/generate/messages.ts from engine/messages/catalogue/*.md. Change those.",
    'import type { CatalogueEntry } from "./messageOf.ts";',
    "",
    "export const catalogue: Readonly<Record<string, CatalogueEntry>> = {",
    ...entries,
    "};",
    "",
  ].join("\n");
  return new Map([["engine/messages/catalogue.generated.ts", text]]);
}
