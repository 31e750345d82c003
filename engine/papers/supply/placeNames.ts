import type { Job } from "../../job/index.ts";

/** What a step of a current's way is called on paper: a wire by its number, anything else by what it belongs to. */
export function placeNames(job: Job): (of: string) => string {
  const names = new Map<string, string>();
  for (const { id, number } of job.wires) names.set(id, `wire ${number ?? id}`);
  for (const { id, name } of job.parts) names.set(id, name);
  for (const { id, name } of job.joints) names.set(id, name ?? `joint ${id}`);
  for (const { id } of job.connectors) names.set(id, `plug ${id}`);
  for (const { id, name } of job.bodies) names.set(id, name);
  for (const { id } of job.bonds) names.set(id, `bond ${id}`);
  return (of) => {
    const whole = names.get(of);
    if (whole !== undefined) return whole;
    const owner = of.split(/[:.]/)[0] ?? of;
    return names.get(owner) ?? of;
  };
}
