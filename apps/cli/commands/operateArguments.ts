import type { OperateRequest, Refusal } from "@copperwright/engine";
import { argumentRefusal } from "../refuse.ts";

/** Options of `operate` and `spice` as commander hands them over: text only. */
export interface OperateOptions {
  readonly set?: readonly string[];
  readonly engine?: string;
  readonly flash?: string;
  readonly held?: readonly string[];
  readonly open?: readonly string[];
  readonly short?: readonly string[];
  readonly ohm?: readonly string[];
  readonly battery?: string;
  readonly ambient?: string;
  readonly lampExponent?: string;
  readonly aged?: boolean;
}

type Read<T> = { readonly value?: T; readonly refusals: readonly Refusal[] };

function readNumber(option: string, text: string, what: string): Read<number> {
  const value = Number(text.replace(",", "."));
  if (text.trim() !== "" && Number.isFinite(value)) return { value, refusals: [] };
  return {
    refusals: [argumentRefusal(option, text, `${option} wants a number.`, `Write ${what}.`)],
  };
}

function readPairs(
  option: string,
  words: readonly string[],
  example: string,
): Read<Record<string, string>> {
  const pairs = new Map<string, string>();
  const refusals: Refusal[] = [];
  for (const word of words) {
    const at = word.indexOf("=");
    if (at < 1 || at === word.length - 1) {
      refusals.push(
        argumentRefusal(
          option,
          word,
          `${option} wants NAME=VALUE.`,
          `For example ${option} ${example}.`,
        ),
      );
    } else if (pairs.has(word.slice(0, at))) {
      refusals.push(
        argumentRefusal(
          option,
          word,
          `${word.slice(0, at)} is given twice.`,
          "Give each name once.",
        ),
      );
    } else pairs.set(word.slice(0, at), word.slice(at + 1));
  }
  return { value: Object.fromEntries(pairs), refusals };
}

function readEngine(text: string): Read<NonNullable<OperateRequest["engine"]>> {
  if (text === "stopped" || text === "cranking") return { value: { mode: text }, refusals: [] };
  const speedRpm = Number(text);
  if (text.trim() !== "" && Number.isFinite(speedRpm) && speedRpm > 0) {
    return { value: { mode: "running", speedRpm }, refusals: [] };
  }
  return {
    refusals: [
      argumentRefusal(
        "--engine",
        text,
        "The engine is stopped, cranking, or runs at a speed.",
        "Write --engine stopped, --engine cranking or --engine 3000.",
      ),
    ],
  };
}

function readBattery(text: string): Read<NonNullable<OperateRequest["battery"]>> {
  if (text === "full" || text === "half" || text === "weak") return { value: text, refusals: [] };
  const read = readNumber("--battery", text, "full, half, weak or volts such as 12.4");
  return read.value === undefined
    ? { refusals: read.refusals }
    : { value: { emfV: read.value }, refusals: [] };
}

/** PIN[=PIN][:OHM] */
function readShort(text: string): Read<{ a: string; b?: string; ohm?: number }> {
  const [ends, ohmText] = text.split(":") as [string, string | undefined];
  const [a, b, ...more] = ends.split("=");
  if (!a || b === "" || more.length > 0 || text.split(":").length > 2) {
    return {
      refusals: [
        argumentRefusal(
          "--short",
          text,
          "A short is written PIN, PIN=PIN, PIN:OHM or PIN=PIN:OHM.",
          "For example --short HEAD.MAIN or --short HEAD.MAIN=REAR.TAIL:0.5.",
        ),
      ],
    };
  }
  const ohm =
    ohmText === undefined
      ? undefined
      : readNumber("--short", ohmText, "ohms after the colon, such as :0.5");
  if (ohm && ohm.value === undefined) return { refusals: ohm.refusals };
  return {
    value: {
      a,
      ...(b === undefined ? {} : { b }),
      ...(ohm?.value === undefined ? {} : { ohm: ohm.value }),
    },
    refusals: [],
  };
}

function readExtraOhm(words: readonly string[]): Read<Record<string, number>> {
  const pairs = readPairs("--ohm", words, "W12=0.5");
  const refusals = [...pairs.refusals];
  const extra: Record<string, number> = {};
  for (const [name, text] of Object.entries(pairs.value ?? {})) {
    const ohm = readNumber("--ohm", text, "ohms, such as --ohm W12=0.5");
    refusals.push(...ohm.refusals);
    if (ohm.value !== undefined) extra[name] = ohm.value;
  }
  return { value: extra, refusals };
}

/** Turns the words after `operate JOB` into a request, or says everything that is wrong with them. */
export function readOperateArguments(
  options: OperateOptions,
): { ok: true; request: OperateRequest } | { ok: false; refusals: readonly Refusal[] } {
  const reads = {
    set: readPairs("--set", options.set ?? [], "KEY=ON"),
    extraOhm: readExtraOhm(options.ohm ?? []),
    ...(options.engine === undefined ? {} : { engine: readEngine(options.engine) }),
    ...(options.battery === undefined ? {} : { battery: readBattery(options.battery) }),
    ...(options.ambient === undefined
      ? {}
      : { ambientC: readNumber("--ambient", options.ambient, "degrees Celsius") }),
    ...(options.lampExponent === undefined
      ? {}
      : { lampExponent: readNumber("--lamp-exponent", options.lampExponent, "1 or 0.55") }),
    ...(options.flash === undefined ? {} : { flash: readFlash(options.flash) }),
  };
  const shorts = (options.short ?? []).map(readShort);
  const refusals = [...Object.values(reads), ...shorts].flatMap((read) => read.refusals);
  if (refusals.length > 0) return { ok: false, refusals };
  const values = Object.fromEntries(
    Object.entries(reads).map(([name, read]) => [name, read.value]),
  );
  return {
    ok: true,
    request: {
      ...values,
      held: options.held ?? [],
      open: options.open ?? [],
      short: shorts.map((read) => read.value!),
      aged: options.aged ?? false,
    } as OperateRequest,
  };
}

function readFlash(text: string): Read<"on" | "off"> {
  if (text === "on" || text === "off") return { value: text, refusals: [] };
  return {
    refusals: [
      argumentRefusal(
        "--flash",
        text,
        "The flasher is on or off.",
        "Write --flash on or --flash off.",
      ),
    ],
  };
}
