import { type Refusal, readStockList, type StockList } from "@copperwright/engine";
import { argumentRefusal } from "../refuse.ts";
import type { World } from "../world.ts";

/** `--stock FILE`: a shop's price list; null where it is not given. */
export function stockOption(
  world: World,
  path: string | undefined,
):
  | { readonly ok: true; readonly stock: StockList | null }
  | { readonly ok: false; readonly refusals: readonly Refusal[] } {
  if (path === undefined) return { ok: true, stock: null };
  const file = world.readText(path);
  if (!file.ok) {
    const message = `The price list could not be read: ${file.why}.`;
    const remedy = "Name a CSV file that you may read.";
    return { ok: false, refusals: [argumentRefusal("--stock", path, message, remedy)] };
  }
  const read = readStockList(file.text);
  if (!read.ok) return read;
  const { passedOver, unusedHeadings } = read.stock;
  if (passedOver.length > 0) {
    const lines = passedOver.slice(0, 8).map(({ line }) => line);
    const more = passedOver.length > lines.length ? " and more" : "";
    world.err(
      `Rows of the price list that are of no use here: ${passedOver.length}, on lines ${lines.join(", ")}${more}.\n`,
    );
  }
  if (unusedHeadings.length > 0) {
    world.err(`Columns nothing is read from: ${unusedHeadings.join(", ")}.\n`);
  }
  return read;
}
