import { EDITED_LISTS } from "@copperwright/engine";
import * as z from "zod";
import {
  wordsSchema as anyWordsSchema,
  changeIdSchema,
  LONGEST_PRICE_LIST,
  photographIdSchema,
} from "../api/requestSchemas.ts";
import { guessSchema, newExerciseSchema } from "../exercise/exerciseSchemas.ts";
import { STORAGE_VERSION } from "../storage/index.ts";

export const BACKUP_FORMAT = 1;

const keySchema = z.string().regex(/^[0-9a-f]{32}$/);
const sha256Schema = z.string().regex(/^[0-9a-f]{64}$/);
const wordsSchema = anyWordsSchema.max(400);
const momentSchema = anyWordsSchema.max(40);
const numberSchema = z.number().int().min(0).max(2_000_000_000);
const oneSchema = numberSchema.min(1);

/** JSON text a row keeps, of a form that is known. */
const jsonOf = (schema: z.ZodType) =>
  z
    .string()
    .max(1_000_000)
    .refine((text) => {
      try {
        return schema.safeParse(JSON.parse(text)).success;
      } catch {
        return false;
      }
    }, "is not what it should be");

const sideSchema = z.union([
  z.strictObject({ isAbsent: z.literal(true) }),
  z.strictObject({ isAbsent: z.literal(false), value: z.unknown() }),
]);

const conflictSchema = z.strictObject({
  kind: z.enum(["both-changed", "both-added", "removed-and-edited", "not-together"]),
  list: z.enum([...EDITED_LISTS, "job"]),
  id: z.string().max(40).optional(),
  path: z.array(z.string().max(200)).max(40),
  mine: sideSchema,
  theirs: sideSchema,
  inUse: z.enum(["mine", "theirs"]),
});

const jobSchema = z.strictObject({
  key: keySchema,
  name: wordsSchema,
  machine: anyWordsSchema.max(500),
  revision: oneSchema,
  sequence: numberSchema,
  saved_at: momentSchema,
  saved_by: wordsSchema,
  device: wordsSchema,
  is_archived: z.union([z.literal(0), z.literal(1)]),
  summary: jsonOf(z.unknown()).nullable(),
  summary_revision: numberSchema.nullable(),
});

const revisionSchema = z.strictObject({
  job_key: keySchema,
  revision: oneSchema,
  sha256: sha256Schema,
  job_version: numberSchema,
  saved_at: momentSchema,
  saved_by: wordsSchema,
  device: wordsSchema,
  what_changed: wordsSchema,
  change_id: z.string().regex(/^[A-Za-z0-9_-]{8,64}$/),
});

const hungOnJobSchemas = {
  conflicts: z.array(
    z.strictObject({
      id: keySchema,
      job_key: keySchema,
      revision: oneSchema,
      place: numberSchema,
      conflict: jsonOf(conflictSchema),
      mine_by: wordsSchema,
      theirs_by: wordsSchema,
      made_at: momentSchema,
    }),
  ),
  settlements: z.array(
    z.strictObject({
      conflict_id: keySchema,
      take: z.enum(["mine", "theirs"]),
      revision: oneSchema,
      settled_at: momentSchema,
      settled_by: wordsSchema,
    }),
  ),
  photographs: z.array(
    z.strictObject({ sha256: sha256Schema, width_px: oneSchema, height_px: oneSchema }),
  ),
  jobPhotographs: z.array(
    z.strictObject({
      job_key: keySchema,
      sha256: sha256Schema,
      name: wordsSchema,
      added_at: momentSchema,
      added_by: wordsSchema,
    }),
  ),
};

const exerciseSchemas = {
  exercises: z.array(
    z.strictObject({
      id: keySchema,
      job_key: keySchema,
      revision: oneSchema,
      title: wordsSchema,
      request: jsonOf(newExerciseSchema.shape.request),
      faults: jsonOf(newExerciseSchema.shape.faults),
      limit_minutes: numberSchema.nullable(),
      made_at: momentSchema,
      made_by: wordsSchema,
    }),
  ),
  exerciseStarts: z.array(
    z.strictObject({
      exercise_id: keySchema,
      who: wordsSchema,
      device: wordsSchema,
      started_at: momentSchema,
    }),
  ),
  guesses: z.array(
    z.strictObject({
      id: keySchema,
      exercise_id: keySchema,
      who: wordsSchema,
      device: wordsSchema,
      guess: jsonOf(guessSchema),
      is_right: z.union([z.literal(0), z.literal(1)]),
      minutes: z.number().min(0).max(1e9),
      made_at: momentSchema,
    }),
  ),
};

const priceListSchema = z.strictObject({
  id: changeIdSchema,
  name: wordsSchema,
  text: anyWordsSchema.max(LONGEST_PRICE_LIST).nullable(),
  saved_at: momentSchema,
  saved_by: wordsSchema,
  device: wordsSchema,
});

/** First entry of a backup: every row. The second is what each revision changed, the others are pictures, known by what they hold. */
export const manifestSchema = z.strictObject({
  copperwrightBackup: z.literal(BACKUP_FORMAT),
  storageVersion: z.number().int().min(1).max(STORAGE_VERSION),
  madeAt: momentSchema,
  rows: z.strictObject({
    jobs: z.array(jobSchema),
    revisions: z.array(revisionSchema),
    ...hungOnJobSchemas,
    ...exerciseSchemas,
    // Backups of older storage versions have none.
    priceLists: z.array(priceListSchema).default([]),
    photographIds: z
      .array(z.strictObject({ id: photographIdSchema, sha256: sha256Schema }))
      .default([]),
  }),
});

/** Second entry: one text after the other, in the order of `rows.revisions`. */
export const textsSchema = z.array(
  z.strictObject({ head: numberSchema, tail: numberSchema, middle: z.string().max(20_000_000) }),
);

export type BackupManifest = z.infer<typeof manifestSchema>;
