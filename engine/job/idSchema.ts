import * as z from "zod";
import { isCalendarDate } from "./isCalendarDate.ts";
import { isReservedName } from "./read/reservedNames.ts";

/** A permanent id: given once, never its position or wire number. */
export const idSchema = z
  .string()
  .regex(/^[A-Za-z0-9_+-]{1,32}$/, "an id has 1 to 32 letters, figures, _ + or -")
  .refine((id) => !isReservedName(id), "that word has a meaning of its own in programs")
  .describe("Permanent id: 1 to 32 of A-Z a-z 0-9 _ + -");

/** A connection point: `PART.PIN`, `JOINT.WAY`, `BODY.POINT`, `CONNECTOR.CAVITYp` (plug half) or `CONNECTOR.CAVITYs` (socket half). */
export const pinRefSchema = z
  .string()
  .regex(/^[A-Za-z0-9_+-]{1,32}\.[A-Za-z0-9_+-]{1,33}$/, "a pin is written PART.PIN")
  .describe("A connection point, PART.PIN");

export const nameSchema = z.string().max(200).describe("Up to 200 characters, for people only");

export const dateSchema = z
  .string()
  .regex(/^\d{4}-\d{2}-\d{2}$/, "a date is written 2026-03-01")
  .refine((date) => isCalendarDate(date), "the calendar has no such day")
  .describe("Date, YYYY-MM-DD");
