import {
  type Job,
  type LoadChange,
  type Refusal,
  readTrace,
  type SupplyRequest,
  supplyOfJob,
} from "@copperwright/engine";
import { printSupply } from "../print/printSupply.ts";
import { argumentRefusal, refuse } from "../refuse.ts";
import type { ExitCode, World } from "../world.ts";
import { commonFields, printJson } from "./command.ts";
import { readJobArgument } from "./jobArgument.ts";

export interface SupplyWords {
  readonly ambient?: string;
  readonly lampExponent?: string;
  readonly aged?: boolean;
  readonly volts?: string;
  readonly add?: readonly string[];
  readonly led?: readonly string[];
  readonly trace?: string;
  readonly start?: string;
  readonly json?: boolean;
}

type Read<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** `copperwright supply JOB [--json]`: will it charge, will it start, will it last. */
export function supplyCommand(world: World, path: string, words: SupplyWords): ExitCode {
  const json = words.json ?? false;
  const refused = (refusals: readonly Refusal[]): ExitCode =>
    refuse(world, refusals, { json, common: commonFields("supply", null) });
  const read = readJobArgument(world, path);
  if (!read.ok) return refused(read.refusals);
  const asked = readRequest(world, read.job, words);
  if (!asked.ok) return refused(asked.refusals);
  const plain = supplyOfJob(read.job, asked.value);
  const { changes = [] } = asked.value;
  const unchanged =
    changes.length === 0 ? null : supplyOfJob(read.job, { ...asked.value, changes: [] });
  const rides = plain.rides.map((ride) => ({ ...ride, rows: thinned(ride.rows) }));
  const answer = {
    ...commonFields("supply", read),
    refusals: [],
    ...plain,
    rides,
    changes,
    beforeChanges: unchanged === null ? null : unchanged.balances,
  };
  world.out(json ? printJson(answer) : printSupply(read.job, plain, unchanged));
  return 0;
}

/** At most about two hundred moments of a ride, first and last among them. */
function thinned<T>(rows: readonly T[]): readonly T[] {
  const every = Math.max(1, Math.ceil(rows.length / 200));
  return rows.filter((_, k) => k % every === 0 || k === rows.length - 1);
}

function readRequest(world: World, job: Job, words: SupplyWords): Read<SupplyRequest> {
  const numbers: Record<string, number> = {};
  const wanted = [
    ["ambientC", "--ambient", words.ambient],
    ["lampExponent", "--lamp-exponent", words.lampExponent],
    ["atV", "--volts", words.volts],
    ["startPercent", "--start", words.start],
  ] as const;
  for (const [key, name, text] of wanted) {
    if (text === undefined) continue;
    const value = Number(text);
    if (text.trim() === "" || !Number.isFinite(value) || !inRange(key, value)) {
      return wrong(name, text, "That number cannot be worked with.", REMEDIES[key]);
    }
    numbers[key] = value;
  }
  const changes = readChanges(job, words);
  if (!changes.ok) return changes;
  const { startPercent, ...rest } = numbers;
  const request: SupplyRequest = {
    ...rest,
    aged: words.aged ?? false,
    changes: changes.value,
    ...(startPercent !== undefined && { startRatio: startPercent / 100 }),
  };
  return words.trace === undefined
    ? { ok: true, value: request }
    : withTrace(world, job, words.trace, request);
}

const REMEDIES = {
  ambientC: "Write degrees Celsius between -40 and 60, such as --ambient -10.",
  lampExponent: "Write a number between -1 and 1, such as --lamp-exponent 0.55.",
  atV: "Write the volts at the battery, such as --volts 13.8.",
  startPercent: "Write the charge in percent, such as --start 80.",
} as const;

function inRange(key: keyof typeof REMEDIES, value: number): boolean {
  if (key === "ambientC") return value >= -40 && value <= 60;
  if (key === "lampExponent") return value >= -1 && value <= 1;
  if (key === "atV") return value > 3 && value < 40;
  return value >= 0 && value <= 100;
}

function readChanges(job: Job, { add = [], led = [] }: SupplyWords): Read<readonly LoadChange[]> {
  const changes: LoadChange[] = [];
  for (const word of add) {
    const powerW = Number(word.replace(/W$/i, ""));
    if (!(powerW > 0 && powerW < 1000)) {
      return wrong("--add", word, "That is no number of watts.", "Write watts, such as --add 36.");
    }
    changes.push({ kind: "add", name: `${powerW} W added`, powerW });
  }
  for (const word of led) {
    const [part = "", watts = ""] = word.split("=");
    const powerW = Number(watts);
    const known = job.parts.filter(({ kind }) => kind === "lamp").map(({ id }) => id);
    if (!known.includes(part) || !(powerW > 0 && powerW < 200)) {
      const remedy = `Write LAMP=WATTS. Lamps here: ${known.join(", ")}.`;
      return wrong("--led", word, "That is no lamp of the job with its new watts.", remedy);
    }
    changes.push({ kind: "led", part, powerW });
  }
  return { ok: true, value: changes };
}

function withTrace(
  world: World,
  job: Job,
  path: string,
  request: SupplyRequest,
): Read<SupplyRequest> {
  const file = world.readText(path);
  if (!file.ok) {
    return wrong(
      "--trace",
      path,
      `The trace could not be read: ${file.why}.`,
      "Give the path of a CSV file.",
    );
  }
  const states = supplyOfJob(job, request).balances.map(({ state }) => state);
  const [usual] = states;
  if (usual === undefined) {
    return wrong(
      "--trace",
      path,
      "The job names no state that could be ridden.",
      "Name one in the job's states.",
    );
  }
  const read = readTrace(file.text, states, usual);
  return read.ok ? { ok: true, value: { ...request, trace: read.steps } } : read;
}

function wrong(name: string, found: string, message: string, remedy: string): Read<never> {
  return { ok: false, refusals: [argumentRefusal(name, found, message, remedy)] };
}
