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

/** A photograph the server keeps, by its id there. Its height follows from its width: no photograph is stretched. */
const photographSchema = z.strictObject({
  id: z.string().regex(/^[A-Za-z0-9_-]{1,80}$/, "a photograph's id has letters, figures, _ or -"),
  widthPx: z.number().int().min(1).max(100_000),
  heightPx: z.number().int().min(1).max(100_000),
  xMm: z.number().min(-100_000).max(100_000),
  yMm: z.number().min(-100_000).max(100_000),
  widthMm: z.number().min(1).max(100_000),
});

/** How things are drawn, apart from facts; keyed by permanent id. */
export const layoutSchema = z.strictObject({
  side: z
    .record(idSchema, pointSchema)
    .optional()
    .describe("Stations in side view, front left, mm"),
  diagram: z.record(idSchema, pointSchema).optional(),
  board: z.record(idSchema, pointSchema).optional(),
  photograph: photographSchema
    .optional()
    .describe("Laid under the side view; its upper left corner and width in mm of that view"),
});
