import type { MiddlewareHandler } from "hono";
import { refuse } from "./refuse.ts";
import type { RefusalCode } from "./sentences.ts";

const JSON_TYPE = /^application\/json\s*(;\s*charset=utf-8\s*)?$/i;

/** The part of a request these rules look at. */
export interface AskedHow {
  readonly method: string;
  header(name: string): string | undefined;
}

/**
 * Whether a request to the interface comes from the bench's own page. A page from elsewhere can send a form, but neither this content type
 * nor a header of its own without asking first, and it is never answered when it asks.
 *
 * @param scheme of this door
 */
export function changeRefusal(request: AskedHow, scheme: "http" | "https"): RefusalCode | null {
  const site = request.header("sec-fetch-site");
  if (site !== undefined && site !== "same-origin" && site !== "none") return "wrong-origin";
  if (request.method === "GET" || request.method === "HEAD") return null;
  // The Host is on the list by now.
  if (request.header("origin") !== `${scheme}://${request.header("host")}`) return "wrong-origin";
  if (!JSON_TYPE.test(request.header("content-type") ?? "")) return "not-json";
  if (request.header("x-copperwright") !== "1") return "no-mark";
  return null;
}

export function changeGate(scheme: "http" | "https"): MiddlewareHandler {
  return async (c, next) => {
    const code = changeRefusal(
      { method: c.req.method, header: (name) => c.req.header(name) },
      scheme,
    );
    if (code !== null) return refuse(c, code);
    await next();
  };
}
