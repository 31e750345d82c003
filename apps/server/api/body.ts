import { bodyLimit } from "hono/body-limit";
import type * as z from "zod";
import type { BenchContext } from "./bench.ts";
import { type Refused, refuse, refused } from "./refuse.ts";

const MEGABYTE = 1_000_000;

/** Largest body of a request that carries no job, photograph or backup, bytes. */
export const SMALL_BODY = 0.25 * MEGABYTE;
/** A job text of 20 MB, every sign of it escaped at worst by half as much again. */
export const JOB_BODY = 30 * MEGABYTE;
/** A price list of two million letters, every one of them escaped at worst. */
export const PRICE_LIST_BODY = 13 * MEGABYTE;
/** A photograph of 20 MB as base64. */
export const PHOTOGRAPH_BODY = 28 * MEGABYTE;
/** A backup of 100 MB as base64. */
export const BACKUP_BODY = 140 * MEGABYTE;

/** Stops reading a body at its limit, whatever its header says. */
export const atMost = (maxSize: number) =>
  bodyLimit({
    maxSize,
    onError: (c) => refuse(c, "body-too-large", { limit: `${maxSize / MEGABYTE} MB` }),
  });

export type BodyRead<T> = { readonly ok: true; readonly body: T } | Refused;

/** The body of a request as its schema says, or why not. */
export async function readBody<T>(c: BenchContext, schema: z.ZodType<T>): Promise<BodyRead<T>> {
  let value: unknown;
  try {
    value = await c.req.json();
  } catch {
    return refused("body-not-json", {});
  }
  const read = schema.safeParse(value);
  if (read.success) return { ok: true, body: read.data };
  const fault = read.error.issues
    .slice(0, 3)
    .map(({ path, message }) => `${path.join(".").slice(0, 100) || "the whole"}: ${message}`)
    .join("; ");
  return refused("body-misfit", { fault });
}
