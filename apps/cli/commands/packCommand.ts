import {
  type CheckedJob,
  checkedJob,
  plotInput,
  preparedProof,
  type Refusal,
} from "@copperwright/engine";
import type {
  PackOptions as EnginePackOptions,
  PackList,
  PaperFonts,
  PaperSize,
} from "@copperwright/engine/paper";
import { printPack } from "../print/printPack.ts";
import { writePrinters } from "../printers.ts";
import { proveBeside } from "../proveBeside.ts";
import { argumentRefusal, refuse } from "../refuse.ts";
import type { ExitCode, World } from "../world.ts";
import type { BoardOptions, BoardWanted } from "./boardOptions.ts";
import { commonFields, printJson } from "./command.ts";
import { readJobArgument } from "./jobArgument.ts";
import { stockOption } from "./stockOption.ts";

interface PackOptions extends BoardOptions {
  readonly out: string;
  readonly paper?: string;
  readonly ink?: string;
  readonly stock?: string;
  readonly json?: boolean;
}

const LIST_NAME = "pack.json";
const INKS: readonly string[] = ["colour", "black"];
const SIZES: readonly string[] = ["a4", "a3", "letter"] satisfies readonly PaperSize[];

/** `copperwright pack JOB --out FOLDER`: every paper of the job into a folder that is empty or holds a former pack. */
export async function packCommand(
  world: World,
  path: string,
  options: PackOptions,
): Promise<ExitCode> {
  const { out, paper = "a4", ink = "colour", json = false } = options;
  const read = readJobArgument(world, path);
  const common = commonFields("pack", read.ok ? read : null);
  const { BOARD_PRINT, boardOptions } = await import("./boardOptions.ts");
  const asked = boardOptions(world, options);
  const sold = stockOption(world, options.stock);
  const refusals = [
    ...(read.ok ? [] : read.refusals),
    ...(sold.ok ? [] : sold.refusals),
    ...choiceRefusals("--paper", paper, SIZES, "There is no such paper size."),
    ...choiceRefusals("--ink", ink, INKS, "There is no such choice of ink."),
    ...(asked.ok ? [] : asked.refusals),
    ...folderRefusals(world, out),
  ];
  if (!read.ok || !asked.ok || !sold.ok || refusals.length > 0)
    return refuse(world, refusals, { json, common });
  world.err("Checking the job.\n");
  const checked = checkedJob(read.job);
  const { board } = asked.wanted;
  const proof = proofOf(world, checked);
  const files = await drawn(world, checked, {
    ...proof,
    ...(sold.stock && { stock: sold.stock }),
    fingerprint: read.fingerprint,
    paper: paper as PaperSize,
    ink: ink as "colour" | "black",
    board,
  });
  const written = world.replaceFolder(out, files);
  if (!written.ok) return refuse(world, [notWritten(out, written.why)], { json, common });
  const kept = keepReadings(world, asked.wanted);
  if (!kept.ok) world.err(`The readings of the bar could not be kept: ${kept.why}.\n`);
  const { verdict, counts } = checked.result;
  const list = JSON.parse(new TextDecoder().decode(files.get(LIST_NAME))) as PackList;
  const answer = {
    ...common,
    refusals: [],
    verdict,
    counts,
    lengthsComplete: list.lengthsComplete,
    out,
    paper,
    ink,
    board: { ...BOARD_PRINT, ...board, printer: options.printer ?? null },
    files: list.files,
  };
  world.out(json ? printJson(answer) : printPack(out, checked.result, list, answer.board));
  return verdict === "fit" ? 0 : 1;
}

/** The proof that goes with the pack, begun; none where the check could judge nothing. */
function proofOf(world: World, checked: CheckedJob): Pick<EnginePackOptions, "proof" | "plots"> {
  if (checked.result.withheld !== null) return {};
  world.err("Proving it, and drawing meanwhile.\n");
  const proved = proveBeside(plotInput(preparedProof(checked.design), checked));
  const proof = proved.then(({ result }) => result);
  const plots = proved.then(({ plots }) => plots);
  // Whoever waits for them hears of a fault; nobody waits yet.
  for (const one of [proof, plots]) one.catch(() => {});
  return { proof, plots };
}

/** The PDF library is loaded only here, so that no other command waits for it. */
async function drawn(
  world: World,
  checked: CheckedJob,
  made: Pick<
    EnginePackOptions,
    "fingerprint" | "paper" | "ink" | "board" | "proof" | "plots" | "stock"
  >,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const { PAPER_FONT_FILES, packFiles } = await import("@copperwright/engine/paper");
  const fonts = Object.fromEntries(
    Object.entries(PAPER_FONT_FILES).map(([face, file]) => [
      face,
      world.shipped(`package:${file}`),
    ]),
  ) as PaperFonts;
  const files = await packFiles(checked, {
    ...made,
    fonts,
    onPaper: (title, i, count) =>
      world.err(`${i === 0 ? `Drawing ${count} papers: ` : ", "}${title.toLowerCase()}`),
  });
  world.err(".\n");
  return files;
}

const keepReadings = (world: World, { keep }: BoardWanted): ReturnType<World["writeText"]> =>
  keep === null ? { ok: true } : writePrinters(world, keep);

function choiceRefusals(
  option: string,
  found: string,
  choices: readonly string[],
  message: string,
): readonly Refusal[] {
  if (choices.includes(found)) return [];
  const remedy = `Write ${option} ${choices.slice(0, -1).join(", ")} or ${choices.at(-1)}.`;
  return [argumentRefusal(option, found, message, remedy)];
}

const notWritten = (out: string, why: string): Refusal =>
  argumentRefusal(
    "--out",
    out,
    `The folder could not be written: ${why}.`,
    "Choose a folder you may write to. What was there before is untouched.",
  );

/** Nothing that is not ours is ever replaced. */
function folderRefusals(world: World, out: string): readonly Refusal[] {
  const names = namesIn(world, out);
  if (names === "not a folder") {
    return [
      argumentRefusal("--out", out, "That is a file, not a folder.", "Name a folder for the pack."),
    ];
  }
  if (names.length === 0) return [];
  const known = formerFiles(world, out);
  const foreign = names.filter((name) => !known.has(name));
  if (foreign.length === 0) return [];
  const some = foreign.slice(0, 3).join(", ");
  return [
    argumentRefusal(
      "--out",
      out,
      `The folder holds things that are not of a former pack: ${some}${foreign.length > 3 ? " and more" : ""}. They would be lost.`,
      "Choose an empty folder, a new name, or the folder of a former pack.",
    ),
  ];
}

function namesIn(world: World, out: string): readonly string[] | "not a folder" {
  try {
    return world.listFolder(out) ?? [];
  } catch {
    return "not a folder";
  }
}

/** Files of the pack that lies there; empty where none does. */
function formerFiles(world: World, out: string): ReadonlySet<string> {
  const text = world.readText(`${out.replace(/[/\\]$/, "")}/${LIST_NAME}`);
  if (!text.ok) return new Set();
  try {
    const list = JSON.parse(text.text) as Partial<PackList>;
    const isOurs = list.copperwrightPack === 1 && Array.isArray(list.files);
    return new Set(isOurs ? [LIST_NAME, ...list.files!.map(({ name }) => name)] : []);
  } catch {
    return new Set();
  }
}
