import { applyOperation, type Job, type Operation } from "@copperwright/engine";
import { recordedReading } from "@copperwright/engine/scenes";
import * as z from "zod";

/** The file a take-away hands back. Everything in it is checked: it comes from outside. */
const ticksSchema = z.strictObject({
  copperwrightTicks: z.literal(1),
  job: z.string().max(32),
  // A number in take-aways of earlier versions.
  revision: z.union([z.string().max(20), z.number().int()]),
  fingerprint: z.string().max(128),
  by: z.string().min(1).max(40),
  date: z.string().regex(/^\d{4}-\d{2}-\d{2}$/),
  ticks: z
    .array(
      z.strictObject({
        subject: z.string().max(70),
        done: z.enum(["cut", "from-end", "to-end", "tested", "fitted", "joined"]),
      }),
    )
    .max(100_000),
  readings: z
    .array(
      z.strictObject({
        test: z.string().max(64),
        subject: z.string().max(140),
        unit: z.string().max(8),
        read: z.number(),
      }),
    )
    .max(100_000),
});

export type TicksRead =
  | {
      readonly ok: true;
      readonly operation: Operation | null;
      readonly tickCount: number;
      readonly readingCount: number;
      readonly knownCount: number;
    }
  | { readonly ok: false; readonly message: string };

const MOST_LETTERS = 5_000_000;

/** Ticks and readings as one operation on the job; what the job has already is left alone, and a reading of the same row takes the place of the old one. */
export function readTicks(job: Job, text: string): TicksRead {
  if (text.length > MOST_LETTERS) return refused("the file is larger than any take-away makes");
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return refused("it is not the file a take-away saves");
  }
  const read = ticksSchema.safeParse(json);
  if (!read.success)
    return refused(
      `it is not the file a take-away saves (${read.error.issues[0]?.path.join(".") ?? ""})`,
    );
  const file = read.data;
  if (file.job !== job.id)
    return refused(`it belongs to the job ${file.job}, and ${job.id} is on the bench`);
  const operations = [...tickOperations(job, file), ...readingOperations(job, file)];
  const counts = { tickCount: file.ticks.length, readingCount: file.readings.length };
  const knownCount =
    counts.tickCount + counts.readingCount - operations.filter(({ op }) => op === "add").length;
  if (operations.length === 0) return { ok: true, operation: null, ...counts, knownCount };
  const operation: Operation = { op: "batch", name: "ticks of a take-away", operations };
  const tried = applyOperation(job, operation);
  if (!tried.ok) return refused(tried.refusals[0]?.message ?? "the job would not read");
  return { ok: true, operation, ...counts, knownCount };
}

const refused = (why: string): TicksRead => ({
  ok: false,
  message: `The file was not taken: ${why}.`,
});

type TicksFile = z.infer<typeof ticksSchema>;

function tickOperations(job: Job, { ticks, by, date }: TicksFile): Operation[] {
  const known = new Set(job.build.map(({ subject, done }) => `${subject} ${done}`));
  const ids = idMaker(job);
  return ticks.flatMap(({ subject, done }): Operation[] => {
    const key = `${subject} ${done}`;
    if (known.has(key)) return [];
    known.add(key);
    return [{ op: "add", list: "build", item: { id: ids("t"), subject, done, by, date } }];
  });
}

function readingOperations(job: Job, { readings, by, date }: TicksFile): Operation[] {
  const ids = idMaker(job);
  return readings.flatMap(({ test, subject, unit, read }): Operation[] => {
    const record = recordedReading(unit, read);
    const old = job.tests.find((one) => one.test === test && one.subject === subject);
    if (old !== undefined && old.read === record.read && old.unit === record.unit) return [];
    const add: Operation = {
      op: "add",
      list: "tests",
      item: { id: ids("m"), test, subject, ...record, by, date },
    };
    return old === undefined ? [add] : [{ op: "remove", list: "tests", id: old.id }, add];
  });
}

/** Ids the job does not have yet, the same for the same job and file. */
function idMaker(job: Job): (letter: string) => string {
  const taken = new Set([...job.build, ...job.tests].map(({ id }) => id));
  let count = 0;
  return (letter) => {
    do count += 1;
    while (taken.has(`${letter}${count}`));
    return `${letter}${count}`;
  };
}
