import { expect, it } from "vitest";
import { palettes } from "./palette.ts";
import { sampleDocument } from "./sampleDocument.fixture.ts";
import { point } from "./scene.ts";
import { sceneToSvg } from "./sceneToSvg.ts";
import { TEXT_STYLE, textMark } from "./textBlock.ts";

const page = { widthMm: 210, heightMm: 297, title: "A & <B>", bookmark: [] };

it("is true to scale, escaped, and carries the ids of what it shows", () => {
  const svg = sceneToSvg({
    ...page,
    marks: [
      {
        kind: "group",
        id: "W<12>",
        name: 'say "12"',
        marks: [textMark("5 < 6 & 7", 10, 20, TEXT_STYLE.text)],
      },
    ],
  });
  expect(svg).toContain('width="210mm" height="297mm" viewBox="0 0 210 297"');
  expect(svg).toContain("<title>A &amp; &lt;B&gt;</title>");
  expect(svg).toContain('data-id="W&lt;12&gt;"');
  expect(svg).toContain("5 &lt; 6 &amp; 7");
  expect(svg).not.toMatch(/NaN|undefined|Infinity/);
});

/** What is wrong with XML text without comments, prologue or entities of its own; null where nothing is. */
function xmlFault(xml: string): string | null {
  const open: string[] = [];
  const tags = /<(\/?)([a-zA-Z]+)((?:\s[a-zA-Z-]+="[^"<]*")*)\s*(\/?)>/g;
  for (const [whole, isEnd, name, , isEmpty] of xml.matchAll(tags)) {
    if (isEnd && open.pop() !== name) return `unexpected ${whole}`;
    if (!isEnd && !isEmpty) open.push(name!);
  }
  const rest = xml.replace(tags, "").replace(/&(amp|lt|gt|quot);/g, "");
  if (/[<&]/.test(rest)) return `raw ${/[<&].{0,20}/.exec(rest)![0]}`;
  return open.length > 0 ? `${open.at(-1)} not closed` : null;
}

it("is well-formed for every page of the sample, in every palette", () => {
  expect(xmlFault("<a><b/>1 & 2</a>")).toBe("raw & 2");
  expect(xmlFault('<a x="1"><b></a>')).toBe("unexpected </a>");
  for (const palette of Object.values(palettes)) {
    for (const each of sampleDocument().pages) {
      const svg = sceneToSvg(each, { palette });
      expect(xmlFault(svg)).toBe(null);
      expect(svg).not.toMatch(/NaN|undefined|Infinity/);
    }
  }
});

it("draws the same scene in the palette asked for", () => {
  const marks = [
    {
      kind: "wire",
      points: [point(0, 0), point(10, 0)],
      areaMm2: 1,
      colours: { main: "yellow" },
    } as const,
  ];
  expect(sceneToSvg({ ...page, marks })).toContain("#F4CE18");
  const black = sceneToSvg({ ...page, marks }, { palette: palettes.printBlack });
  expect([...new Set(black.match(/#[0-9A-F]{6}/g))].sort()).toEqual(["#000000", "#FFFFFF"]);
});
