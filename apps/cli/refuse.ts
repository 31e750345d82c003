import type { Refusal } from "@copperwright/engine";
import type { ExitCode, World } from "./world.ts";
import { wrapText } from "./wrapText.ts";

/** One refusal of an argument or a file, made where no engine function was reached. */
export function argumentRefusal(
  argument: string,
  found: string,
  message: string,
  remedy: string,
): Refusal {
  return { code: "argument", pointer: argument, line: null, found, message, remedy };
}

/** Says why nothing was computed: as one JSON object on stdout, or as text on stderr. Always exit 2. */
export function refuse(
  world: World,
  refusals: readonly Refusal[],
  options: { readonly json: boolean; readonly common: Readonly<Record<string, unknown>> },
): ExitCode {
  if (options.json) {
    world.out(`${JSON.stringify({ ...options.common, refusals }, null, 1)}\n`);
    return 2;
  }
  for (const refusal of refusals) {
    const line = refusal.line === null ? [] : [`line ${refusal.line}`];
    // The whole document has the empty pointer.
    const pointer = refusal.pointer === "" ? [] : [refusal.pointer];
    const place = [...pointer, ...line].join(", ") || "the job";
    const found = refusal.found === "" ? "" : ` Found: ${refusal.found}.`;
    world.err(`${wrapText(`${place}: ${refusal.message}${found}`, 100)}\n`);
    world.err(`${wrapText(refusal.remedy, 100, "    ")}\n`);
  }
  world.err(
    `Refused: ${refusals.length === 1 ? "1 problem" : `${refusals.length} problems`}. Nothing was computed.\n`,
  );
  return 2;
}
