import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { generateJobSchema } from "./jobSchema.ts";

type Schema = Readonly<Record<string, unknown>>;

const [[path, text] = ["", ""]] = [...generateJobSchema()];
const root: Schema = JSON.parse(text);

const isObject = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** Keywords the published schema uses; one it gained and this small validator lacks must fail, not pass unseen. */
const KNOWN = new Set(
  (
    "$schema title description $defs $ref id type properties required additionalProperties propertyNames items prefixItems " +
    "minItems maxItems enum const anyOf oneOf minimum maximum minLength maxLength pattern"
  ).split(" "),
);

/** Faults of a value by JSON Schema draft 2020-12, as far as the published schema goes: a reading of the standard, not of our reader. */
function faults(schema: Schema, value: unknown, at: string): readonly string[] {
  for (const key of Object.keys(schema)) if (!KNOWN.has(key)) throw new Error(`keyword ${key}`);
  if (typeof schema.$ref === "string") {
    const steps = schema.$ref.replace("#/", "").split("/");
    const target = steps.reduce<unknown>((here, step) => Reflect.get(here as object, step), root);
    return faults(target as Schema, value, at);
  }
  const choices = (schema.anyOf ?? schema.oneOf) as readonly Schema[] | undefined;
  if (choices !== undefined) {
    const fitting = choices.filter((choice) => faults(choice, value, at).length === 0);
    const isGood = schema.anyOf ? fitting.length > 0 : fitting.length === 1;
    return isGood ? [] : [`${at} fits ${fitting.length} of its choices`];
  }
  if (schema.const !== undefined)
    return value === schema.const ? [] : [`${at} is not the constant`];
  if (Array.isArray(schema.enum)) return schema.enum.includes(value) ? [] : [`${at} is no choice`];
  switch (schema.type) {
    case "object":
      return isObject(value) ? faultsOfObject(schema, value, at) : [`${at} is no object`];
    case "array":
      return Array.isArray(value) ? faultsOfList(schema, value, at) : [`${at} is no list`];
    case "string":
      return typeof value === "string" ? faultsOfText(schema, value, at) : [`${at} is no text`];
    case "boolean":
      return typeof value === "boolean" ? [] : [`${at} is no truth value`];
    default:
      return typeof value === "number" ? faultsOfNumber(schema, value, at) : [`${at} is no number`];
  }
}

function faultsOfObject(schema: Schema, value: Readonly<Record<string, unknown>>, at: string) {
  const properties = (schema.properties ?? {}) as Readonly<Record<string, Schema>>;
  const missing = ((schema.required ?? []) as readonly string[])
    .filter((key) => !Object.hasOwn(value, key))
    .map((key) => `${at} lacks ${key}`);
  const inside = Object.entries(value).flatMap(([key, member]) => {
    const here = `${at}/${key}`;
    const names = schema.propertyNames ? faults(schema.propertyNames as Schema, key, here) : [];
    const property = properties[key];
    if (property !== undefined) return [...names, ...faults(property, member, here)];
    if (schema.additionalProperties === false) return [`${here} is unknown`];
    return [...names, ...faults(schema.additionalProperties as Schema, member, here)];
  });
  return [...missing, ...inside];
}

function faultsOfList(schema: Schema, value: readonly unknown[], at: string): readonly string[] {
  const first = (schema.prefixItems ?? []) as readonly Schema[];
  const bounds = value.length < ((schema.minItems ?? 0) as number) ? [`${at} is too short`] : [];
  const most = (schema.maxItems ?? Number.POSITIVE_INFINITY) as number;
  const long = value.length > most ? [`${at} is too long`] : [];
  const items = value.flatMap((item, i) => {
    const of = first[i] ?? (schema.items as Schema | undefined);
    return of === undefined ? [] : faults(of, item, `${at}/${i}`);
  });
  return [...bounds, ...long, ...items];
}

function faultsOfText(schema: Schema, value: string, at: string): readonly string[] {
  const isForm = new RegExp((schema.pattern ?? "") as string, "u").test(value);
  const most = (schema.maxLength ?? Number.POSITIVE_INFINITY) as number;
  const isLength = value.length <= most && value.length >= ((schema.minLength ?? 0) as number);
  return isForm && isLength ? [] : [`${at} has not the form`];
}

function faultsOfNumber(schema: Schema, value: number, at: string): readonly string[] {
  const least = (schema.minimum ?? Number.NEGATIVE_INFINITY) as number;
  const most = (schema.maximum ?? Number.POSITIVE_INFINITY) as number;
  const isWhole = schema.type !== "integer" || Number.isInteger(value);
  return isWhole && value >= least && value <= most ? [] : [`${at} is out of bounds`];
}

describe("the published schema of the job", () => {
  test("is what the generator makes", () => {
    expect(readFileSync(path, "utf8")).toBe(text);
  });

  const jobs = [
    ...readdirSync("demos").map((name) => `demos/${name}`),
    ...readdirSync("cases/reference-machines").map((n) => `cases/reference-machines/${n}/job.json`),
  ].filter((name) => name.endsWith(".json") && existsSync(name));

  for (const name of jobs) {
    test(`${name} is valid by it`, () => {
      expect(faults(root, JSON.parse(readFileSync(name, "utf8")), "")).toEqual([]);
    });
  }

  const demo = () => JSON.parse(readFileSync("demos/accessory-five-wires.json", "utf8"));

  test("it finds what is missing, unknown, of the wrong sort and out of bounds", () => {
    const job = demo();
    delete job.date;
    job.wires[0].lenght = 1;
    job.wires[1].lengthMm.value = "950";
    job.machine.year = 1066;
    expect([...faults(root, job, "")].sort()).toEqual([
      " lacks date",
      "/machine/year is out of bounds",
      "/wires/0/lenght is unknown",
      "/wires/1/lengthMm/value is no number",
    ]);
    const part = demo();
    part.parts[1].ratingA = "15 mA";
    expect(faults(root, part, "")).toEqual(["/parts/1 fits 0 of its choices"]);
  });
});
