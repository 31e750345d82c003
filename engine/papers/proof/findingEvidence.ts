import { type Block, headingBlock, keyValueBlocks, paragraphBlocks } from "../../drawing/index.ts";
import type { ProveResult } from "../../prove/index.ts";
import { figureText } from "../figureText.ts";

const ORDER = ["stop", "not-proven", "mend", "advise"] as const;

/** Every finding of the proof in full, worst first, with what was tried against it and how to see it again. */
export function findingEvidence(
  { findings, tolerance }: ProveResult,
  widthMm: number,
): readonly Block[] {
  const sorted = ORDER.flatMap((severity) => findings.filter((one) => one.severity === severity));
  return [
    ...headingBlock("Findings of the proof", widthMm),
    ...(sorted.length === 0 ? paragraphBlocks("Nothing was found.", widthMm) : []),
    ...sorted.flatMap((finding) => findingBlocks(finding, widthMm)),
    ...headingBlock("How far readings may be off", widthMm),
    ...paragraphBlocks(`${tolerance.method}.`, widthMm),
    ...paragraphBlocks(
      tolerance.verdictChanges.length === 0
        ? "Nothing changes within the bands."
        : `What changes within the bands: ${tolerance.verdictChanges.join("; ")}.`,
      widthMm,
    ),
  ];
}

function findingBlocks(
  finding: ProveResult["findings"][number],
  widthMm: number,
): readonly Block[] {
  const { severity, subject, message, also, limit, reproduce, remedies } = finding;
  const facts: (readonly [string, string])[] = [];
  if (also.length > 0) facts.push(["Also", also.join(" ")]);
  if (limit !== null) {
    const { value, unit, source, place, confidence } = limit;
    facts.push(["Limit", `${figureText(value, unit)}: ${source}, ${place} (${confidence})`]);
  }
  for (const remedy of remedies) {
    if (remedy.message !== undefined)
      facts.push([remedy.cures === true ? "Tried, cures" : "May help", remedy.message]);
  }
  if (reproduce !== null) facts.push(["See it", `copperwright ${reproduce.join(" ")}`]);
  return [
    ...headingBlock(
      `${severity === "not-proven" ? "not proven" : severity}: ${subject.id}`,
      widthMm,
      2,
    ),
    ...paragraphBlocks(message, widthMm),
    ...(facts.length > 0 ? keyValueBlocks(facts, widthMm, 30) : []),
  ];
}
