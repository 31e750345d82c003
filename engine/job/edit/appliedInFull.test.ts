import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, it } from "vitest";
import { checkJob } from "../check/checkJob.ts";
import { listRefusals } from "../check/listRefusals.ts";
import type { Job } from "../job.ts";
import { readJob } from "../read/readJob.ts";
import { canonicalJob } from "../write/canonicalJob.ts";
import { applyOperation } from "./applyOperation.ts";
import type { Operation } from "./operation.ts";

const read = readJob(
  readFileSync(new URL("../../../demos/orivesta-enduro.json", import.meta.url), "utf8"),
);
if (!read.ok) throw new Error(read.refusals[0]!.message);
const { job } = read;

/** Values that suit some fields and not others: about as many edits are refused as are not. */
const values = fc.oneof(
  fc.constantFrom("red", "FR.hub", "new", "ignition", "thin-1.0", "", 12, -1, true, null),
  fc.constant({ main: "red" }),
  fc.constant({ make: "thin-1.5", basis: "chosen" }),
  fc.constant({ value: 400, basis: "measured" }),
  fc.constant({ value: -400, basis: "measured" }),
);
const fields = fc.constantFrom(
  ...[
    "note",
    "name",
    "colour",
    "size",
    "lengthMm",
    "from",
    "to",
    "status",
    "circuit",
    "pins",
    "other",
  ],
);
const LISTS = ["wires", "parts", "runs", "joints", "circuits"] as const;
type Edited = (typeof LISTS)[number];
/** One field of one thing set, or the thing taken away where there is no field. */
interface Edit {
  readonly list: Edited;
  readonly id: string;
  readonly field: string | null;
  readonly value: unknown;
}
const edits = fc
  .tuple(fc.constantFrom(...LISTS), fc.nat(), fc.option(fields, { freq: 4 }), values)
  .map(([list, k, field, value]): Edit => {
    const items: readonly { readonly id: string }[] = job[list];
    return { list, id: items[k % items.length]!.id, field, value };
  });

const operationOf = ({ list, id, field, value }: Edit): Operation =>
  field === null ? { op: "remove", list, id } : { op: "set", list, id, path: [field], value };

/** The same done by hand, and the whole of it looked at as a document nobody knows. */
function inFull(edit: Edit) {
  const { list, id, field, value } = edit;
  const items: readonly { readonly id: string }[] = job[list];
  const edited =
    field === null
      ? items.filter((item) => item.id !== id)
      : items.map((item) => (item.id === id ? { ...item, [field]: value } : item));
  return checkJob(structuredClone({ ...job, [list]: edited }));
}

it("an edit is taken where the whole document would be, and refused where it would be", () => {
  const counts = { taken: 0, refused: 0 };
  fc.assert(
    fc.property(edits, (edit) => {
      const applied = applyOperation(job, operationOf(edit));
      const whole = inFull(edit);
      counts[whole.ok ? "taken" : "refused"]++;
      expect(applied.ok).toBe(whole.ok);
      if (applied.ok && whole.ok) expect(applied.job).toEqual(canonicalJob(whole.job));
      if (!applied.ok && !whole.ok) {
        expect(applied.refusals).toEqual(listRefusals(whole.problems, () => null));
      }
    }),
    { numRuns: 150, seed: 20261125 },
  );
  expect(Math.min(counts.taken, counts.refused)).toBeGreaterThan(10);
});

it("a thing that was looked at before is taken as it is, a copy of it is looked at", () => {
  const [first, ...others] = job.wires;
  const broken = { ...first!, colour: "no colour" } as unknown as Job["wires"][number];
  const copied = { ...job, wires: [broken, ...others] };
  expect(checkJob(copied, job).ok).toBe(false);
  const kept = checkJob({ ...job, wires: others }, job);
  expect(kept.ok && canonicalJob(kept.job)).toEqual(canonicalJob({ ...job, wires: others }));
});
