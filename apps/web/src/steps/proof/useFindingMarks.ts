import { useEffect } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { layOnRule, type RuleMark } from "../../frame/ruleMarks.ts";
import { type FindingRow, stationsOf } from "./findingRows.ts";
import type { Whereabouts } from "./whereabouts.ts";

const TOLD = ["stop", "mend"] as const;
const APART_SHARE = 12;

/** Tags of what has to be mended, laid on the rule where it is; the worst at each place, none over another. */
export function useFindingMarks(rows: readonly FindingRow[], where: Whereabouts | null): void {
  const { answer: rule } = useAnswer("rule", undefined);
  useEffect(() => {
    if (rule === null || where === null) return;
    const atMm = new Map(rule.stations.map((station) => [station.id, station.atMm]));
    const apartMm = (rule.mostMm - rule.leastMm) / APART_SHARE;
    const marks: RuleMark[] = [];
    for (const { finding } of rows) {
      const tone = TOLD.find((one) => one === finding.severity);
      const places = stationsOf(finding, where).flatMap((id) => atMm.get(id) ?? []);
      if (tone === undefined || finding.accepted !== null || places.length === 0) continue;
      const [fromMm, toMm] = [Math.min(...places), Math.max(...places)];
      const middle = (fromMm + toMm) / 2;
      const isNear = marks.some((one) => Math.abs(middleOf(one) - middle) < apartMm);
      if (isNear) continue;
      marks.push({
        fromMm,
        ...(toMm > fromMm && { toMm }),
        ...(isRoomy() && { text: tone }),
        tone,
      });
    }
    layOnRule(marks);
    return () => layOnRule([]);
  }, [rows, where, rule]);
}

const middleOf = ({ fromMm, toMm = fromMm }: RuleMark): number => (fromMm + toMm) / 2;

const isRoomy = (): boolean => innerWidth >= 720;
