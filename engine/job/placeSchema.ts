import * as z from "zod";
import { idSchema, nameSchema, pinRefSchema } from "./idSchema.ts";
import { lengthSchema, ohmSchema, valuedSchema } from "./valuedSchema.ts";

/** What a loom run passes through; each has a design ambient in tables/surroundings. */
export const surroundingsSchema = z.enum([
  "open",
  "under-tank",
  "battery-box",
  "headlamp-shell",
  "near-engine",
  "near-exhaust",
  "exposed",
]);

export const stationSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  surroundings: surroundingsSchema.optional(),
});

export const runSchema = z.strictObject({
  id: idSchema,
  from: idSchema,
  to: idSchema,
  lengthMm: lengthSchema.optional().describe("Absent: not measured yet"),
  flex: z.boolean().optional().describe("True where the run moves with the steering or suspension"),
  surroundings: surroundingsSchema.optional(),
  ambientC: valuedSchema({ min: -40, max: 150 }).optional(),
});

/** A conducting mass. Its own node is the pin BODY.hub; each point is a place where something is fastened to it. */
export const bodySchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  kind: z.enum(["frame", "engine", "forks", "bars", "tank", "lamp-shell", "other"]),
  points: z.array(
    z.strictObject({
      id: idSchema,
      name: nameSchema.optional(),
      station: idSchema.optional(),
      stud: z.string().max(32).optional().describe("What a wire fits on, a row of tables/studs"),
      ohm: ohmSchema.optional(),
      condition: z.enum(["bare", "painted", "plated"]).optional(),
    }),
  ),
});

/** What joins two bodies, or a part's case to a body, without a wire of the loom. */
export const bondSchema = z.strictObject({
  id: idSchema,
  from: pinRefSchema,
  to: pinRefSchema,
  kind: z.enum(["strap", "bolt", "case", "clamp", "bearing", "paint", "rubber", "none"]),
  newOhm: ohmSchema.optional(),
  agedOhm: ohmSchema.optional(),
  note: nameSchema.optional(),
});
