import { operateJob, planJob, spiceText } from "@copperwright/engine";
import { printOperate } from "../print/printOperate.ts";
import { argumentRefusal, refuse } from "../refuse.ts";
import type { ExitCode, World } from "../world.ts";
import { commonFields, printJson } from "./command.ts";
import { readJobArgument } from "./jobArgument.ts";
import { type OperateOptions, readOperateArguments } from "./operateArguments.ts";

/** `copperwright operate JOB --set …`: one state of the machine, solved. */
export function operateCommand(
  world: World,
  path: string,
  options: OperateOptions & { readonly json?: boolean },
): ExitCode {
  const json = options.json ?? false;
  const read = readJobArgument(world, path);
  const words = readOperateArguments(options);
  const common = commonFields("operate", read.ok ? read : null);
  const refusals = [...(read.ok ? [] : read.refusals), ...(words.ok ? [] : words.refusals)];
  if (!read.ok || !words.ok) return refuse(world, refusals, { json, common });
  const { conductors } = planJob(read.job);
  const operated = operateJob(read.job, conductors, words.request);
  if (!operated.ok) return refuse(world, operated.refusals, { json, common });
  const { solution } = operated;
  world.out(json ? printJson({ ...common, refusals: [], ...solution }) : printOperate(solution));
  const buzzing = solution.relays.some((relay) => relay.buzzing);
  return solution.converged && !buzzing ? 0 : 1;
}

/** `copperwright spice JOB --set …`: the same state as text for a general circuit simulator. */
export function spiceCommand(
  world: World,
  path: string,
  options: OperateOptions & { readonly relays?: string; readonly out?: string },
): ExitCode {
  const read = readJobArgument(world, path);
  const words = readOperateArguments(options);
  const common = commonFields("spice", read.ok ? read : null);
  const refusals = [...(read.ok ? [] : read.refusals), ...(words.ok ? [] : words.refusals)];
  const relays = options.relays ?? "settled";
  if (relays !== "settled" && relays !== "live") {
    refusals.push(
      argumentRefusal(
        "--relays",
        relays,
        "Relays are settled (as contacts) or live (as coils and switches).",
        "Write --relays settled or --relays live.",
      ),
    );
  }
  if (!read.ok || !words.ok || refusals.length > 0)
    return refuse(world, refusals, { json: false, common });
  const { conductors } = planJob(read.job);
  const spice = spiceText(read.job, conductors, words.request, {
    relays: relays as "settled" | "live",
  });
  if (!spice.ok) return refuse(world, spice.refusals, { json: false, common });
  world.out(spice.text);
  return 0;
}
