import { Hono } from "hono";
import * as z from "zod";
import type { DoorEnv, DoorKind } from "../door/doorKind.ts";
import { readSmall, smallBody } from "../door/readSmall.ts";
import { refuse } from "../door/refuse.ts";
import { giveSession } from "../door/sessionCookie.ts";
import { AUTHORITY_STYLE, authorityPage } from "./authorityPage.ts";
import type { Devices } from "./devices.ts";
import { INSTALL_GUIDES } from "./installGuide.ts";
import type { OwnCertificates } from "./ownCertificates.ts";
import type { Pairing } from "./pairing.ts";
import { type Sharing, settingSchema } from "./sharing.ts";

export interface ShareParts {
  readonly sharing: Sharing;
  readonly devices: Devices;
  readonly pairing: Pairing;
  readonly certificates: OwnCertificates;
}

const roleSchema = z.strictObject({ role: z.enum(["edit", "view"]) });
const pairSchema = z.object({ code: z.string().max(40), deviceName: z.string().max(200) });
/** Letters, figures and plain signs: nothing that hides or turns text round. */
const NAME = /^[\p{L}\p{M}\p{N} .,'’()_-]{1,40}$/u;

/** Routes without a session: a device that has a code, and one that wants the certificate. */
export function openRoutes(parts: ShareParts, kind: DoorKind, port: number): Hono {
  const { sharing, devices, pairing, certificates } = parts;
  const app = new Hono();
  app.post("/api/pair", smallBody, async (c) => {
    if (kind === "own") return refuse(c, "pair-elsewhere");
    const body = await readSmall(c, pairSchema);
    if (body === null) return refuse(c, "unreadable");
    // The name first: a mistake in it must not use up the code.
    const name = body.deviceName.trim();
    if (!NAME.test(name)) return refuse(c, "device-name");
    if (devices.isTaken(name)) return refuse(c, "device-name-taken");
    const tried = pairing.attempt(body.code);
    if (!tried.ok) return refuse(c, tried.code);
    const isSecure = kind === "secure";
    const added = devices.add({ name, role: tried.role, isSecure });
    if (!added.ok) return refuse(c, added.code);
    giveSession(c, port, added.secret, { isSecure, isLasting: true });
    return c.json({ ok: true });
  });
  app.get("/authority", (c) =>
    c.html(authorityPage(certificates.line(), sharing.state().secureAddress)),
  );
  app.get("/authority.css", (c) =>
    c.body(AUTHORITY_STYLE, 200, { "content-type": "text/css; charset=utf-8" }),
  );
  app.get("/authority.crt", (c) => {
    const bytes = certificates.authorityBytes();
    if (bytes === null) return refuse(c, "not-found");
    return c.body(new Uint8Array(bytes), 200, {
      "content-type": "application/x-x509-ca-cert",
      "content-disposition": 'attachment; filename="copperwright-authority.crt"',
      "cache-control": "no-store",
    });
  });
  return app;
}

/** Routes under /api for the owner, on this machine: the door lets nobody else as far as here. */
export function shareRoutes({ sharing, devices, pairing }: ShareParts): Hono<DoorEnv> {
  const app = new Hono<DoorEnv>();
  app.use("/sharing/*", smallBody);
  app.use("/devices/*", smallBody);
  const answer = () => ({ ...sharing.state(), guides: INSTALL_GUIDES });
  app.get("/sharing", (c) => c.json(answer()));
  app.post("/sharing", async (c) => {
    const change = await readSmall(c, settingSchema.partial());
    if (change === null) return refuse(c, "wrong-setting");
    const code = await sharing.change(given(change));
    if (change.isOn === false) pairing.cancel();
    return code === null ? c.json(answer()) : refuse(c, code);
  });
  app.post("/sharing/codes", async (c) => {
    const body = await readSmall(c, roleSchema);
    if (body === null) return refuse(c, "wrong-setting");
    return c.json(pairing.make(body.role));
  });
  app.post("/sharing/authority", async (c) => {
    const code = await sharing.makeAuthority();
    return code === null ? c.json(answer()) : refuse(c, code);
  });
  app.post("/sharing/authority/remove", async (c) => {
    await sharing.removeAuthority();
    return c.json(answer());
  });
  app.get("/devices", (c) => c.json({ devices: devices.list() }));
  app.post("/devices/:id/revoke", (c) =>
    devices.revoke(c.req.param("id")) ? c.json({ ok: true }) : refuse(c, "no-device"),
  );
  return app;
}

/** A field that is absent leaves what was set. */
function given<T extends object>(change: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(
    Object.entries(change).filter(([, value]) => value !== undefined),
  ) as never;
}
