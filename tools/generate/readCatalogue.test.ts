import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { ROOT } from "../sourceFiles.ts";
import { generateMessages } from "./messages.ts";
import { entriesOf, readCatalogue } from "./readCatalogue.ts";
import { generateReference } from "./reference.ts";

const entry = `# Subject

## some-code

severity: stop, mend

> It is %dropV%.
> ? Or %other%.
- cure: Do %thing%.

Why it
matters.

Second paragraph.
`;

test("an entry is read in full", () => {
  expect(entriesOf("x.md", entry)).toEqual([
    {
      code: "some-code",
      subject: "Subject",
      severities: ["stop", "mend"],
      lines: [
        { text: "It is %dropV%.", optional: false },
        { text: "Or %other%.", optional: true },
      ],
      remedies: { cure: "Do %thing%." },
      explanation: ["Why it matters.", "Second paragraph."],
    },
  ]);
});

test.each([
  ["no heading", entry.replace("# Subject\n", ""), "no heading"],
  ["a code in capitals", entry.replace("some-code", "Some-Code"), "small letters"],
  ["a severity nobody knows", entry.replace("stop, mend", "panic"), "severity"],
  ["no sentence", entry.replace("> It is %dropV%.\n", ""), "no sentence"],
  ["no explanation", entry.replace(/\nWhy it[\s\S]*/, ""), "no explanation"],
])("%s is refused", (_, text, said) => {
  expect(() => entriesOf("x.md", text)).toThrow(said);
});

test("module and manual page are what the prose makes", () => {
  for (const generated of [generateMessages(), generateReference()]) {
    for (const [path, text] of generated) expect(readFileSync(join(ROOT, path), "utf8")).toBe(text);
  }
});

test("every entry stands in the manual page", () => {
  const page = [...generateReference().values()].join("\n");
  for (const { code } of readCatalogue()) expect(page).toContain(`### ${code}\n`);
});
