import type { WorkingStep } from "../messages/index.ts";
import type { Figure } from "../tables/index.ts";
import type { FuseChoice, FuseQuestion } from "./chooseFuse.ts";

/** The fuse window line by line. */
export function fuseWorking(from: {
  readonly question: FuseQuestion;
  readonly choice: Pick<FuseChoice, "windowMinA" | "windowMaxA" | "suggestedA">;
  readonly loadRatio: number;
  readonly share: Figure;
  readonly pulse: Figure;
}): readonly WorkingStep[] {
  const { question, choice, loadRatio, share, pulse } = from;
  const shareFrom =
    question.loadRatio === undefined
      ? `tables/${share.table} ${share.row}: ${share.source}`
      : "decisions of the job";
  const least: WorkingStep = {
    name: "least fuse that carries the load for ever",
    equation: "load / share of the rating",
    inputs: [
      { name: "load", value: question.loadA, unit: "A", from: "test-point watts" },
      { name: "share", value: loadRatio, unit: "ratio", from: shareFrom },
    ],
    value: choice.windowMinA,
    unit: "A",
  };
  const most: WorkingStep = {
    name: "largest fuse the weakest wire allows",
    equation: "fuse <= wire",
    inputs: [{ name: "wire", value: question.wireA, unit: "A", from: "rating of the wire" }],
    value: choice.windowMaxA,
    unit: "A",
  };
  if (question.inrush === undefined) return [least, most];
  const surge: WorkingStep = {
    name: "surge of cold filaments, to be at most this share of the fuse's least melting I2t",
    equation: "peak^2 x settling time / 2",
    inputs: [
      { name: "peak", value: question.inrush.peakA, unit: "A", from: "tables/lampInrush" },
      { name: "share", value: pulse.value, unit: "ratio", from: `tables/${pulse.table}` },
    ],
    value: question.inrush.i2tA2s,
    unit: "A2s",
  };
  return [least, most, surge];
}
