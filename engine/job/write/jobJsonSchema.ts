import * as z from "zod";
import { JOB_VERSION, jobSchema } from "../jobSchema.ts";

/**
 * The document as a JSON Schema (draft 2020-12), so that any editor that knows one completes and checks a job while it is typed.
 * What fields refer to (ids that must exist, rows of tables) is beyond a schema and checked by `readJob`.
 */
export function jobJsonSchema(): Readonly<Record<string, unknown>> {
  const schema = z.toJSONSchema(jobSchema, {
    target: "draft-2020-12",
    reused: "ref",
    override: ({ zodSchema, jsonSchema }) => {
      // A pair is exactly two: prefixItems alone would let a shorter or longer list pass.
      if (zodSchema instanceof z.ZodTuple) {
        jsonSchema.minItems = zodSchema.def.items.length;
        jsonSchema.maxItems = zodSchema.def.items.length;
      }
    },
  });
  const { $schema, ...rest } = schema;
  return {
    $schema,
    title: `Copperwright job, version ${JOB_VERSION}`,
    description:
      "A motorcycle's wiring as it is and as it shall be: facts, plan, decisions and record. Results are never stored.",
    ...rest,
  };
}
