import { ENGINE_VERSION } from "@copperwright/engine";
import { Hono } from "hono";
import { HTTPException } from "hono/http-exception";
import * as z from "zod";
import manifest from "../package.json";
import { changeGate } from "./changeGate.ts";
import type { DoorEnv, DoorKind } from "./doorKind.ts";
import type { OwnSessions } from "./ownSessions.ts";
import { largestBody, readSmall, smallBody, ticksBody } from "./readSmall.ts";
import { refuse } from "./refuse.ts";
import { roleGate } from "./roleGate.ts";
import { SAFE_HEADERS } from "./safeHeaders.ts";
import { WHY_LIMITED } from "./sentences.ts";
import { giveSession, readSession } from "./sessionCookie.ts";
import type { Visitor } from "./visitor.ts";
import type { WebFiles } from "./webFiles.ts";
import { answerWeb } from "./webRoutes.ts";

/** What stands behind every door of a bench. */
export interface DoorParts {
  readonly sessions: OwnSessions;
  /** The owner, as written beside a revision, and this machine. */
  readonly owner: { readonly who: string; readonly device: string };
  /** Who was paired and has this secret, at this kind of door. */
  paired(secret: string, kind: DoorKind): Visitor | null;
  /** Routes that need no session: pairing, and the certificate. */
  open(kind: DoorKind, port: number): Hono;
  /** Routes under /api of sharing and of the interface. */
  readonly behind: readonly Hono<DoorEnv>[];
  readonly files: WebFiles;
  /** Faults of ours, for the window the bench runs in. */
  say(line: string): void;
}

const tokenSchema = z.object({ token: z.string().max(200) });

/** One door: everything is refused here that may not come in, before anything behind it sees the request. */
export function benchDoor(parts: DoorParts, kind: DoorKind, port: number): Hono<DoorEnv> {
  const app = new Hono<DoorEnv>();
  app.use("*", async (c, next) => {
    await next();
    for (const [name, value] of Object.entries(SAFE_HEADERS)) c.header(name, value);
    // Over a plain connection browsers pass it over, and complain.
    if (kind === "plain") c.header("cross-origin-opener-policy", undefined);
    if (c.req.path.startsWith("/api/")) c.header("cache-control", "no-store");
  });
  app.onError((error, c) => {
    if (error instanceof HTTPException) return error.getResponse();
    if (error instanceof SyntaxError) return refuse(c, "unreadable");
    parts.say(`A fault of ours at ${c.req.method} ${c.req.path}: ${error.stack ?? error.message}`);
    return refuse(c, "fault");
  });
  app.use("/api/*", changeGate(kind === "secure" ? "https" : "http"));
  app.post("/api/session", smallBody, async (c) => {
    if (kind !== "own") return refuse(c, "not-here");
    const body = await readSmall(c, tokenSchema);
    const secret = body === null ? null : parts.sessions.trade(body.token);
    if (secret === null) return refuse(c, "wrong-token");
    giveSession(c, port, secret, { isSecure: false, isLasting: false });
    return c.json({ ok: true });
  });
  app.route("/", parts.open(kind, port));
  knownOnly(app, parts, kind, port);
  for (const routes of parts.behind) app.route("/api", routes);
  app.all("/api/*", (c) => refuse(c, "not-found"));
  app.all("*", (c) => answerWeb(c, parts.files));
  return app;
}

/** From here on under /api there is a visitor, and a right. */
function knownOnly(app: Hono<DoorEnv>, parts: DoorParts, kind: DoorKind, port: number): void {
  app.use("/api/*", async (c, next) => {
    const secret = readSession(c, port);
    const visitor = secret === null ? null : visitorOf(secret, parts, kind);
    if (secret === null || visitor === null) return refuse(c, "no-session");
    c.set("visitor", visitor);
    await next();
    // A browser forgets a cookie that is never renewed.
    if (kind !== "own" && c.req.path === "/api/session") {
      giveSession(c, port, secret, { isSecure: kind === "secure", isLasting: true });
    }
  });
  const bounded = kind === "plain" ? ticksBody : largestBody;
  app.use("/api/*", bounded, roleGate(kind));
  app.get("/api/session", (c) =>
    c.json({
      ...c.get("visitor"),
      engineVersion: ENGINE_VERSION,
      appVersion: manifest.version,
      isSecure: kind !== "plain",
      whyLimited: kind === "plain" ? WHY_LIMITED : null,
    }),
  );
}

function visitorOf(secret: string, { sessions, owner, paired }: DoorParts, kind: DoorKind) {
  if (kind !== "own") return paired(secret, kind);
  return sessions.isOpen(secret) ? { ...owner, role: "owner" as const } : null;
}
