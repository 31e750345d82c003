import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type PaletteName, palettes } from "@copperwright/engine/scenes";
import { expect, test } from "vitest";

const css = readFileSync(join(import.meta.dirname, "../look/drawing.css"), "utf8");

/** Colours under one selector. */
const under = (selector: string): Readonly<Record<string, string>> => {
  const block = css.slice(css.indexOf(`${selector} {`)).split("}")[0] ?? "";
  return Object.fromEntries(
    [...block.matchAll(/--draw-(\w+): (#\w+);/g)].map(([, token, value]) => [
      token,
      value!.toUpperCase(),
    ]),
  );
};

test.each<readonly [string, PaletteName]>([
  [":root", "paper"],
  [':root[data-palette="night"]', "night"],
  [':root[data-palette="sun"]', "print"],
  [":root[data-palette]", "print"],
])("drawings under %s have the colours of the engine's palette %s", (selector, name) => {
  expect(under(selector)).toEqual(palettes[name].tokens);
});
