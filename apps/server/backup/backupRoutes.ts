import { Hono } from "hono";
import { base64Bytes } from "../api/base64Bytes.ts";
import type { Bench, BenchEnv, BenchHono } from "../api/bench.ts";
import { atMost, BACKUP_BODY, readBody } from "../api/body.ts";
import { answerRefused, refuse } from "../api/refuse.ts";
import { backupSchema } from "../api/requestSchemas.ts";
import { ownerOnly } from "../api/roles.ts";
import { backupStream } from "./backupStream.ts";
import { readBackup } from "./readBackup.ts";

/** Everything as one file, and back again. */
export function backupRoutes({ storage, clock }: Bench): BenchHono {
  const app = new Hono<BenchEnv>();
  app.get("/backup", ownerOnly, (c) => {
    const madeAt = clock().toISOString();
    return c.body(backupStream(storage, madeAt), 200, {
      "content-type": "application/zip",
      "content-disposition": `attachment; filename="copperwright-${madeAt.slice(0, 10)}.zip"`,
      "x-content-type-options": "nosniff",
      "cache-control": "no-store",
    });
  });
  app.post("/backup/restore", ownerOnly, atMost(BACKUP_BODY), async (c) => {
    const read = await readBody(c, backupSchema);
    if (!read.ok) return answerRefused(c, read);
    const bytes = base64Bytes(read.body.base64);
    if (bytes === null) return refuse(c, "backup-unreadable", { fault: "it is not base64" });
    const backup = await readBackup(bytes);
    if (!backup.ok) return answerRefused(c, backup);
    return c.json({ ok: true, ...(await storage.restoreRows(backup.rows, backup.contents)) });
  });
  return app;
}
