import type { Context, MiddlewareHandler } from "hono";
import type { DoorEnv, DoorKind } from "./doorKind.ts";
import { refuse } from "./refuse.ts";
import { areTicks } from "./ticks.ts";

/** A learner with the meter: asks, and guesses. */
const HUNT = /^\/api\/exercises\/[^/]+\/(read|guess)$/;
const CHANGE = /^\/api\/jobs\/[^/]+\/changes$/;
/** Everything at once, and what others are let in by. */
const OWNERS_VIEW = /^\/api\/(backup|sharing|devices)(\/|$)/;
/** Of a change over a plain connection only this is handed on. A summary is shown to others as a verdict, so it is not. */
const HANDED_ON = ["changeId", "baseRevision", "jobVersion", "operations", "what"] as const;

/**
 * What each right may do, by operation, whatever the page shows: a device that may look can hunt faults and change nothing; a device on the
 * plain door can tick and note readings if it may edit. Refused here before the interface refuses by its own rules.
 */
export function roleGate(kind: DoorKind): MiddlewareHandler<DoorEnv> {
  return async (c, next) => {
    const { role } = c.get("visitor");
    if (role === "owner") return next();
    const { path, method } = c.req;
    if (OWNERS_VIEW.test(path)) return refuse(c, "role-owner");
    if (method === "GET" || method === "HEAD" || HUNT.test(path)) return next();
    if (role === "view") return refuse(c, "role-view");
    if (kind !== "plain") return next();
    return CHANGE.test(path) ? ticksOnly(c, next) : refuse(c, "only-ticks");
  };
}

async function ticksOnly(
  c: Context<DoorEnv>,
  next: () => Promise<void>,
): Promise<Response | undefined> {
  // Read past the framework's own memory of the body, so that those behind read what is handed on.
  const body: unknown = await c.req.raw.json().catch(() => null);
  if (typeof body !== "object" || body === null) return refuse(c, "unreadable");
  const change = body as Readonly<Record<string, unknown>>;
  if (!areTicks(change.operations)) return refuse(c, "only-ticks");
  const kept = Object.fromEntries(
    HANDED_ON.filter((name) => Object.hasOwn(change, name)).map((name) => [name, change[name]]),
  );
  const { url, method, headers } = c.req.raw;
  const handed = new Headers(headers);
  handed.delete("content-length");
  c.req.raw = new Request(url, { method, headers: handed, body: JSON.stringify(kept) });
  await next();
}
