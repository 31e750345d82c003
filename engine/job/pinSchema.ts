import * as z from "zod";
import { colourSchema } from "./colourSchema.ts";
import { idSchema, nameSchema } from "./idSchema.ts";
import { lengthSchema } from "./valuedSchema.ts";

/**
 * The tail a part brings with it. PART.PIN is its far end, where the loom begins; the part's inside lies behind its resistance.
 * Counts in protection, drop, colour and connectors; never in the cut list.
 */
export const flyLeadSchema = z.strictObject({
  colour: colourSchema,
  make: z.string().max(64).describe("A row of tables/wires"),
  lengthMm: lengthSchema,
  terminal: z.string().max(32).optional().describe("What is on its end, a row of tables/terminals"),
});

export const pinSchema = z.strictObject({
  id: idSchema,
  name: nameSchema.optional(),
  stud: z
    .string()
    .max(32)
    .optional()
    .describe("What the part offers the wire, a row of tables/studs"),
  role: z
    .enum(["kill", "ac", "earth", "sense", "internal"])
    .optional()
    .describe(
      "kill: may only meet earth; ac: belongs to an alternating net; internal: no wire reaches it",
    ),
  flyLead: flyLeadSchema.optional(),
});
