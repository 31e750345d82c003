import * as z from "zod";
import type { JsonPath } from "../read/jsonPointer.ts";

type Schema = z.core.$ZodType;

/** The schema itself, without the wrapping that says it may be absent. */
export function unwrapped(schema: Schema): Schema {
  return schema instanceof z.ZodOptional ? unwrapped(schema.unwrap()) : schema;
}

/** The fields an object of this schema has, in the schema's order; of a union, those of the kind the value says it is. */
export function fieldsOf(schema: Schema, value: unknown): Readonly<Record<string, Schema>> | null {
  const bare = unwrapped(schema);
  if (bare instanceof z.ZodObject) return bare.shape as Record<string, Schema>;
  if (bare instanceof z.ZodDiscriminatedUnion) {
    const key = bare.def.discriminator;
    const kind = typeof value === "object" && value !== null && Reflect.get(value, key);
    for (const option of bare.options) {
      const fields = option instanceof z.ZodObject ? (option.shape as Record<string, Schema>) : {};
      const tag = fields[key];
      const kinds = tag instanceof z.ZodLiteral ? [...tag.values] : tagWords(tag);
      if (kinds.includes(kind)) return fields;
    }
  }
  return null;
}

const tagWords = (tag: Schema | undefined): readonly unknown[] =>
  tag instanceof z.ZodEnum ? tag.options : [];

/** What the members of a list, pair or map of this schema are; null for anything else. */
export function memberOf(schema: Schema, step: string | number): Schema | null {
  const bare = unwrapped(schema);
  if (bare instanceof z.ZodArray) return bare.element;
  if (bare instanceof z.ZodRecord) return bare.valueType;
  if (bare instanceof z.ZodTuple) return bare.def.items[Number(step)] ?? null;
  return null;
}

/** The schema that governs a place of a document; null where the document has no such place. */
export function schemaAt(schema: Schema, root: unknown, path: JsonPath): Schema | null {
  let here: Schema | null = schema;
  let value = root;
  for (const step of path) {
    if (here === null) return null;
    const fields: Readonly<Record<string, Schema>> | null = fieldsOf(here, value);
    const isField = fields !== null && Object.hasOwn(fields, step);
    here = isField ? fields[step]! : memberOf(here, step);
    const isHolder = typeof value === "object" && value !== null && Object.hasOwn(value, step);
    value = isHolder ? Reflect.get(value as object, step) : undefined;
  }
  return here === null ? null : unwrapped(here);
}
