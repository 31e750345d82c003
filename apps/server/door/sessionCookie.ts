import type { Context } from "hono";
import { getCookie, setCookie } from "hono/cookie";

/** A cookie is sent to every port of a machine, so each door's has a name of its own and two benches do not shut each other out. */
const nameOf = (port: number): string => `cw_session_${port}`;

/** A paired device stays paired: 400 days, the longest a browser keeps a cookie, renewed at each visit. */
const PAIRED_S = 400 * 24 * 3600;

export function readSession(c: Context, port: number): string | null {
  return getCookie(c, nameOf(port)) ?? null;
}

/** Never readable by a script, never sent from another site's page. */
export function giveSession(
  c: Context,
  port: number,
  secret: string,
  { isSecure, isLasting }: { readonly isSecure: boolean; readonly isLasting: boolean },
): void {
  setCookie(c, nameOf(port), secret, {
    httpOnly: true,
    sameSite: "Strict",
    path: "/",
    secure: isSecure,
    ...(isLasting ? { maxAge: PAIRED_S } : {}),
  });
}
