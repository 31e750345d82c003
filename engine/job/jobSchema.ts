import * as z from "zod";
import {
  decisionsSchema,
  exclusionSchema,
  intentSchema,
  namedStateSchema,
} from "./decisionSchema.ts";
import { dateSchema, idSchema, nameSchema } from "./idSchema.ts";
import {
  circuitSchema,
  connectorSchema,
  jointSchema,
  loomSchema,
  wireSchema,
} from "./loomSchema.ts";
import { partSchema } from "./partSchema.ts";
import { bodySchema, bondSchema, runSchema, stationSchema } from "./placeSchema.ts";
import {
  attachmentSchema,
  buildRecordSchema,
  layoutSchema,
  testRecordSchema,
} from "./recordSchema.ts";

/** Version of the document this engine writes. Older ones are upgraded when read, newer ones refused. */
export const JOB_VERSION = 1;

export const machineSchema = z.strictObject({
  maker: nameSchema,
  model: nameSchema,
  year: z.number().int().min(1885).max(2100).optional(),
  kind: z.enum(["motorcycle", "three-wheeler", "car", "tractor", "other"]),
  body: z
    .enum(["single", "twin", "four", "enduro", "big-twin", "three-wheeler", "other"])
    .optional(),
  note: nameSchema.optional(),
});

export const supplySchema = z.strictObject({
  nominalV: z.union([z.literal(6), z.literal(12), z.literal(24)]),
  earthPolarity: z
    .enum(["positive", "negative"])
    .describe("Which battery post is joined to the frame"),
  ignition: z.enum(["battery-coil", "electronic", "magneto", "cdi", "none"]),
  note: nameSchema.optional(),
});

export const colourPlanSchema = z.strictObject({
  scheme: z.string().max(32).describe("A scheme of tables/colourSchemes, or none"),
  letters: z
    .enum(["iec", "british", "german", "japanese"])
    .describe("Letter system printed on every sheet"),
});

/** The job: facts, plan, decisions and record. Results are never stored. */
export const jobSchema = z.strictObject({
  copperwrightJob: z.literal(JOB_VERSION),
  $schema: z.string().max(200).optional(),
  id: idSchema,
  name: nameSchema,
  revision: z.number().int().min(1).max(1_000_000),
  date: dateSchema,
  note: nameSchema.optional(),
  machine: machineSchema,
  supply: supplySchema,
  colours: colourPlanSchema,
  stations: z.array(stationSchema),
  runs: z.array(runSchema),
  bodies: z.array(bodySchema),
  bonds: z.array(bondSchema),
  parts: z.array(partSchema),
  joints: z.array(jointSchema),
  connectors: z.array(connectorSchema),
  circuits: z.array(circuitSchema),
  looms: z.array(loomSchema),
  wires: z.array(wireSchema).max(20_000),
  intents: z.array(intentSchema).describe("What each load is for: when it should work"),
  states: z.array(namedStateSchema).describe("Named states, for the test sheet and for checking"),
  exclusions: z
    .array(exclusionSchema)
    .describe("Combinations that cannot happen, each with its reason"),
  decisions: decisionsSchema,
  build: z.array(buildRecordSchema),
  tests: z.array(testRecordSchema),
  attachments: z.array(attachmentSchema),
  layout: layoutSchema,
});
