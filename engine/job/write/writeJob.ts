import type * as z from "zod";
import { fieldsOf, memberOf } from "../check/schemaAt.ts";
import type { Job } from "../job.ts";
import { jobSchema } from "../jobSchema.ts";
import { canonicalJob } from "./canonicalJob.ts";

type Schema = z.core.$ZodType;
type Fields = Readonly<Record<string, unknown>>;

/**
 * The canonical text of a job: fields in the schema's order, maps by key, lists as `canonicalJob` orders them, absent fields absent,
 * numbers as short as they read back exactly, one thing a line so that a comparison of two texts is readable, a newline at the end.
 * Reading it and writing it again gives the same bytes.
 */
export function writeJob(job: Job): string {
  return `${written(canonicalJob(job), jobSchema, "")}\n`;
}

function written(value: unknown, schema: Schema, indent: string): string {
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    if (!isOpened(value, schema, indent)) return onOneLine(value, schema);
    const items = value.map((item, i) => inner + written(item, memberSchema(schema, i), inner));
    return `[\n${items.join(",\n")}\n${indent}]`;
  }
  if (typeof value !== "object" || value === null || !isOpened(value, schema, indent)) {
    return onOneLine(value, schema);
  }
  const members = orderedMembers(value as Fields, schema).map(
    ([key, member, of]) => `${inner}${JSON.stringify(key)}: ${written(member, of, inner)}`,
  );
  return `{\n${members.join(",\n")}\n${indent}}`;
}

/** Broken over several lines: the document itself, and whatever holds a list or a map of things somewhere inside. */
function isOpened(value: object, schema: Schema, indent: string): boolean {
  return indent === "" || holdsThings(value, schema);
}

function holdsThings(value: unknown, schema: Schema): boolean {
  if (Array.isArray(value)) {
    return value.some((item, i) => isThing(item) || holdsThings(item, memberSchema(schema, i)));
  }
  if (!isThing(value)) return false;
  const isMap = fieldsOf(schema, value) === null;
  return orderedMembers(value, schema).some(
    ([, member, of]) => (isMap && isThing(member)) || holdsThings(member, of),
  );
}

const isThing = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);

function onOneLine(value: unknown, schema: Schema): string {
  if (Array.isArray(value)) {
    return `[${value.map((item, i) => onOneLine(item, memberSchema(schema, i))).join(", ")}]`;
  }
  if (typeof value !== "object" || value === null) return JSON.stringify(value);
  const members = orderedMembers(value as Fields, schema).map(
    ([key, member, of]) => `${JSON.stringify(key)}: ${onOneLine(member, of)}`,
  );
  return members.length === 0 ? "{}" : `{ ${members.join(", ")} }`;
}

function orderedMembers(value: Fields, schema: Schema): readonly [string, unknown, Schema][] {
  const fields = fieldsOf(schema, value);
  const keys = fields === null ? Object.keys(value).sort() : Object.keys(fields);
  return keys
    .filter((key) => Object.hasOwn(value, key))
    .map((key) => [key, value[key], fields === null ? memberSchema(schema, key) : fields[key]!]);
}

function memberSchema(schema: Schema, step: string | number): Schema {
  const member = memberOf(schema, step);
  if (member === null) throw new Error(`the schema says nothing about ${String(step)}`);
  return member;
}
