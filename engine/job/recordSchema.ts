import * as z from "zod";
import { dateSchema, idSchema, nameSchema } from "./idSchema.ts";

/** A thing done while building: wire cut, end fitted, tested. */
export const buildRecordSchema = z.strictObject({
  id: idSchema,
  subject: z.string().max(70),
  done: z.enum(["cut", "from-end", "to-end", "tested", "fitted", "joined"]),
  by: nameSchema,
  date: dateSchema,
});

/** A reading taken on the machine or on the board. The unit is part of the record because each test has its own. */
export const testRecordSchema = z.strictObject({
  id: idSchema,
  test: z.string().max(64),
  state: idSchema.optional(),
  subject: z.string().max(140),
  read: z.number(),
  unit: z.enum(["V", "A", "ohm", "rpm", "N", "C"]),
  by: nameSchema,
  date: dateSchema,
});

export const attachmentSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
  subject: z.string().max(70).optional(),
});

const pointSchema = z.strictObject({ xMm: z.number(), yMm: z.number() });

/** How things are drawn, apart from facts; keyed by permanent id. */
export const layoutSchema = z.strictObject({
  side: z
    .record(idSchema, pointSchema)
    .optional()
    .describe("Stations in side view, front left, mm"),
  diagram: z.record(idSchema, pointSchema).optional(),
  board: z.record(idSchema, pointSchema).optional(),
});
