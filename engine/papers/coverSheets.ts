import {
  type AreaMm,
  type Block,
  bulletBlocks,
  headingBlock,
  keyValueBlocks,
  paragraphBlocks,
  type Sheet,
  TEXT_STYLE,
  tableBlocks,
} from "../drawing/index.ts";
import { printNumber } from "../units/index.ts";
import { jobCodeBlock, jobCodeSideMm } from "./label/jobCode.ts";
import type { PaperInput } from "./paperInput.ts";
import { blockSheets } from "./sheets.ts";

const MEANINGS = {
  fit: "Fit to build. Nothing was found that has to be put right.",
  mend: "Put the findings marked mend right before the loom is used.",
  stop: "Do not connect the battery. At least one finding can start a fire, destroy a part or hide a fault.",
  "not-proven":
    "A safety question rests on a figure nobody has confirmed. Confirm it before the loom is used.",
} as const;

/** One paper of the folder. */
export interface ContentsLine {
  readonly file: string;
  readonly title: string;
  readonly sheetCount: number;
}

/** The cover: verdict, what it rests on, what somebody answered for, what is in the folder, and the cautions. */
export function coverSheets(
  input: PaperInput,
  contents: readonly ContentsLine[],
): readonly Sheet[] {
  return blockSheets(
    input,
    {
      documentName: "cover",
      orientation: "portrait",
      head: { title: "Build pack", lead: MEANINGS[input.check.verdict] },
    },
    (content) => coverBlocks(input, contents, content),
  );
}

function coverBlocks(
  input: PaperInput,
  contents: readonly ContentsLine[],
  content: AreaMm,
): readonly Block[] {
  const { widthMm } = content;
  return [
    jobCodeBlock(input, widthMm),
    ...factBlocks(input, widthMm - jobCodeSideMm(input) - 4),
    ...withheldBlocks(input, widthMm),
    ...findingBlocks(input, content),
    ...headingBlock("Before you begin", widthMm, 2),
    ...bulletBlocks(CAUTIONS, widthMm),
    ...acceptedBlocks(input, widthMm),
    ...contentsBlocks(contents, widthMm),
  ];
}

/** The papers of the folder, which stand together: under the rest where there is room, else on a sheet of their own. */
function contentsBlocks(contents: readonly ContentsLine[], widthMm: number): readonly Block[] {
  const lines = keyValueBlocks(
    contents.map(({ file, title, sheetCount }) => [
      file,
      `${title}, ${sheetCount} ${sheetCount === 1 ? "sheet" : "sheets"}`,
    ]),
    widthMm,
    54,
  );
  return [
    ...headingBlock("In this folder", widthMm, 2),
    ...lines.map((line, i) => ({ ...line, keepWithNext: i < lines.length - 1 })),
  ];
}

/** Printed on every cover. Common practice of the trade and of battery makers' leaflets. */
const CAUTIONS = [
  "Electrical fire: never power a new loom from a charged battery without a current limit. First power is through a lamp in series with the battery lead.",
  "Take the lead off the EARTHED battery post first and put it back last. On this machine look which post that is; it may be the positive one.",
  "A battery gives off hydrogen while it is charged: no spark, no flame, eye protection, rings and watch off. Lithium batteries take a lithium charger only.",
  "Brakes and lights can fail through a wiring fault. Try every lamp, the brake lamp from both levers and the engine stop before the machine is ridden.",
  "Local rules on lamps, signals and who may do the work come before anything written here.",
];

function withheldBlocks({ check }: PaperInput, widthMm: number): readonly Block[] {
  return check.withheld === null || check.withheld === undefined
    ? []
    : paragraphBlocks(`Not judged: ${check.withheld}.`, widthMm, TEXT_STYLE.strong);
}

