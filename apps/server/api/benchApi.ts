import { Hono } from "hono";
import { HTTPException } from "hono/http-exception";
import { backupRoutes } from "../backup/backupRoutes.ts";
import { exerciseRoutes } from "../exercise/exerciseRoutes.ts";
import { priceRoutes } from "../prices/priceRoutes.ts";
import type { Storage } from "../storage/index.ts";
import type { Bench, BenchEnv, BenchHono } from "./bench.ts";
import { changeRoutes } from "./changeRoutes.ts";
import { conflictRoutes } from "./conflictRoutes.ts";
import { jobRoutes } from "./jobRoutes.ts";
import { listRoutes } from "./listRoutes.ts";
import { oneAtATime } from "./oneAtATime.ts";
import { photographRoutes } from "./photographRoutes.ts";
import { refuse } from "./refuse.ts";

/**
 * The interface of the bench, to be mounted under /api behind the door: whoever gets here has a `visitor`, and each operation is
 * refused to a role that may not do it. Every body is read by a schema within a bound before anything is done with it.
 */
export function benchApi(storage: Storage, clock: () => Date): BenchHono {
  const bench: Bench = { storage, clock };
  const inTurn = oneAtATime();
  const app = new Hono<BenchEnv>();
  app.onError((error, c) => {
    if (error instanceof HTTPException) return error.getResponse();
    // The stack says what the server did, not what anybody sent.
    console.error(error.stack ?? String(error));
    return refuse(c, "server-trouble", {});
  });
  app.route("/", listRoutes(bench));
  app.route("/", jobRoutes(bench));
  app.route("/", changeRoutes(bench, inTurn));
  app.route("/", conflictRoutes(bench, inTurn));
  app.route("/", photographRoutes(bench));
  app.route("/", exerciseRoutes(bench));
  app.route("/", priceRoutes(bench));
  app.route("/", backupRoutes(bench));
  return app;
}
