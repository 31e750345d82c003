import type { MiddlewareHandler } from "hono";
import type { BenchEnv } from "./bench.ts";
import { refuse } from "./refuse.ts";

/** Lets by those who may change jobs. */
export const mayEdit: MiddlewareHandler<BenchEnv> = async (c, next) => {
  if (c.get("visitor").role === "view") return refuse(c, "role-view", {});
  await next();
};

/** Lets by those who may see what the shop pays: whoever may change jobs. */
export const maySeePrices: MiddlewareHandler<BenchEnv> = async (c, next) => {
  if (c.get("visitor").role === "view") return refuse(c, "role-prices", {});
  await next();
};

/** Lets by the owner alone. */
export const ownerOnly: MiddlewareHandler<BenchEnv> = async (c, next) => {
  if (c.get("visitor").role !== "owner") return refuse(c, "role-owner", {});
  await next();
};
