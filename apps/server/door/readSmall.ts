import type { Context } from "hono";
import { bodyLimit } from "hono/body-limit";
import type * as z from "zod";
import { refuse } from "./refuse.ts";

/** Largest body of the door's own requests, bytes: a token, a code, a name. */
const SMALL_BODY = 4096;
/** Nothing behind the door takes more; each route there has its own, smaller bound. */
const LARGEST_BODY = 140_000_000;
/** Of a device that may tick: a few records. */
const TICKS_BODY = 250_000;

const atMost = (maxSize: number) => bodyLimit({ maxSize, onError: (c) => refuse(c, "too-large") });

export const smallBody = atMost(SMALL_BODY);
export const largestBody = atMost(LARGEST_BODY);
export const ticksBody = atMost(TICKS_BODY);

/** A small body in the form its schema says; null for anything else. */
export async function readSmall<T>(c: Context, schema: z.ZodType<T>): Promise<T | null> {
  const body: unknown = await c.req.json().catch(() => undefined);
  const read = schema.safeParse(body);
  return read.success ? read.data : null;
}
