import type * as z from "zod";
import { nearestWord, quoted, valueInWords } from "../../messages/index.ts";
import type { JsonPath } from "../read/jsonPointer.ts";
import { fieldUnit, typedQuantity } from "./fieldUnit.ts";
import { placeInWords, valueAt } from "./placeInWords.ts";
import { type Problem, problem } from "./problem.ts";
import { fieldsOf, schemaAt } from "./schemaAt.ts";

type Issue = z.core.$ZodIssue;

/** What the schema found wrong, each in words about the document and none about the schema. */
export function fieldProblems(
  schema: z.core.$ZodType,
  root: unknown,
  issues: readonly Issue[],
): readonly Problem[] {
  return issues.flatMap((issue) => problemsOf(schema, root, issue));
}

function problemsOf(schema: z.core.$ZodType, root: unknown, issue: Issue): readonly Problem[] {
  const path = issue.path.filter((step) => typeof step !== "symbol");
  const value = valueAt(root, path);
  const place = () => placeInWords(root, path);
  switch (issue.code) {
    case "invalid_type":
      return [wrongSort(schema, root, path, issue.expected)];
    case "unrecognized_keys":
      return issue.keys.map((key) => unknownField(schema, root, path, key));
    case "invalid_value":
      return [notAChoice(root, path, issue.values.map(String))];
    case "invalid_union":
      return [notAChoice(root, path, choicesOf(issue))];
    case "too_small":
    case "too_big":
      return [outOfBounds(root, path, issue)];
    case "invalid_format":
      return [
        problem("field-bad-form", path, valueInWords(value), () => ({
          place: place(),
          wanted: issue.message,
        })),
      ];
    case "invalid_key": {
      const key = String(path.at(-1));
      const wanted = issue.issues[0]?.message ?? "it must be an id";
      const holder = path.slice(0, -1);
      return [
        problem("field-bad-name", path, quoted(key), () => ({
          place: placeInWords(root, holder),
          wanted,
        })),
      ];
    }
    default:
      return [
        problem("field-other", path, valueInWords(value), () => ({
          place: place(),
          wanted: issue.message,
        })),
      ];
  }
}

const SORTS: Readonly<Record<string, string>> = {
  string: "text in quotes",
  number: "a number",
  int: "a whole number",
  boolean: "true or false",
  object: "a group of fields in braces",
  record: "a group of named values in braces",
  array: "a list in brackets",
  tuple: "a pair in brackets",
};

function wrongSort(
  schema: z.core.$ZodType,
  root: unknown,
  path: JsonPath,
  expected: string,
): Problem {
  const value = valueAt(root, path);
  const found = valueInWords(value);
  const place = () => placeInWords(root, path);
  const wanted = SORTS[expected] ?? `a value of the sort ${expected}`;
  const unit = fieldUnit(path);
  const inUnit = unit === null ? "" : ` of ${unit.name}`;
  if (value === undefined) {
    const key = String(path.at(-1) ?? "");
    return problem("field-missing", path, found, () => ({
      place: placeInWords(root, path.slice(0, -1)),
      key,
      wanted: `${wanted}${inUnit}`,
    }));
  }
  const isLiteral = typeof value === "number" || typeof value === "string";
  if (expected === "object" && isLiteral && isValued(schema, root, path)) {
    const typed = typeof value === "string" ? typedQuantity(value, unit) : null;
    const example = typeof value === "number" ? value : (typed?.value ?? "the number");
    return problem("field-needs-basis", path, found, () => ({ place: place(), example }));
  }
  if (expected === "number" && typeof value === "string") {
    const advice = () => quantityAdvice(value, path);
    return problem("field-quantity-as-text", path, found, () => ({
      place: place(),
      inUnit,
      advice: advice(),
    }));
  }
  if (expected === "int")
    return problem("field-not-whole", path, found, () => ({ place: place() }));
  return problem("field-wrong-sort", path, found, () => ({ place: place(), wanted }));
}