function factBlocks(
  { job, fingerprint, check, design, unsavedCount }: PaperInput,
  widthMm: number,
): readonly Block[] {
  const wires = job.wires.filter((wire) => wire.status !== "remove");
  const lengthM =
    wires.reduce((sum, wire) => sum + (design.conductors.get(wire.id)?.lengthMm ?? 0), 0) / 1000;
  const estimated = check.wires.filter((row) => row.lengthBasis === "estimated").length;
  const supply = `${job.supply.nominalV} V, ${job.supply.earthPolarity} earth: the live pole is the ${job.supply.earthPolarity === "positive" ? "negative" : "positive"} post`;
  return keyValueBlocks(
    [
      [
        "Machine",
        `${job.machine.maker} ${job.machine.model}${job.machine.year ? `, ${job.machine.year}` : ""}`,
      ],
      ["Supply", supply],
      [
        "Loom",
        `${wires.length} wires, ${job.joints.length} joints, ${job.connectors.length} connectors, ${check.fuses.length} fuses; ${printNumber(lengthM, 1)}\u00A0m of path${check.lengthsComplete ? "" : ", some lengths not measured"}`,
      ],
      [
        "Lengths",
        estimated === 0
          ? "all measured or stated"
          : `${estimated} wires rest on estimated lengths: measure before cutting for good`,
      ],
      [
        "Checked",
        `${printNumber(check.statesSolved, 0)} switch positions solved as a network; sizes and fuses ${check.settled ? "settled" : "did not settle"}`,
      ],
      ["Findings", countsText(check)],
      [
        "Accepted",
        job.decisions.accepted?.length
          ? `${job.decisions.accepted.length}, each listed below with who answers for it`
          : "none: nothing is hidden behind a signature",
      ],
      ["Job", `${job.name} (${job.id}, revision ${revisionWords(job, unsavedCount)}, ${job.date})`],
      ["Fingerprint", fingerprint.replace(/(.{8})/g, "$1 ").trim()],
    ],
    widthMm,
  );
}

function countsText({ counts }: PaperInput["check"]): string {
  const parts = [
    counts.stop > 0 ? `${counts.stop} stop` : "",
    counts.notProven > 0 ? `${counts.notProven} not proven` : "",
    counts.mend > 0 ? `${counts.mend} to mend` : "",
    counts.advise > 0 ? `${counts.advise} worth knowing` : "",
  ].filter((part) => part !== "");
  return parts.length === 0
    ? "none"
    : `${parts.join(", ")}; opened in the findings and their working`;
}

function findingBlocks({ check }: PaperInput, { widthMm, heightMm }: AreaMm): readonly Block[] {
  const order = ["stop", "not-proven", "mend"];
  const rows = check.findings
    .filter(({ severity }) => severity !== "advise")
    .sort((left, right) => order.indexOf(left.severity) - order.indexOf(right.severity))
    .map((finding) => ({
      id: finding.subject.id,
      cells: {
        severity: { kind: "severity" as const, severity: finding.severity },
        subject: { kind: "text" as const, text: finding.subject.id, weight: 600 as const },
        message: finding.message,
      },
    }));
  if (rows.length === 0) return [];
  return [
    ...headingBlock("To put right", widthMm, 2),
    ...tableBlocks(
      {
        columns: [
          { key: "severity", heading: "", width: { kind: "natural", maxMm: 30 } },
          { key: "subject", heading: "Where", width: { kind: "natural", maxMm: 34 } },
          { key: "message", heading: "What", width: { kind: "share", share: 1, minMm: 60 } },
        ],
        groups: [{ heading: null, rows }],
      },
      widthMm,
      heightMm,
    ),
  ];
}

function acceptedBlocks({ job }: PaperInput, widthMm: number): readonly Block[] {
  const accepted = job.decisions.accepted ?? [];
  if (accepted.length === 0) return [];
  return [
    ...headingBlock("Accepted by somebody", widthMm, 2),
    ...keyValueBlocks(
      accepted.map((one) => [
        `${one.code}, ${one.subject}`,
        `${one.reason} (${one.by}, ${one.date})`,
      ]),
      widthMm,
    ),
  ];
}

/** A pack with changes nobody else can see says so where it is looked for first. */
function revisionWords(job: PaperInput["job"], unsavedCount: PaperInput["unsavedCount"]): string {
  if (unsavedCount === 0) return `${job.revision}`;
  const changes = unsavedCount === 1 ? "1 change" : `${unsavedCount} changes`;
  return `${job.revision} and ${changes} not yet saved`;
}
