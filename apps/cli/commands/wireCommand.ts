import { bundleAnswer, type Refusal, type WireQuestion, wireAnswer } from "@copperwright/engine";
import { printBundle, printWire } from "../print/printWire.ts";
import { argumentRefusal, refuse } from "../refuse.ts";
import type { ExitCode, World } from "../world.ts";
import { commonFields, printJson } from "./command.ts";

interface WireOptions {
  readonly amps?: string;
  readonly volts?: string;
  readonly length?: string;
  readonly oneWay?: boolean;
  readonly drop?: string;
  readonly ambient?: string;
  readonly bundle?: string;
  readonly json?: boolean;
}

/** The numbers of a question, each option to the field it fills. */
const NUMBERS = [
  ["amps", "--amps", "ampsA", "amperes, such as 8.5"],
  ["volts", "--volts", "volts", "6, 12 or 24"],
  ["length", "--length", "lengthM", "metres, such as 1.6"],
  ["ambient", "--ambient", "ambientC", "degrees Celsius"],
  ["bundle", "--bundle", "bundle", "how many wires lie together"],
] as const;

function readQuestion(options: WireOptions): { question: WireQuestion; refusals: Refusal[] } {
  const question: Record<string, unknown> = { oneWay: options.oneWay ?? false };
  const refusals: Refusal[] = [];
  const readNumber = (option: string, text: string, what: string): number | null => {
    const value = Number(text.replace(",", "."));
    if (text.trim() !== "" && Number.isFinite(value)) return value;
    refusals.push(argumentRefusal(option, text, `${option} wants a number.`, `Write ${what}.`));
    return null;
  };
  for (const [name, option, field, what] of NUMBERS) {
    const text = options[name];
    if (text === undefined) continue;
    const value = readNumber(option, text, what);
    if (value !== null) question[field] = value;
  }
  if (options.drop !== undefined) {
    const percent = options.drop.trim().endsWith("%");
    const digits = options.drop.trim().replace(/\s*(%|V)$/i, "");
    const value = readNumber("--drop", digits, "volts (0.3) or per cent (3%)");
    if (value !== null) question.drop = percent ? { limitPercent: value } : { limitV: value };
  }
  return { question: question as WireQuestion, refusals };
}

/** `copperwright wire DESCRIPTION …`: read any way a person names a wire, and what it carries and drops. */
export function wireCommand(world: World, text: string, options: WireOptions): ExitCode {
  const json = options.json ?? false;
  const common = commonFields("wire", null);
  const { question, refusals } = readQuestion(options);
  const answered = wireAnswer(text, question);
  if (!answered.ok) refusals.push(...answered.refusals);
  if (!answered.ok || refusals.length > 0) return refuse(world, refusals, { json, common });
  const { answer } = answered;
  world.out(json ? printJson({ ...common, refusals: [], ...answer }) : printWire(answer));
  return answer.drop?.ok === false ? 1 : 0;
}

/** `copperwright bundle OD[xCOUNT] …`: how thick a loom is, and what goes over it. */
export function bundleCommand(
  world: World,
  words: readonly string[],
  options: { readonly json?: boolean },
): ExitCode {
  const json = options.json ?? false;
  const common = commonFields("bundle", null);
  const bundled = bundleAnswer(words);
  if (!bundled.ok) return refuse(world, bundled.refusals, { json, common });
  const { answer } = bundled;
  world.out(json ? printJson({ ...common, refusals: [], ...answer }) : printBundle(answer));
  return 0;
}
