import * as z from "zod";
import { idSchema } from "./idSchema.ts";
import { elementSchema, outputPointSchema, partFields, pinPairSchema } from "./partFields.ts";
import { currentSchema, ohmSchema, valuedSchema, voltSchema } from "./valuedSchema.ts";

export const batterySchema = z.strictObject({
  ...partFields,
  kind: z.literal("battery"),
  positivePin: idSchema,
  negativePin: idSchema,
  chemistry: z.enum(["flooded", "agm", "gel", "lifepo4"]),
  nominalV: z.number().min(2).max(48),
  capacityAh: valuedSchema({ min: 0.1, max: 500 }),
  restV: voltSchema
    .optional()
    .describe("Volts at rest in the full state; absent: the open-circuit table"),
  internalOhm: ohmSchema.optional(),
  coldCrankingA: currentSchema.optional(),
});

export const motorSchema = z.strictObject({
  ...partFields,
  kind: z.literal("motor"),
  use: z.enum(["starter", "fan", "pump", "wiper", "other"]),
  between: pinPairSchema.describe("The two pins the winding lies between"),
  runOhm: ohmSchema.describe("Volts over amps while it turns under load"),
  freeA: currentSchema.optional(),
  freeV: voltSchema.optional(),
  stallA: currentSchema.optional(),
  stallV: voltSchema.optional(),
});

/**
 * Generator: what turns. The volt-ampere line of its rectified output is made by `supply` from two output points.
 * dynamo: armature, field pins; alternator-pm: one pin per phase; alternator-excited: output, field pins; flywheel-magneto: one winding per pin.
 */
export const generatorSchema = z.strictObject({
  ...partFields,
  kind: z.literal("generator"),
  type: z.enum(["dynamo", "alternator-pm", "alternator-excited", "flywheel-magneto", "magneto"]),
  windings: z.array(
    z.strictObject({
      use: z.enum([
        "armature",
        "field",
        "phase",
        "output",
        "lighting",
        "charge",
        "ignition",
        "pickup",
      ]),
      pins: z
        .array(idSchema)
        .min(1)
        .max(2)
        .describe("One pin: the other end is earthed to the case"),
      ohm: ohmSchema.optional(),
      points: z.array(outputPointSchema).optional(),
      ratedW: z.number().min(0.1).max(5000).optional(),
    }),
  ),
  ratedW: z.number().min(1).max(5000).optional(),
  case: z.string().max(65).optional().describe("Body point or pin the case is fastened to"),
});

/** Regulator: what holds the volts. `shunt` and `series` units rectify too; a control box has the cut-out; a `field` unit drives a rotor. */
export const regulatorSchema = z.strictObject({
  ...partFields,
  kind: z.literal("regulator"),
  type: z.enum(["shunt", "series", "control-box", "field", "ac-shunt", "zener"]),
  generator: idSchema.optional().describe("The generator it serves"),
  inputPins: z.array(idSchema),
  positivePin: idSchema.optional(),
  negativePin: idSchema.optional(),
  sensePin: idSchema.optional(),
  fieldPin: idSchema.optional(),
  setV: voltSchema,
  temperatureMvPerC: valuedSchema({ min: -100, max: 20 }).optional(),
  elements: z.array(elementSchema).optional().describe("What it draws of itself"),
});

export const capacitorSchema = z.strictObject({
  ...partFields,
  kind: z.literal("capacitor"),
  positivePin: idSchema,
  negativePin: idSchema,
  capacitanceUf: valuedSchema({ min: 0.001, max: 1e6 }),
});

export const meterSchema = z.strictObject({
  ...partFields,
  kind: z.literal("meter"),
  measures: z.enum(["amps", "volts"]),
  between: pinPairSchema.describe("For amps: current from first to second pin deflects to charge"),
  ohm: ohmSchema.optional(),
  scaleMax: z.number().min(0.1).max(500).optional(),
});
