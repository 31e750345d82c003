import { type Refusal, refusal, valueInWords } from "../../messages/index.ts";
import { checkJob } from "../check/checkJob.ts";
import { listRefusals, MOST_LISTED_COUNT, restOf } from "../check/listRefusals.ts";
import type { Job } from "../job.ts";
import { JOB_VERSION } from "../jobSchema.ts";
import { upgradeJob } from "../upgrade/upgradeJob.ts";
import { canonicalJob } from "../write/canonicalJob.ts";
import { fingerprint } from "../write/fingerprint.ts";
import { lineAt } from "./placesInText.ts";
import { readJson } from "./readJson.ts";
import { scanText } from "./scanText.ts";

export type JobRead =
  | {
      readonly ok: true;
      readonly job: Job;
      /** Version the text was written in, when it was an older one; null otherwise. */
      readonly upgradedFrom: number | null;
      readonly fingerprint: string;
    }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

const refused = (...refusals: readonly Refusal[]): JobRead => ({ ok: false, refusals });

/**
 * A job from the text of its file. Never throws: whatever is wrong comes back as refusals, each with its pointer and its line (null
 * for a document that had to be upgraded first, where only the pointer into the upgraded document is known). All problems of one
 * stage are listed at once, at most 200: first the text as JSON, then every field, then what fields refer to.
 * A byte-order mark at the beginning is passed over. The job comes back in canonical order.
 */
export function readJob(text: string): JobRead {
  const whole = { pointer: "", line: null, found: valueInWords(text) };
  if (typeof text !== "string") return refused(refusal("text-not-text", whole, {}));
  const bare = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  const unsafe = scanText(bare);
  if (unsafe !== null) return refused(unsafe);
  if (bare.trim() === "") return refused(refusal("text-empty", { ...whole, found: "nothing" }, {}));
  const read = readJson(bare);
  if (!read.ok) return refused(...shortened(read.refusals));
  const version = versionOf(read.value, lineAt(read.value, read.lines, ["copperwrightJob"]));
  if (typeof version !== "number") return refused(version);

  const upgraded = upgradeJob(read.value, version);
  const document = upgraded.ok ? upgraded.value : read.value;
  const lineOf = (path: readonly (string | number)[]) => lineAt(document, read.lines, path);
  if (!upgraded.ok) return refused(...listRefusals(upgraded.problems, lineOf));
  const checked = checkJob(upgraded.value);
  if (!checked.ok) {
    const isUpgraded = version !== JOB_VERSION;
    return refused(...listRefusals(checked.problems, isUpgraded ? () => null : lineOf));
  }
  const job = canonicalJob(checked.job);
  const upgradedFrom = version === JOB_VERSION ? null : version;
  return {
    ok: true,
    job,
    upgradedFrom,
    // Reckoned when it is asked for: a verdict never needs it.
    get fingerprint() {
      return fingerprint(job);
    },
  };
}

function shortened(refusals: readonly Refusal[]): readonly Refusal[] {
  const count = refusals.length - MOST_LISTED_COUNT;
  return count > 0 ? [...refusals.slice(0, MOST_LISTED_COUNT), restOf(count)] : refusals;
}

/** The document's version, or why it cannot be read by this program. */
function versionOf(value: unknown, line: number | null): number | Refusal {
  const isObject = typeof value === "object" && value !== null && !Array.isArray(value);
  if (!isObject) {
    return refusal("job-not-object", { pointer: "", line: 1, found: valueInWords(value) }, {});
  }
  const version: unknown = Reflect.get(value, "copperwrightJob");
  const place = { pointer: "/copperwrightJob", line, found: valueInWords(version) };
  const words = { version: JOB_VERSION };
  if (version === undefined) return refusal("job-no-version", place, words);
  if (typeof version !== "number" || !Number.isInteger(version) || version < 0) {
    return refusal("job-version-unreadable", place, words);
  }
  return version > JOB_VERSION ? refusal("job-newer-version", place, words) : version;
}
