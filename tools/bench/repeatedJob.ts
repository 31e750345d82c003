import { readFileSync } from "node:fs";
import { join } from "node:path";
import { seededRandom } from "../../engine/geometry/index.ts";
import { type Job, readJob } from "../../engine/index.ts";
import { ROOT } from "../sourceFiles.ts";

type Json = Record<string, unknown>;

/** The accessory job over and over on one battery and frame: each copy with fuse, switch and two lamps, its lengths drawn by a seed. */
export function repeatedJob(wireCount: number, seed: number): Job {
  const text = readFileSync(join(ROOT, "demos/accessory-five-wires.json"), "utf8");
  const base = JSON.parse(text) as Record<string, Json[]> & Json;
  const random = seededRandom(seed);
  const copyCount = Math.ceil(wireCount / base.wires!.length);
  const shared = new Set(["BAT", "FRAME", "BE", "SPOTS", "SPOT"]);
  const copies = Array.from({ length: copyCount }, (_, k) => k);
  const renamed = <T>(value: T, k: number): T =>
    JSON.parse(
      JSON.stringify(value).replace(/"(F1|SPL|SPR|SW|BL|I1|I2|W\d)([.":])/g, `"$1_${k}$2`),
    ) as T;
  const each = (list: readonly Json[]): Json[] => [
    ...list.filter(({ id }) => shared.has(String(id))),
    ...copies.flatMap((k) =>
      list.filter(({ id }) => !shared.has(String(id))).map((one) => renamed(one, k)),
    ),
  ];
  const job = {
    ...base,
    parts: each(base.parts!),
    bonds: each(base.bonds!),
    intents: each(base.intents!),
    wires: each(base.wires!).map((wire) => ({
      ...wire,
      number: undefined,
      lengthMm: { value: Math.round(150 + 1500 * random()), basis: "estimated" },
    })),
    states: [],
    tests: [],
    build: [],
    layout: {},
  };
  const read = readJob(JSON.stringify(job));
  if (!read.ok) throw new Error(JSON.stringify(read.refusals[0]));
  return read.job;
}
