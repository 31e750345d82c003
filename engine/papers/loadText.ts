import { type Job, loadsOf } from "../job/index.ts";

/** Reads PART:A-B into words: "headlamp bulb, LO". */
export function loadReader(job: Job): (ref: string) => string {
  const loads = new Map(loadsOf(job).map((load) => [load.ref, load]));
  return (ref) => {
    const load = loads.get(ref);
    if (load === undefined) return ref;
    const several = loadsOf(job).filter((one) => one.part.id === load.part.id).length > 1;
    const [pin] = load.pins[0].split(".").slice(1);
    return several ? `${load.part.name}, ${pin}` : load.part.name;
  };
}
