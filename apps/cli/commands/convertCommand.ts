import {
  type ConvertTo,
  conversionCost,
  conversionOf,
  type Refusal,
  writeJob,
} from "@copperwright/engine";
import { printConvert } from "../print/printConvert.ts";
import { argumentRefusal, refuse } from "../refuse.ts";
import type { ExitCode, World } from "../world.ts";
import { commonFields, printJson } from "./command.ts";
import { readJobArgument } from "./jobArgument.ts";
import { stockOption } from "./stockOption.ts";

interface ConvertOptions {
  readonly to?: string;
  readonly earth?: string;
  readonly out?: string;
  readonly stock?: string;
  readonly json?: boolean;
}

/** `copperwright convert JOB --to 6|12 [--earth negative|positive] --out FILE [--stock FILE] [--json]`: the plan, the new job, checked, and what it costs. */
export function convertCommand(world: World, path: string, options: ConvertOptions): ExitCode {
  const json = options.json ?? false;
  const refused = (refusals: readonly Refusal[]): ExitCode =>
    refuse(world, refusals, { json, common: commonFields("convert", null) });
  const read = readJobArgument(world, path);
  if (!read.ok) return refused(read.refusals);
  const asked = readConvertTo(options);
  if (!asked.ok) return refused(asked.refusals);
  const list = stockOption(world, options.stock);
  if (!list.ok) return refused(list.refusals);
  const conversion = conversionOf(read.job, asked.to);
  const cost = list.stock === null ? null : conversionCost(conversion, list.stock);
  if (options.out !== undefined) {
    const written = world.writeText(options.out, writeJob(conversion.job));
    if (!written.ok) {
      const message = `The file could not be written: ${written.why}.`;
      const remedy = "Choose a folder that exists and that you may write to.";
      return refused([argumentRefusal("--out", options.out, message, remedy)]);
    }
  }
  const { job: _, ...plan } = conversion;
  const answer = {
    ...commonFields("convert", read),
    refusals: [],
    to: asked.to,
    out: options.out ?? null,
    ...plan,
    cost,
  };
  const shown = { conversion, cost, out: options.out ?? null };
  world.out(json ? printJson(answer) : printConvert(read.job, shown));
  return conversion.after.verdict === "fit" ? 0 : 1;
}

function readConvertTo({
  to,
  earth,
}: ConvertOptions): { ok: true; to: ConvertTo } | { ok: false; refusals: readonly Refusal[] } {
  const wrong = (name: string, found: string, message: string, remedy: string) => ({
    ok: false as const,
    refusals: [argumentRefusal(name, found, message, remedy)],
  });
  if (to === undefined && earth === undefined) {
    return wrong("--to", "", "Nothing is asked for.", "Write --to 12, --to 6 or --earth negative.");
  }
  if (to !== undefined && to !== "6" && to !== "12") {
    return wrong(
      "--to",
      to,
      "A machine is converted to 6 or 12 volts.",
      "Write --to 6 or --to 12.",
    );
  }
  if (earth !== undefined && earth !== "negative" && earth !== "positive") {
    const remedy = "Write --earth negative or --earth positive.";
    return wrong("--earth", earth, "The earthed pole is negative or positive.", remedy);
  }
  const nominalV = to === undefined ? undefined : to === "6" ? 6 : 12;
  return { ok: true, to: { ...(nominalV && { nominalV }), ...(earth && { earth }) } };
}
