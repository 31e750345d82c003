import type { SetFault } from "@copperwright/engine";
import * as z from "zod";
import { wordsSchema } from "../api/requestSchemas.ts";

/** A word that names something of a job; whether the job has it is for the engine to say. */
const placeSchema = z
  .string()
  .regex(/^[A-Za-z0-9_+.-]{1,70}$/, "a place is a wire, a pin, a bond or a fuse");
const ohmSchema = z.number().positive().max(1e9);
const idSchema = z.string().regex(/^[A-Za-z0-9_+-]{1,32}$/);
const positionsSchema = z
  .record(idSchema, idSchema)
  .refine((set) => Object.keys(set).length <= 200, "so many switches no machine has");
const MOST_FAULTS = 8;
const LONGEST_MINUTES = 1440;

const faultSchema: z.ZodType<SetFault> = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("open"), place: placeSchema }),
  z.strictObject({ kind: z.literal("corroded"), place: placeSchema, ohm: ohmSchema }),
  z.strictObject({
    kind: z.literal("short"),
    a: placeSchema,
    b: placeSchema.optional(),
    ohm: ohmSchema,
  }),
  z.strictObject({ kind: z.literal("swapped"), wires: z.tuple([placeSchema, placeSchema]) }),
]);

const engineSchema = z.strictObject({
  mode: z.enum(["stopped", "cranking", "running"]),
  speedRpm: z.number().min(0).max(20_000).optional(),
});

/** How the machine stands. What is broken on it can be said in no field of this. */
const standing = {
  set: positionsSchema.optional(),
  engine: engineSchema.optional(),
  flash: z.enum(["on", "off"]).optional(),
};

export const newExerciseSchema = z.strictObject({
  title: wordsSchema.trim().min(1).max(200),
  request: z.strictObject({
    ...standing,
    battery: z.enum(["full", "half", "weak"]).optional(),
    aged: z.boolean().optional(),
  }),
  faults: z.array(faultSchema).min(1).max(MOST_FAULTS),
  limitMinutes: z.number().int().min(1).max(LONGEST_MINUTES).optional(),
});

export const exerciseReadSchema = z.strictObject({
  ...standing,
  /** Fuses taken out, or gone before. */
  pulled: z.array(idSchema).max(100).optional(),
  probes: z.tuple([placeSchema, placeSchema]).describe("Red and black; `earth` for the frame"),
  mode: z.enum(["volts", "ohms"]),
});

/** A guess names what is wrong and where, but not by how much. */
export const guessSchema = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("open"), place: placeSchema }),
  z.strictObject({ kind: z.literal("corroded"), place: placeSchema }),
  z.strictObject({ kind: z.literal("short"), a: placeSchema, b: placeSchema.optional() }),
  z.strictObject({ kind: z.literal("swapped"), wires: z.tuple([placeSchema, placeSchema]) }),
]);

export type NewExercise = z.infer<typeof newExerciseSchema>;
export type ExerciseRead = z.infer<typeof exerciseReadSchema>;
export type Guess = z.infer<typeof guessSchema>;
