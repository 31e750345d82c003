import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";

const WCAG = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
const PLACES_SHOWN = 3;

/** Every rule of WCAG 2.0 to 2.2 AA the page breaks, with where. */
export async function axeFaults(page: Page): Promise<readonly string[]> {
  const { violations } = await new AxeBuilder({ page }).withTags(WCAG).analyze();
  return violations.map(({ id, nodes }) => {
    const places = nodes.slice(0, PLACES_SHOWN).map(({ target }) => target.join(" "));
    return `${id}: ${places.join(" | ")}`;
  });
}
