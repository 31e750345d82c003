import * as z from "zod";
import { lampSchema } from "./lampSchema.ts";
import {
  batterySchema,
  capacitorSchema,
  generatorSchema,
  meterSchema,
  motorSchema,
  regulatorSchema,
} from "./supplyParts.ts";
import {
  diodeSchema,
  flasherSchema,
  fuseSchema,
  loadSchema,
  moduleSchema,
  relaySchema,
  switchSchema,
} from "./switchingParts.ts";

/** Anything electrical that is not wire, joint, connector or body. */
export const partSchema = z.discriminatedUnion("kind", [
  batterySchema,
  fuseSchema,
  switchSchema,
  relaySchema,
  flasherSchema,
  lampSchema,
  loadSchema,
  moduleSchema,
  motorSchema,
  meterSchema,
  diodeSchema,
  generatorSchema,
  regulatorSchema,
  capacitorSchema,
]);
