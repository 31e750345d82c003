import * as z from "zod";
import { dateSchema, idSchema, nameSchema } from "./idSchema.ts";
import { valuedSchema } from "./valuedSchema.ts";

/** PART:A-B, a load element by its two pins. */
export const loadRefSchema = z
  .string()
  .regex(
    /^[A-Za-z0-9_+-]{1,32}:[A-Za-z0-9_+-]{1,32}-[A-Za-z0-9_+-]{1,32}$/,
    "a load is written PART:PIN-PIN",
  );

/** Switch part → position. */
export const positionsSchema = z.record(idSchema, idSchema);

const engineModeSchema = z.enum(["stopped", "cranking", "running"]);

/** One way for a load to be meant to work: every listed switch in one of its listed positions. */
export const intentSchema = z.strictObject({
  id: idSchema,
  load: loadRefSchema,
  when: z.array(
    z.strictObject({
      positions: z.record(idSchema, z.array(idSchema).min(1)),
      flash: z.enum(["on", "off"]).optional(),
      engine: z.array(engineModeSchema).optional(),
    }),
  ),
  note: nameSchema.optional(),
});

export const namedStateSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  positions: positionsSchema.describe("Switches not named stand at rest"),
  engine: z
    .strictObject({ mode: engineModeSchema, speedRpm: z.number().min(0).max(20_000).optional() })
    .optional()
    .describe("Absent: stopped"),
  flash: z.enum(["on", "off"]).optional(),
  on: z.array(loadRefSchema).optional().describe("Loads that should work"),
  off: z.array(loadRefSchema).optional().describe("Loads that must be dead"),
});

/** A combination that cannot happen: every listed switch in one of the listed positions at once. */
export const exclusionSchema = z.strictObject({
  id: idSchema,
  positions: z.record(idSchema, z.array(idSchema).min(1)),
  engine: z.array(engineModeSchema).optional(),
  reason: nameSchema,
});

const lengthField = z.number().min(0).max(2000).optional();

export const decisionsSchema = z.strictObject({
  lengthMode: z
    .enum(["first-off", "repeat"])
    .optional()
    .describe("first-off: trim on the machine; repeat: cut to the length that fitted"),
  allowances: z
    .strictObject({
      stripMm: lengthField,
      reterminationMm: lengthField,
      reterminationCount: z.number().int().min(0).max(5).optional(),
      flexSlackMm: lengthField,
      trimMm: lengthField.describe("First-off: left over at each end for trimming"),
      roundUpMm: lengthField,
      wastePercent: z.number().min(0).max(100).optional(),
    })
    .optional()
    .describe("Absent fields: tables/allowances"),
  ambientC: valuedSchema({ min: -40, max: 90 })
    .optional()
    .describe("Air outside the loom where a run says nothing"),
  dropLimits: z
    .array(z.strictObject({ dropClass: z.string().max(32), limitV: z.number().min(0.01).max(5) }))
    .optional(),
  stockMakes: z
    .array(z.string().max(64))
    .optional()
    .describe("Wire the workshop keeps; the engine chooses among it"),
  fuseLoadPercent: z.number().min(30).max(100).optional(),
  accepted: z
    .array(
      z.strictObject({
        id: idSchema,
        code: z.string().max(64),
        subject: z.string().max(70),
        also: z
          .array(z.string().max(70))
          .optional()
          .describe("What else the finding names that is answered for; what is not listed is not"),
        reason: nameSchema.min(1),
        by: nameSchema.min(1),
        date: dateSchema,
      }),
    )
    .optional()
    .describe("Findings somebody answers for; a stop cannot be accepted"),
});
