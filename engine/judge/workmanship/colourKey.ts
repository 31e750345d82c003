import type { Colour } from "../../job/index.ts";
import { type colourSchemes, colours } from "../../tables/index.ts";

/** A colour with its tracers in words: `green/yellow`. */
export const colourKey = ({ main, tracer, secondTracer }: Colour): string =>
  [main, tracer, secondTracer].filter((one) => one !== undefined).join("/");

const wordOf = new Map(colours.map(({ id, word }) => [id, word]));

/** The same of a row of tables/colourSchemes, which names colours by their id. */
export function schemeKey(row: (typeof colourSchemes)[number]): string {
  return [row.main, row.tracer, row.secondTracer]
    .filter((one) => one !== null)
    .map((id) => wordOf.get(id) ?? id)
    .join("/");
}
