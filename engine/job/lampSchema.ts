import * as z from "zod";
import { partFields, pinPairSchema } from "./partFields.ts";

/** One filament or light source. Test volts, watts and lumens anchor the law when given; otherwise nominal volts and watts do. */
export const filamentSchema = z.strictObject({
  pins: pinPairSchema,
  ratedV: z.number().min(1).max(60),
  ratedW: z.number().min(0.01).max(500),
  category: z.string().max(32).optional().describe("A row of tables/lamps"),
  testV: z.number().min(1).max(60).optional(),
  testW: z.number().min(0.01).max(600).optional(),
  testLm: z.number().min(0.1).max(20_000).optional(),
  supply: z.enum(["dc", "ac"]).optional().describe("Absent: dc"),
});

export const lampSchema = z.strictObject({
  ...partFields,
  kind: z.literal("lamp"),
  source: z
    .enum(["filament", "led"])
    .describe("An LED conducts from its first pin to its second only"),
  filaments: z.array(filamentSchema).min(1),
});
