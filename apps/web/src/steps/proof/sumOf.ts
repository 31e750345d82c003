import type { Figure, Finding, WorkingInput, WorkingStep } from "@copperwright/engine";
import { printNumber, printQuantity } from "@copperwright/engine/words";
import type { Chosen, SumSentence } from "../../store/documentState.ts";

const PLAIN_UNITS: Readonly<Record<string, string>> = { ratio: "", count: "", "": "" };
const ENOUGH_DIGITS = 4;

/** A figure with its unit as the engine prints it; units it has no manner for stand behind the number. */
export function figureText(value: number | string | null, unit: string): string {
  if (value === null) return "not known";
  if (typeof value === "string") return value;
  if (!Number.isFinite(value)) return "without end";
  const plain = PLAIN_UNITS[unit];
  if (plain !== undefined) return tidy(value);
  try {
    return printQuantity(value, unit);
  } catch {
    return `${tidy(value)}\u00a0${unit}`;
  }
}

function tidy(value: number): string {
  const size = Math.abs(value);
  const decimals = Number.isInteger(value) ? 0 : size >= 100 ? 0 : size >= 10 ? 1 : 3;
  return printNumber(Number(value.toPrecision(ENOUGH_DIGITS)), decimals);
}

/** Limit, whose, source and confidence in one line; what is only remembered says so. */
export function limitText(limit: Figure | null): string {
  if (limit === null) return "";
  const { value, unit, source, place, confidence } = limit;
  const sure = confidence === "memory" ? "from memory" : confidence;
  return `limit ${figureText(value, unit)} · ${source}, ${place} · ${sure}`;
}

const SUBJECTS: Readonly<Record<Finding["subject"]["kind"], Chosen["kind"] | null>> = {
  job: null,
  supply: null,
  station: "station",
  run: "run",
  part: "part",
  pin: "pin",
  load: "part",
  fuse: "part",
  wire: "wire",
  flyLead: "pin",
  joint: "joint",
  connector: "connector",
  body: "body",
  bond: "bond",
  circuit: "circuit",
  loom: "loom",
};

/** The thing a finding is about, as it is chosen anywhere on the bench; null where it is about the whole job. */
export function subjectChosen({ kind, id }: Finding["subject"]): Chosen | null {
  const chosen = SUBJECTS[kind];
  return chosen === null ? null : { kind: chosen, id: kind === "load" ? id.split(":")[0]! : id };
}

/** The thing an input of a sum came from, where its origin names one that can be chosen: a wire, a part, a place on the finding's own. */
export function inputChosen(
  { name, from }: Pick<WorkingInput, "name" | "from">,
  subject: Finding["subject"],
  kindOf: (id: string) => Chosen["kind"] | null,
): Chosen | null {
  for (const word of `${from} ${name}`.split(/[\s,/]+/)) {
    const kind = kindOf(word);
    if (kind !== null) return { kind, id: word };
  }
  return from.startsWith("tables") || from.includes("catalogue") ? null : subjectChosen(subject);
}

/** One line of working as the sum line says it. */
export function sumOfStep(
  step: WorkingStep,
  finding: Pick<Finding, "subject" | "limit">,
  kindOf: (id: string) => Chosen["kind"] | null = () => null,
): SumSentence {
  return {
    name: step.name,
    result: figureText(step.value, step.unit),
    equation: step.equation,
    inputs: step.inputs.map((input) => {
      const goTo = inputChosen(input, finding.subject, kindOf);
      const text = `${input.name} ${figureText(input.value, input.unit)}`;
      return { text, from: input.from, ...(goTo !== null && { goTo }) };
    }),
    note: limitText(finding.limit),
  };
}

/** A whole finding in one sentence: the last line of its working against its limit, or what it says where it has none. */
export function sumOfFinding(
  finding: Finding & { readonly message: string },
  kindOf: (id: string) => Chosen["kind"] | null = () => null,
): SumSentence {
  const last = finding.working.at(-1);
  const goTo = subjectChosen(finding.subject);
  const subject = {
    text: finding.subject.id,
    from: "what it is about",
    ...(goTo !== null && { goTo }),
  };
  if (last === undefined) {
    const note = limitText(finding.limit);
    return {
      name: finding.severity,
      result: finding.message,
      equation: "",
      inputs: [subject],
      note,
    };
  }
  const sum = sumOfStep(last, finding, kindOf);
  const { limit } = finding;
  const isComparable = limit !== null && limit.unit === last.unit && limit.value > 0;
  return {
    ...sum,
    inputs: [subject, ...sum.inputs],
    ...(isComparable && {
      usedRatio: last.value / limit.value,
      usedText: `${figureText(last.value, last.unit)} of ${figureText(limit.value, limit.unit)}`,
    }),
  };
}

/** Any figure a person sees, with where it came from. */
export function sumOfFigure(said: {
  readonly name: string;
  readonly value: number | null;
  readonly unit: string;
  readonly equation?: string;
  readonly from?: Chosen;
  readonly limit?: Figure | null;
  readonly note?: string;
}): SumSentence {
  const { name, value, unit, equation = "", from, limit = null, note } = said;
  const inputs =
    from === undefined ? [] : [{ text: from.id, from: "the thing itself", goTo: from }];
  const isComparable = limit !== null && value !== null && limit.unit === unit && limit.value > 0;
  return {
    name,
    result: figureText(value, unit),
    equation,
    inputs,
    note: [note, limitText(limit)].filter(Boolean).join(" · "),
    ...(isComparable && {
      usedRatio: value / limit.value,
      usedText: `of ${figureText(limit.value, unit)}`,
    }),
  };
}
