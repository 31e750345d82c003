import type { Problem } from "../check/problem.ts";
import { JOB_VERSION } from "../jobSchema.ts";
import { upgradeFrom0 } from "./upgradeFrom0.ts";

export type Upgraded =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** Step `n` takes a document of version n to version n + 1. */
const STEPS: readonly ((value: unknown) => Upgraded)[] = [upgradeFrom0];

/** A document of an older version as one of this version, one version at a time. */
export function upgradeJob(value: unknown, versionIndex: number): Upgraded {
  let upgraded: Upgraded = { ok: true, value };
  for (let n = versionIndex; n < JOB_VERSION && upgraded.ok; n++) {
    upgraded = STEPS[n]!(upgraded.value);
  }
  return upgraded;
}