function quantityAdvice(text: string, path: JsonPath): string {
  const unit = fieldUnit(path);
  const inName = unit === null ? "" : `, in ${unit.name}`;
  const typed = typedQuantity(text, unit);
  if (typed === null) return `Write the number alone, without quotes and without a unit${inName}.`;
  const symbol = unit?.symbol ?? "";
  if (typed.value === Number(typed.number)) return `Write ${typed.value}, without quotes${inName}.`;
  return (
    `Write the number alone${inName}: ${typed.number} ${typed.typedUnit} is ${typed.value} ${symbol}; ` +
    `if ${typed.number} ${symbol} was meant, write ${typed.number}.`
  );
}

function isValued(schema: z.core.$ZodType, root: unknown, path: JsonPath): boolean {
  const here = schemaAt(schema, root, path);
  const fields = here === null ? null : fieldsOf(here, undefined);
  return fields !== null && Object.hasOwn(fields, "value") && Object.hasOwn(fields, "basis");
}

function unknownField(
  schema: z.core.$ZodType,
  root: unknown,
  path: JsonPath,
  key: string,
): Problem {
  const known = (): readonly string[] => {
    const here = schemaAt(schema, root, path);
    return Object.keys((here && fieldsOf(here, valueAt(root, path))) ?? {});
  };
  return problem("field-unknown", [...path, key], quoted(key), () => {
    const nearest = nearestWord(key, known());
    const suggestion =
      nearest === null
        ? `Take it away, or move it into "note". Fields known here: ${known().join(", ")}.`
        : `Did you mean "${nearest}"?`;
    return { place: placeInWords(root, path), key: quoted(key).slice(1, -1), suggestion };
  });
}

function choicesOf(issue: Extract<Issue, { code: "invalid_union" }>): readonly string[] {
  const options: unknown = Reflect.get(issue, "options");
  if (Array.isArray(options)) return options.map(String);
  return issue.errors.flatMap((errors) =>
    errors.flatMap((error) => (error.code === "invalid_value" ? error.values.map(String) : [])),
  );
}

function notAChoice(root: unknown, path: JsonPath, choices: readonly string[]): Problem {
  const value = valueAt(root, path);
  if (value === undefined) {
    return problem("field-missing", path, "nothing", () => ({
      place: placeInWords(root, path.slice(0, -1)),
      key: String(path.at(-1) ?? ""),
      wanted: `one of ${choices.join(", ")}`,
    }));
  }
  return problem("field-not-a-choice", path, valueInWords(value), () => {
    const nearest = nearestWord(String(value), choices);
    const suggestion = nearest === null ? "Write one of these." : `Did you mean "${nearest}"?`;
    return { place: placeInWords(root, path), choices: choices.join(", "), suggestion };
  });
}

function outOfBounds(
  root: unknown,
  path: JsonPath,
  issue: Extract<Issue, { code: "too_small" | "too_big" }>,
): Problem {
  const value = valueAt(root, path);
  const found = valueInWords(value);
  const place = () => placeInWords(root, path);
  const isSmall = issue.code === "too_small";
  const bound = Number(isSmall ? issue.minimum : issue.maximum);
  if (issue.origin === "array" && Array.isArray(value)) {
    const itemCount = value.length;
    const code = isSmall ? "field-too-few-items" : "field-too-many-items";
    return problem(code, path, found, () => ({ place: place(), itemCount, bound }));
  }
  if (issue.origin === "string" && typeof value === "string") {
    const lengthCount = value.length;
    return isSmall
      ? problem("field-text-too-short", path, found, () => ({ place: place() }))
      : problem("field-text-too-long", path, found, () => ({ place: place(), lengthCount, bound }));
  }
  const unit = fieldUnit(path);
  const words = () => ({
    place: place(),
    bound,
    unit: unit === null ? "" : ` ${unit.symbol}`,
    inUnit: unit === null ? "" : `, in ${unit.name}`,
  });
  return problem(isSmall ? "field-below-bound" : "field-above-bound", path, found, words);
}
