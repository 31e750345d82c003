import * as z from "zod";
import { LARGEST_TEXT } from "./largestText.ts";

/** Keys and ids the server gives are 128 bits in hexadecimal; nothing else is looked up. */
export const keySchema = z.string().regex(/^[0-9a-f]{32}$/);
export const changeIdSchema = z.string().regex(/^[A-Za-z0-9_-]{8,64}$/);
export const revisionSchema = z.number().int().min(1).max(2_000_000_000);
/** PostgreSQL keeps every sign but this one. */
const NUL = String.fromCharCode(0);
/** A text for people. */
export const wordsSchema = z
  .string()
  .refine((text) => !text.includes(NUL), "holds a sign no text has");
const nameSchema = wordsSchema.max(200);
const whatSchema = wordsSchema.trim().min(1).max(400);
const MOST_OPERATIONS = 10_000;
const LONGEST_SUMMARY = 200_000;

/** What a device says of a job, for the list: kept as text, never read. */
const summarySchema = z
  .unknown()
  .transform((value) => (value === undefined || value === null ? null : JSON.stringify(value)))
  .refine((text) => text === null || text.length <= LONGEST_SUMMARY, "the summary is too long");

export const newJobSchema = z.discriminatedUnion("from", [
  z.strictObject({
    from: z.literal("demo"),
    name: nameSchema,
    changeId: changeIdSchema.optional(),
  }),
  z.strictObject({
    from: z.literal("text"),
    text: z.string().max(LARGEST_TEXT),
    changeId: changeIdSchema.optional(),
  }),
  z.strictObject({ from: z.literal("copy"), key: keySchema, changeId: changeIdSchema.optional() }),
]);

/** Operations are read by the engine, which says better what is wrong with one. */
export const changeSchema = z.strictObject({
  changeId: changeIdSchema,
  baseRevision: revisionSchema,
  jobVersion: z.number().int().min(0).max(1_000_000),
  operations: z.array(z.unknown()).min(1).max(MOST_OPERATIONS),
  what: whatSchema,
  summary: summarySchema.optional(),
});

export const settleSchema = z.strictObject({
  take: z.enum(["mine", "theirs"]),
  changeId: changeIdSchema.optional(),
});
export const restoreSchema = z.strictObject({
  revision: revisionSchema,
  changeId: changeIdSchema.optional(),
});
export const archiveSchema = z.strictObject({ isArchived: z.boolean() });
/** What a device calls a photograph it took before the server had it: never the form of a hash. */
export const photographIdSchema = z.string().regex(/^here-[0-9a-f-]{36}$/);
export const photographSchema = z.strictObject({
  name: nameSchema,
  base64: z.string().min(1),
  id: photographIdSchema.optional(),
});
/** Letters of a shop's list: some twenty thousand lines. */
export const LONGEST_PRICE_LIST = 2_000_000;
export const priceListSchema = z.strictObject({
  id: changeIdSchema,
  name: nameSchema,
  text: wordsSchema.max(LONGEST_PRICE_LIST).nullable(),
  basedOn: changeIdSchema.nullable(),
});
export const backupSchema = z.strictObject({ base64: z.string().min(1) });

export type NewJob = z.infer<typeof newJobSchema>;
export type Change = z.infer<typeof changeSchema>;
