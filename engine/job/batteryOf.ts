import type { Job, PartOf } from "./job.ts";
import { pinRef } from "./pinsOf.ts";

export interface BatteryPosts {
  readonly battery: PartOf<"battery">;
  /** Pin reference of the post `supply.earthPolarity` says is joined to the frame. */
  readonly earthedPost: string;
  readonly livePost: string;
}

/** Every battery that will be on the machine, by id. */
export function batteriesOf(job: Job): readonly BatteryPosts[] {
  return job.parts
    .filter((part) => part.kind === "battery")
    .filter((part) => part.status !== "remove")
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map((battery) => {
      const positive = pinRef(battery.id, battery.positivePin);
      const negative = pinRef(battery.id, battery.negativePin);
      return job.supply.earthPolarity === "positive"
        ? { battery, earthedPost: positive, livePost: negative }
        : { battery, earthedPost: negative, livePost: positive };
    });
}

/**
 * The battery whose earthed post is the reference for every voltage; null where there is none.
 * Of several (two in series) it is the one whose earthed post a wire or bond joins straight to a body, else the first by id.
 */
export function batteryOf(job: Job): BatteryPosts | null {
  const batteries = batteriesOf(job);
  if (batteries.length <= 1) return batteries[0] ?? null;
  const bodies = new Set(job.bodies.map((body) => body.id));
  const isOnBody = (ref: string): boolean => bodies.has(ref.slice(0, ref.indexOf(".")));
  const joins = [...job.wires.filter((wire) => wire.status !== "remove"), ...job.bonds];
  const isEarthed = (post: string): boolean =>
    joins.some(
      ({ from, to }) => (from === post && isOnBody(to)) || (to === post && isOnBody(from)),
    );
  return batteries.find(({ earthedPost }) => isEarthed(earthedPost)) ?? batteries[0] ?? null;
}
