import type { CsvValue } from "../../drawing/index.ts";
import type { ProveResult, TimeCurrent } from "../../prove/index.ts";
import type { PackPaper } from "../packPaper.ts";
import type { PaperInput } from "../paperInput.ts";
import { blockSheets } from "../sheets.ts";
import { findingEvidence } from "./findingEvidence.ts";
import { fuseEvidence } from "./fuseEvidence.ts";
import { signSheet } from "./signSheet.ts";
import { stateEvidence } from "./stateEvidence.ts";
import { wireEvidence } from "./wireEvidence.ts";

/** A proof with the plots that show it. */
export interface ProofShown {
  readonly result: ProveResult;
  readonly plots: readonly TimeCurrent[];
}

/** The proof as a section of the pack: a page to sign, then the evidence. Left out where no proof was made. */
export function proofPaper(input: PaperInput, name: string, proof: ProofShown | null): PackPaper {
  const title = "Proof";
  if (proof === null) return { name, title, sheets: [], rows: null, drawings: null };
  const { result, plots } = proof;
  const plan = {
    documentName: "proof",
    orientation: "portrait" as const,
    head: {
      title: "Proof: the evidence",
      lead: "Fuse by fuse, wire by wire, then what the switches do. Worst cases were solved in full.",
    },
  };
  const evidence = blockSheets(input, plan, (content) => [
    ...findingEvidence(result, content.widthMm),
    ...fuseEvidence(input, result, plots, content).map((block, k) =>
      k === 0 ? { ...block, startsPage: true } : block,
    ),
    ...wireEvidence(input, result, content),
    ...stateEvidence(input, result, content),
  ]);
  return {
    name,
    title,
    sheets: [...signSheet(input, result), ...evidence],
    rows: wireRows(result),
    drawings: null,
  };
}

/** The wires of the proof for a spreadsheet. */
function wireRows({ wires }: ProveResult): readonly (readonly CsvValue[])[] {
  const heading = [
    "wire",
    "verdict",
    "fuses",
    "worstA",
    "timeS",
    "peakC",
    "limitC",
    "marginK",
    "place",
    "to",
    "ohm",
    "currentA",
    "opensMinS",
    "opensMaxS",
    "weakestA",
    "weakestOpensMaxS",
    "see",
  ];
  return [
    heading,
    ...wires.map(({ wire, verdict, worst, bound, margin, weakest, reproduce }) => [
      wire,
      verdict,
      worst?.cut.join(" ") ?? "",
      bound?.currentA ?? "",
      bound?.timeS ?? "",
      bound?.peakC ?? "",
      bound?.limitC ?? "",
      margin ?? "",
      worst?.place ?? "",
      worst?.to ?? "",
      worst?.ohm ?? "",
      worst?.currentA ?? "",
      worst?.opensMinS ?? "",
      worst?.opensMaxS ?? "",
      weakest?.currentA ?? "",
      weakest?.opensMaxS ?? "",
      reproduce === null ? "" : `copperwright ${reproduce.join(" ")}`,
    ]),
  ];
}
