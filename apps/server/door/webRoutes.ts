import type { Context } from "hono";
import { refuse } from "./refuse.ts";
import type { WebFiles } from "./webFiles.ts";

const NOT_BUILT = `<!doctype html><html lang="en"><meta charset="utf-8"><title>Copperwright</title>
<h1>The page of the bench is not built</h1>
<p>The server runs, but the files of its page are missing. In the program's folder run <code>npx tsx tools/build.ts</code>, then start the bench again.</p></html>`;

/** Answers a path outside /api: a file of the web app, or its page for an address of the app's own making. */
export async function answerWeb(c: Context, files: WebFiles): Promise<Response> {
  if (c.req.method !== "GET" && c.req.method !== "HEAD") return refuse(c, "wrong-method");
  const request = {
    accepted: c.req.header("accept-encoding") ?? "",
    ifNoneMatch: c.req.header("if-none-match"),
  };
  const path = decoded(c.req.path);
  if (path === null) return refuse(c, "not-found");
  const asked = path === "/" ? "/index.html" : path;
  const file = await files.answer(asked, request);
  if (file !== null) return file;
  // A name with an ending is a file that is not there; anything else is the app's to make sense of.
  if (/\.[A-Za-z0-9]+$/.test(path) && path !== "/index.html") return refuse(c, "not-found");
  const page = await files.answer("/index.html", request);
  return page ?? c.html(NOT_BUILT, 503);
}

function decoded(path: string): string | null {
  try {
    return decodeURIComponent(path);
  } catch {
    return null;
  }
}
