import { type CheckedJob, checkedJob, type Refusal } from "@copperwright/engine";
import type { PackList, PaperFonts, PaperSize } from "@copperwright/engine/paper";
import { printPack } from "../print/printPack.ts";
import { argumentRefusal, refuse } from "../refuse.ts";
import type { ExitCode, World } from "../world.ts";
import { commonFields, printJson } from "./command.ts";
import { readJobArgument } from "./jobArgument.ts";

interface PackOptions {
  readonly out: string;
  readonly paper?: string;
  readonly json?: boolean;
}

const LIST_NAME = "pack.json";
const SIZES: readonly string[] = ["a4", "a3", "letter"] satisfies readonly PaperSize[];

/** `copperwright pack JOB --out FOLDER`: every paper of the job into a folder that is empty or holds a former pack. */
export async function packCommand(
  world: World,
  path: string,
  options: PackOptions,
): Promise<ExitCode> {
  const { out, paper = "a4", json = false } = options;
  const read = readJobArgument(world, path);
  const common = commonFields("pack", read.ok ? read : null);
  const refusals = [
    ...(read.ok ? [] : read.refusals),
    ...paperRefusals(paper),
    ...folderRefusals(world, out),
  ];
  if (!read.ok || refusals.length > 0) return refuse(world, refusals, { json, common });
  world.err("Checking the job.\n");
  const checked = checkedJob(read.job);
  const files = await drawn(world, checked, read.fingerprint, paper as PaperSize);
  const written = world.replaceFolder(out, files);
  if (!written.ok) return refuse(world, [notWritten(out, written.why)], { json, common });
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
    files: list.files,
  };
  world.out(json ? printJson(answer) : printPack(out, checked.result, list));
  return verdict === "fit" ? 0 : 1;
}

/** The PDF library is loaded only here, so that no other command waits for it. */
async function drawn(
  world: World,
  checked: CheckedJob,
  fingerprint: string,
  paper: PaperSize,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const { PAPER_FONT_FILES, packFiles } = await import("@copperwright/engine/paper");
  const fonts = Object.fromEntries(
    Object.entries(PAPER_FONT_FILES).map(([face, file]) => [
      face,
      world.shipped(`package:${file}`),
    ]),
  ) as PaperFonts;
  const files = await packFiles(checked, {
    fingerprint,
    paper,
    fonts,
    onPaper: (title, i, count) =>
      world.err(`${i === 0 ? `Drawing ${count} papers: ` : ", "}${title.toLowerCase()}`),
  });
  world.err(".\n");
  return files;
}

function paperRefusals(paper: string): readonly Refusal[] {
  if (SIZES.includes(paper)) return [];
  return [
    argumentRefusal(
      "--paper",
      paper,
      "There is no such paper size.",
      "Write --paper a4, a3 or letter.",
    ),
  ];
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
