import type { Body, Job } from "./job.ts";

/** The mass that stands for earth: the frame; without one the engine; without either the first body by id. Null: no body at all. */
export function mainEarthBody(job: Job): Body | null {
  const byId = [...job.bodies].sort((a, b) => (a.id < b.id ? -1 : 1));
  return (
    byId.find((body) => body.kind === "frame") ??
    byId.find((body) => body.kind === "engine") ??
    byId[0] ??
    null
  );
}
