import * as z from "zod";
import { idSchema, nameSchema } from "./idSchema.ts";
import { contactFields, elementSchema, partFields, pinPairSchema } from "./partFields.ts";
import { currentSchema, ohmSchema, voltSchema } from "./valuedSchema.ts";

/** Contact table: in each position, the pairs of pins that are joined. */
export const switchSchema = z.strictObject({
  ...partFields,
  kind: z.literal("switch"),
  driven: z
    .enum(["hand", "machine", "engine"])
    .describe("By hand, by the machine (oil, neutral, stand), or following the engine"),
  positions: z
    .array(
      z.strictObject({ id: idSchema, name: nameSchema.optional(), joins: z.array(pinPairSchema) }),
    )
    .min(1),
  rest: idSchema,
  momentary: z.boolean().optional(),
  follows: z
    .strictObject({ stopped: idSchema, cranking: idSchema, running: idSchema })
    .optional()
    .describe("Position taken with the engine, unless set by hand"),
  ...contactFields,
});

export const relaySchema = z.strictObject({
  ...partFields,
  kind: z.literal("relay"),
  coil: z.strictObject({
    pins: pinPairSchema,
    ohm: ohmSchema,
    pullInV: voltSchema.optional(),
    dropOutV: voltSchema.optional(),
    diode: z
      .boolean()
      .optional()
      .describe("A diode across the coil: cathode on the first coil pin"),
  }),
  made: z.array(pinPairSchema).describe("Pairs joined when pulled"),
  rest: z.array(pinPairSchema).describe("Pairs joined when released"),
  ...contactFields,
});

export const flasherSchema = z.strictObject({
  ...partFields,
  kind: z.literal("flasher"),
  feed: idSchema,
  out: idSchema,
  earth: idSchema.optional(),
  technology: z.enum(["thermal", "electronic", "mechanical"]),
  loadMinW: z.number().min(0).max(500).optional(),
  loadMaxW: z.number().min(0).max(500).optional(),
  ...contactFields,
});

/** Fuse: two pins. `marking` says which current the number on it means. */
export const fuseSchema = z.strictObject({
  ...partFields,
  kind: z.literal("fuse"),
  ratingA: z.number().min(0.05).max(500),
  marking: z.enum(["continuous", "blow", "unknown"]),
  type: z
    .enum([
      "blade",
      "mini",
      "maxi",
      "glass-6.3x32",
      "glass-5x20",
      "glass-british",
      "torpedo",
      "unknown",
    ])
    .describe("A fuse type of tables/fuseTimeCurrent"),
  coldOhm: ohmSchema.optional(),
  holderRatingA: currentSchema.optional(),
});

export const diodeSchema = z.strictObject({
  ...partFields,
  kind: z.enum(["diode", "rectifier"]),
  junctions: z.array(z.strictObject({ anode: idSchema, cathode: idSchema })).min(1),
  ratingA: currentSchema.optional(),
});

/** Anything that is a resistance or several: horn, ignition coil, heater, resistor, relay-less solenoid. */
export const loadSchema = z.strictObject({
  ...partFields,
  kind: z.enum(["horn", "coil", "heater", "resistor"]),
  elements: z.array(elementSchema),
});

/** An electronic box: what it draws of itself, and what its outputs join while it is fed. */
export const moduleSchema = z.strictObject({
  ...partFields,
  kind: z.literal("module"),
  elements: z.array(elementSchema),
  driver: z
    .strictObject({
      fed: pinPairSchema.describe("Where the box is fed"),
      fromV: voltSchema.describe("Volts there from which it works"),
      outputs: z
        .array(pinPairSchema)
        .min(1)
        .describe(
          "Joined while fed, as with contacts held closed; the load's dutyRatio says how long",
        ),
      ohm: ohmSchema.describe("Each conducting output: volts lost in it over its current"),
    })
    .optional(),
});
