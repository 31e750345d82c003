import * as z from "zod";
import { type Refusal, refusal, valueInWords } from "../../messages/index.ts";
import { idSchema, nameSchema } from "../idSchema.ts";
import { EDITED_LISTS, type Operation } from "./operation.ts";

const MOST_STEPS_COUNT = 100_000;
const DEEPEST_BATCH_COUNT = 8;

const listSchema = z.enum(EDITED_LISTS);
const stepSchema = z.union([z.string().max(200), z.number().int().min(0)]);

const oneSchema = z.discriminatedUnion("op", [
  z.strictObject({ op: z.literal("add"), list: listSchema, item: z.unknown() }),
  z.strictObject({ op: z.literal("remove"), list: listSchema, id: idSchema }),
  z.strictObject({
    op: z.literal("set"),
    list: z.enum([...EDITED_LISTS, "job"]),
    id: idSchema.optional(),
    path: z.array(stepSchema).min(1).max(32),
    value: z.unknown().optional(),
  }),
  z.strictObject({ op: z.literal("batch"), name: nameSchema, operations: z.array(z.unknown()) }),
]);

export type OperationRead =
  | { readonly ok: true; readonly operation: Operation }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** An operation as it came from outside, checked for its form. Batches are walked with a list of what is waiting, not by recursion. */
export function readOperation(value: unknown): OperationRead {
  const waiting = [{ value, pointer: "", depthCount: 0 }];
  let stepCount = 0;
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    stepCount++;
    const { pointer, depthCount } = next;
    const place = { pointer, line: null, found: valueInWords(next.value) };
    if (stepCount > MOST_STEPS_COUNT || depthCount > DEEPEST_BATCH_COUNT) {
      const words = { limitCount: MOST_STEPS_COUNT, depthCount: DEEPEST_BATCH_COUNT };
      return { ok: false, refusals: [refusal("edit-too-large", place, words)] };
    }
    const read = oneSchema.safeParse(next.value);
    const fault = read.success ? misfit(read.data) : faultOf(read.error.issues);
    if (fault !== null) {
      return { ok: false, refusals: [refusal("edit-unreadable", place, { fault })] };
    }
    if (read.data?.op !== "batch") continue;
    for (const [i, inner] of read.data.operations.entries()) {
      const at = `${pointer}/operations/${i}`;
      waiting.push({ value: inner, pointer: at, depthCount: depthCount + 1 });
    }
  }
  return { ok: true, operation: value as Operation };
}

function faultOf(issues: readonly z.core.$ZodIssue[]): string {
  return issues
    .slice(0, 3)
    .map((issue) => `${issue.path.join(".") || "the operation"}: ${issue.message}`)
    .join("; ");
}

/** What the schema of one operation cannot say. */
function misfit(operation: z.infer<typeof oneSchema>): string | null {
  if (operation.op !== "set") return null;
  const isOfJob = operation.list === "job";
  if (isOfJob === (operation.id === undefined)) return null;
  return isOfJob ? "the job itself is named by no id" : "the id of the item is missing";
}
