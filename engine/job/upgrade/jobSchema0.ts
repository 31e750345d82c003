import * as z from "zod";
import { dateSchema, idSchema, nameSchema, pinRefSchema } from "../idSchema.ts";

/** Lengths were bare millimetres; whoever wrote one had measured it or not, and nothing said which. */
const lengthMm = z.number().min(0.001).max(1_000_000);

const pins = z.array(idSchema);
const place = idSchema.optional();

const lamp = z.strictObject({
  id: idSchema,
  kind: z.literal("lamp"),
  name: nameSchema,
  place,
  pins,
  volts: z.number().min(1).max(60),
  watts: z.number().min(0.01).max(500),
});

const fuse = z.strictObject({
  id: idSchema,
  kind: z.literal("fuse"),
  name: nameSchema,
  place,
  pins,
  amps: z.number().min(0.05).max(500),
});

const battery = z.strictObject({
  id: idSchema,
  kind: z.literal("battery"),
  name: nameSchema,
  place,
  ampHours: z.number().min(0.1).max(500),
});

const onOff = z.strictObject({
  id: idSchema,
  kind: z.literal("switch"),
  name: nameSchema,
  place,
  pins,
});

/**
 * Version 0 of the document, before ids on runs, bases on values and contact tables: kept so that the upgrade has something to prove
 * itself on. `earth` names the earthed pole by its sign, a battery's pins were always + and -, a switch was on or off.
 */
export const jobSchema0 = z.strictObject({
  copperwrightJob: z.literal(0),
  id: idSchema,
  name: nameSchema,
  date: dateSchema,
  maker: nameSchema,
  model: nameSchema,
  volts: z.union([z.literal(6), z.literal(12), z.literal(24)]),
  earth: z.enum(["+", "-"]),
  places: z.array(z.strictObject({ id: idSchema, name: nameSchema })),
  runs: z.array(z.strictObject({ from: idSchema, to: idSchema, mm: lengthMm.optional() })),
  frame: z.strictObject({ id: idSchema, points: z.array(idSchema) }),
  parts: z.array(z.discriminatedUnion("kind", [battery, fuse, onOff, lamp])),
  wires: z
    .array(
      z.strictObject({
        id: idSchema,
        from: pinRefSchema,
        to: pinRefSchema,
        colour: z.string().max(60).optional(),
        mm: lengthMm.optional(),
      }),
    )
    .max(20_000),
});

export type Job0 = z.infer<typeof jobSchema0>;
