import {
  type AreaMm,
  type Block,
  headingBlock,
  keyValueBlocks,
  paragraphBlocks,
  type Sheet,
  tableBlocks,
} from "../drawing/index.ts";
import type { SpokenFinding } from "../judge/index.ts";
import { figureText } from "./figureText.ts";
import type { PaperInput } from "./paperInput.ts";
import { blockSheets } from "./sheets.ts";

const ORDER = ["stop", "not-proven", "mend", "advise"] as const;

/** Every finding opened: sentence, working line by line, limit with its source, and the command that shows it again. */
export function findingSheets(input: PaperInput): readonly Sheet[] {
  const findings = ORDER.flatMap((severity) =>
    input.check.findings.filter((one) => one.severity === severity),
  );
  return blockSheets(
    input,
    {
      documentName: "findings and working",
      orientation: "portrait",
      head: {
        title: "Findings and their working",
        lead: "Worst first. Every figure is opened into equation, inputs, limit and source.",
      },
    },
    (content) =>
      findings.length === 0
        ? paragraphBlocks("Nothing was found that anybody has to act on.", content.widthMm)
        : findings.flatMap((finding) => findingBlocks(finding, content)),
  );
}

function findingBlocks(finding: SpokenFinding, content: AreaMm): readonly Block[] {
  const { widthMm } = content;
  const facts: [string, string][] = [];
  if (finding.also.length > 0) facts.push(["Also", finding.also.join(", ")]);
  if (finding.limit) {
    const { source, place, confidence } = finding.limit;
    facts.push([
      "Limit",
      `${figureText(finding.limit.value, finding.limit.unit)}: ${source}, ${place} (${confidence})`,
    ]);
  }
  if (finding.leansOnMemory)
    facts.push(["Note", "leans on a remembered figure nobody has confirmed"]);
  if (finding.accepted)
    facts.push(["Accepted", `${finding.accepted.reason} (${finding.accepted.by})`]);
  if (finding.reproduce) facts.push(["See it", `copperwright ${finding.reproduce.join(" ")}`]);
  for (const remedy of finding.remedies) {
    if (remedy.message) facts.push([remedy.cures ? "Cures it" : "Remedy", remedy.message]);
  }
  return [
    ...headingBlock(
      `${finding.severity === "not-proven" ? "not proven" : finding.severity}: ${finding.subject.id}`,
      widthMm,
      2,
    ),
    ...paragraphBlocks(finding.message, widthMm),
    ...(facts.length > 0 ? keyValueBlocks(facts, widthMm) : []),
    ...workingBlocks(finding, content),
  ];
}

function workingBlocks(
  { working }: SpokenFinding,
  { widthMm, heightMm }: AreaMm,
): readonly Block[] {
  if (working.length === 0) return [];
  return tableBlocks(
    {
      columns: [
        { key: "name", heading: "Working", width: { kind: "share", share: 1, minMm: 34 } },
        { key: "equation", heading: "Equation", width: { kind: "share", share: 1.3, minMm: 40 } },
        { key: "inputs", heading: "Inputs", width: { kind: "share", share: 1.6, minMm: 45 } },
        {
          key: "value",
          heading: "Result",
          width: { kind: "natural", maxMm: 30 },
          align: "end",
          weight: 700,
        },
      ],
      groups: [
        {
          heading: null,
          rows: working.map((step) => ({
            cells: {
              name: step.name,
              equation: step.equation,
              inputs: step.inputs
                .map(
                  ({ name, value, unit, from }) =>
                    `${name} = ${typeof value === "number" ? figureText(value, unit) : value} [${from}]`,
                )
                .join("\n"),
              value: figureText(step.value, step.unit),
            },
          })),
        },
      ],
    },
    widthMm,
    heightMm,
  );
}
