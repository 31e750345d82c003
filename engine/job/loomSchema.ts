import * as z from "zod";
import { colourSchema } from "./colourSchema.ts";
import { idSchema, nameSchema, pinRefSchema } from "./idSchema.ts";
import { statusSchema } from "./partFields.ts";
import { basisSchema, lengthSchema, ohmSchema } from "./valuedSchema.ts";

/** One end of a wire: what is fitted and how. Absent: chosen from what the pin offers and the wire, and shown as chosen. */
export const wireEndSchema = z.strictObject({
  terminal: z
    .string()
    .max(32)
    .optional()
    .describe("A row of tables/terminals, or ring- and a row of tables/studs: ring-M6"),
  joining: z.enum(["crimped", "soldered", "screwed", "twisted", "clamped"]).optional(),
  solderDipped: z
    .boolean()
    .optional()
    .describe("The strands were dipped in solder before crimping"),
  supported: z.boolean().optional().describe("A soldered end held so that it cannot move"),
});

export const wireSchema = z.strictObject({
  id: idSchema,
  number: z.string().max(12).optional().describe("What is printed on the wire; absent: the id"),
  from: pinRefSchema,
  to: pinRefSchema,
  colour: colourSchema.optional(),
  circuit: idSchema,
  loom: idSchema.optional().describe("Absent: its own loose wire or cable"),
  status: statusSchema,
  size: z
    .strictObject({ make: z.string().max(64), basis: basisSchema, by: nameSchema.optional() })
    .optional()
    .describe("A row of tables/wires; absent: the engine chooses"),
  lengthMm: lengthSchema.optional().describe("Typed path length; absent: routed over the runs"),
  via: z.array(idSchema).optional().describe("Stations it must pass; absent: shortest way"),
  fromEnd: wireEndSchema.optional(),
  toEnd: wireEndSchema.optional(),
  note: nameSchema.optional(),
});

/** Where conductors join. Ways are pins JOINT.WAY. */
export const jointSchema = z.strictObject({
  id: idSchema,
  name: nameSchema.optional(),
  station: idSchema.optional(),
  offset: z
    .strictObject({ run: idSchema, mm: lengthSchema.describe("From the run's `from` station") })
    .optional()
    .describe("A place along a run, where it is not at the station itself"),
  kind: z.enum(["crimped-splice", "multiway-bullet", "ring-stack", "bus", "soldered", "twisted"]),
  ways: z.array(idSchema),
  status: statusSchema.optional(),
  ohm: ohmSchema.optional().describe("Of each way"),
  supported: z.boolean().optional(),
  note: nameSchema.optional(),
});

/** Plug and socket pair. Cavity 3 is the pins CONNECTOR.3p (plug half) and CONNECTOR.3s (socket half). */
export const connectorSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  station: idSchema.optional(),
  kind: z.string().max(32).describe("A row of tables/connectors"),
  cavities: z.array(idSchema),
  rowCount: z.number().int().min(1).max(6).optional(),
  status: statusSchema.optional(),
  ohm: ohmSchema.optional().describe("Of each mated cavity"),
  note: nameSchema.optional(),
});

export const dropClassSchema = z
  .enum([
    "headlamp",
    "tail-signal",
    "ignition",
    "charge",
    "starter",
    "starter-control",
    "horn",
    "accessory",
    "earth",
    "main-feed",
    "kill",
    "ac-lighting",
  ])
  .describe("Picks its volt-drop limit from tables/voltDropLimits");

export const circuitSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  dropClass: dropClassSchema,
});

export const loomSchema = z.strictObject({
  id: idSchema,
  name: nameSchema,
  covering: z.enum(["pvc-sleeve", "woven-sleeve", "tape", "heat-shrink", "open"]).optional(),
});
