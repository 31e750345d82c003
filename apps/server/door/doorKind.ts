import type { Visitor } from "./visitor.ts";

/**
 * The three doors of a bench. `own` is this machine's loopback; `plain` and `secure` stand on the workshop's network while it is shared,
 * without and with TLS. A session works at the door that gave it and at no other: what was sent in the clear opens nothing secure.
 */
export type DoorKind = "own" | "plain" | "secure";

/** What the door lays beside each request for those behind it. */
export interface DoorEnv {
  readonly Variables: { visitor: Visitor };
}
