import { setFuseRating } from "../../job/index.ts";
import type { Finding } from "../../messages/index.ts";
import { isMeltingKnown } from "../../size/index.ts";
import { figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import { type FuseFacts, STANDARD_TYPE } from "../fuseFacts.ts";
import type { Design, Judge } from "../judge.ts";
import { operateCommand, stateOf } from "../stateArguments.ts";
import { listFigure } from "../wireLimit.ts";
import { largerMake } from "./largerMake.ts";
import { splitRemedy } from "./splitRemedy.ts";

/** Each fuse between its load and its weakest wire: a window that is empty, or a fuse that lies under its load. */
export const fuseWindow: Judge = (design) =>
  design.fuses.flatMap((facts) => [
    ...emptyWindow(design, facts),
    ...underLoad(design, facts),
    ...agedBySwitchOn(facts),
  ]);

function emptyWindow(design: Design, facts: FuseFacts): readonly Finding[] {
  const { choice, weakestWire, weakestA, fuse } = facts;
  if (choice === null || weakestWire === null || choice.allowedA.length > 0) return [];
  // A fuse that is too much for its wire has that finding, with the same remedies.
  if (weakestA !== null && facts.reading.highA > weakestA) return [];
  const { remedies, windowMinA, windowMaxA } = choice;
  const largerA = remedies?.largerWireA ?? null;
  const larger =
    largerA === null ? null : largerMake(design, tooThin(design, facts, largerA), largerA);
  const split = splitRemedy(choice);
  return [
    findingOf({
      code: "fuse-window-empty",
      severity: "mend",
      subject: { kind: "fuse", id: fuse.id },
      also: [weakestWire],
      limit: listFigure(design, weakestWire),
      numbers: { wire: weakestWire, weakestA, loadA: facts.worstLoadA, windowMinA, windowMaxA },
      working: choice.working,
      remedies: [larger, split].filter((one) => one !== null),
    }),
  ];
}

const tooThin = (design: Design, { protects }: FuseFacts, ratedA: number): readonly string[] =>
  protects.filter((id) => (design.ratings.get(id)!.tableA ?? 0) < ratedA);

function underLoad(design: Design, facts: FuseFacts): readonly Finding[] {
  const { fuse, reading, worstLoadA, loadRatio, choice } = facts;
  const most = design.worst.fuses.get(fuse.id);
  if (worstLoadA <= loadRatio * reading.lowA * (1 + 1e-9) || most === undefined) return [];
  const opens = worstLoadA > reading.lowA;
  // Where no fuse fits at all the empty window says it already.
  if (!opens && choice !== null && choice.allowedA.length === 0) return [];
  const share = figure("protectionRules", "load-share-most", "value");
  const suggestedA = choice?.suggestedA ?? null;
  return [
    findingOf({
      code: opens ? "fuse-under-load" : "fuse-near-its-load",
      severity: opens ? "mend" : "advise",
      subject: { kind: "fuse", id: fuse.id },
      state: most.state && stateOf(design.job, most.state),
      limit: opens
        ? {
            ...share,
            value: reading.lowA,
            unit: "A",
            table: "job",
            row: fuse.id,
            source: "mark on the fuse",
            place: "parts",
            confidence: "own",
          }
        : share,
      figures: reading.figures,
      numbers: {
        loadA: worstLoadA,
        fuseA: reading.lowA,
        loadPercent: (100 * worstLoadA) / reading.lowA,
        sharePercent: 100 * loadRatio,
        marking: fuse.marking,
      },
      working: choice?.working ?? [],
      remedies:
        suggestedA === null || suggestedA <= fuse.ratingA
          ? []
          : [
              {
                kind: "larger-fuse",
                change: [setFuseRating(fuse.id, suggestedA)],
                cures: null,
                newNumbers: { suggestedA },
              },
            ],
      reproduce: most.state && operateCommand(design.job, most.state, most.batteryV),
    }),
  ];
}

function agedBySwitchOn({ fuse, choice, worstLoadA }: FuseFacts): readonly Finding[] {
  if (choice === null || !choice.agedByInrushA.includes(fuse.ratingA)) return [];
  if (!isMeltingKnown(STANDARD_TYPE[fuse.type], fuse.ratingA)) return [];
  return [
    findingOf({
      code: "fuse-aged-by-switch-on",
      severity: "advise",
      subject: { kind: "fuse", id: fuse.id },
      figures: choice.figures,
      numbers: { fuseA: fuse.ratingA, loadA: worstLoadA, suggestedA: choice.suggestedA },
      working: choice.working,
    }),
  ];
}
