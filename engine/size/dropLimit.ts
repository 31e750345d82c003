import type { DropClass, Job } from "../job/index.ts";
import { type Figure, figure } from "../tables/index.ts";

/** Row of tables/voltDropLimits for each drop class of a circuit. */
const rowOf = {
  headlamp: "headlamp",
  "tail-signal": "tail-signal",
  ignition: "ignition",
  charge: "charge",
  starter: "starter",
  "starter-control": "solenoid-control",
  horn: "other",
  accessory: "other",
  earth: "other",
  "main-feed": "other",
  kill: "other",
  "ac-lighting": "other",
} as const satisfies Record<DropClass, string>;

export interface DropLimit {
  readonly dropClass: DropClass;
  /** From the battery post to the load and back, V. */
  readonly limitV: number;
  /** What of it the wires may take, V; the rest is for contacts. */
  readonly wireShareV: number;
  readonly limit: Figure;
  /** True where the job's own decision stands in place of the table. */
  readonly decided: boolean;
}

/**
 * Volt-drop limit of a class, feed and return together. 6 V has rows of its own (half the volts); other systems keep the
 * per cent of 12 V. A person's limit keeps the table's shares of wire and contact.
 */
export function dropLimitOf(job: Job, dropClass: DropClass): DropLimit {
  const { nominalV } = job.supply;
  const at6V = nominalV === 6;
  const row = rowOf[dropClass];
  const limit = figure("voltDropLimits", row, at6V ? "limit6V" : "limit12V");
  const share = figure("voltDropLimits", row, at6V ? "wireShare6V" : "wireShare12V");
  const scaleRatio = at6V ? 1 : nominalV / 12;
  const decided = job.decisions.dropLimits?.find((one) => one.dropClass === dropClass);
  const limitV = decided?.limitV ?? limit.value * scaleRatio;
  return {
    dropClass,
    limitV,
    wireShareV: (limitV * share.value) / limit.value,
    limit,
    decided: decided !== undefined,
  };
}

/**
 * The class that limits a load: of the circuits of the wires on its own pins the strictest that says something of the
 * load; a pin with only earth or main feed on it says nothing.
 */
export function dropClassOf(job: Job, circuits: readonly string[]): DropClass {
  const silent: ReadonlySet<DropClass> = new Set(["earth", "main-feed"]);
  const classes = job.circuits
    .filter(({ id }) => circuits.includes(id))
    .map(({ dropClass }) => dropClass)
    .filter((dropClass) => !silent.has(dropClass))
    .sort((a, b) => dropLimitOf(job, a).wireShareV - dropLimitOf(job, b).wireShareV);
  return classes[0] ?? "accessory";
}
