import * as z from "zod";
import { idSchema, nameSchema } from "./idSchema.ts";
import { pinSchema } from "./pinSchema.ts";
import { currentSchema, ohmSchema, valuedSchema } from "./valuedSchema.ts";

/** What becomes of a thing: proof takes all that will be on the machine, cut list and board take `new`. */
export const statusSchema = z.enum(["found", "keep", "remove", "new"]);

/** Fields every part has. */
export const partFields = {
  id: idSchema,
  name: nameSchema,
  station: idSchema.optional(),
  status: statusSchema.optional().describe("Absent: keep"),
  polarity: z
    .enum(["either", "negative-earth", "positive-earth", "one-way"])
    .optional()
    .describe(
      "Which earth it can live with; one-way: works either way up when its pins are the right way round",
    ),
  pins: z.array(pinSchema),
  note: nameSchema.optional(),
};

/** Two pins of the same part. The load is addressed as PART:A-B. */
export const pinPairSchema = z.tuple([idSchema, idSchema]);

/** A resistance between two pins of a part: one winding, one heating element, one box input. */
export const elementSchema = z.strictObject({
  pins: pinPairSchema.describe("Of a one-way element the first is the more positive"),
  ohm: ohmSchema,
  oneWay: z.boolean().optional(),
  dutyRatio: valuedSchema({ min: 0, max: 1 }).optional().describe("Share of the time it draws"),
});

/** Output at one speed: two such points fix a generator (see supply). */
export const outputPointSchema = z.strictObject({
  speedRpm: z.number().min(50).max(20_000),
  currentA: z.number().min(0).max(500),
  atV: z.number().min(0).max(400),
  basis: z.enum(["measured", "estimated", "chosen", "stated"]),
});

export const contactFields = {
  contactOhm: ohmSchema
    .optional()
    .describe("Each closed pair; absent: the table value, new or aged"),
  contactRatingA: currentSchema.optional(),
};
