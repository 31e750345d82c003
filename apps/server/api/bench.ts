import type { Context, Hono } from "hono";
import type { Visitor } from "../door/visitor.ts";
import type { Hand, Storage } from "../storage/index.ts";

export interface BenchEnv {
  readonly Variables: { visitor: Visitor };
}

export type BenchHono = Hono<BenchEnv>;
export type BenchContext = Context<BenchEnv>;

/** What every route works with. */
export interface Bench {
  readonly storage: Storage;
  readonly clock: () => Date;
}

/** Who saves, from where, and when. */
export function handOf(c: BenchContext, { clock }: Bench): Hand {
  const { who, device } = c.get("visitor");
  return { who, device, at: clock().toISOString() };
}
