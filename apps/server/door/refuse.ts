import type { ServerResponse } from "node:http";
import type { Context } from "hono";
import { SAFE_HEADERS } from "./safeHeaders.ts";
import { REFUSALS, type RefusalCode } from "./sentences.ts";

/** A refusal as every page of the bench reads it. */
export function refuse(c: Context, code: RefusalCode): Response {
  const { status, message } = REFUSALS[code];
  return c.json({ ok: false, code, message }, status as 400);
}

/** The same where no framework has seen the request yet; the connection is not used again. */
export function refuseRaw(response: ServerResponse, code: RefusalCode): void {
  const { status, message } = REFUSALS[code];
  response.writeHead(status, {
    ...SAFE_HEADERS,
    "content-type": "application/json",
    "cache-control": "no-store",
    connection: "close",
  });
  response.end(JSON.stringify({ ok: false, code, message }));
}
