import * as z from "zod";
import { dateSchema, nameSchema } from "./idSchema.ts";

/** Where a value comes from. `measured` on the machine, `estimated` until somebody measures, `chosen` by a person, `stated` by a maker or a stamp on the part. */
export const basisSchema = z.enum(["measured", "estimated", "chosen", "stated"]);

/**
 * A number with its basis: `{ "value": 870, "basis": "measured", "by": "RT", "date": "2026-03-01" }`.
 * The unit is in the name of the field that holds it.
 */
export function valuedSchema(bounds: { min: number; max: number }) {
  return z.strictObject({
    value: z.number().min(bounds.min).max(bounds.max),
    basis: basisSchema,
    by: nameSchema.optional(),
    date: dateSchema.optional(),
    entered: nameSchema.optional().describe("What was typed, kept as typed"),
  });
}

/** Bounds of a resistance somebody may enter, Ω: a strap of a micro-ohm to a ten-megohm leak. */
export const ohmSchema = valuedSchema({ min: 1e-6, max: 1e7 });
export const currentSchema = valuedSchema({ min: 0, max: 2000 });
export const voltSchema = valuedSchema({ min: 0, max: 500 });
/** Typed lengths are kept even when doubtful (1.6 mm): the judge asks, reading does not guess. */
export const lengthSchema = valuedSchema({ min: 0.001, max: 1_000_000 });
