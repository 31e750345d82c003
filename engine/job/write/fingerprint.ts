import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import type { Job } from "../job.ts";
import { writeJob } from "./writeJob.ts";

/** SHA-256 of the job's canonical text as UTF-8, in hexadecimal: the same for two files that say the same thing. Source: FIPS 180-4. */
export function fingerprint(job: Job): string {
  return bytesToHex(sha256(utf8ToBytes(writeJob(job))));
}
