import type { Figure, Finding } from "../messages/index.ts";
import { figure } from "../tables/index.ts";
import { proofFinding } from "./proofFinding.ts";
import type { ProofPlan } from "./proofPlan.ts";
import type { InUse, RatedPlace } from "./proveResult.ts";

/** Share of a limit that is rounding and not current. */
const ROUNDING_RATIO = 1e-6;

const isOver = ({ currentA, ratingA }: RatedPlace): boolean =>
  currentA > ratingA * (1 + ROUNDING_RATIO);

/** What carries more than it is rated for with nothing broken, and fuses that may open with nothing wrong. */
export function inUseFindings(
  plan: ProofPlan,
  { contacts, cavities, fuses }: InUse,
): readonly Finding[] {
  const most = shareOf(plan);
  return [
    ...contacts.filter(isOver).map((one) => overRated(plan, one, statedLimit(one))),
    ...cavities.filter(isOver).map((one) => overRated(plan, one, classLimit(plan, one))),
    ...fuses.flatMap(({ fuse, carriesA, loadRatio, surgeA2s, opensMinA2s }) => {
      const subject = { kind: "fuse", id: fuse } as const;
      const found: Finding[] = [];
      if (loadRatio > most.value * (1 + ROUNDING_RATIO)) {
        const numbers = { currentA: loadRatio * carriesA, sharePercent: 100 * loadRatio };
        const fields = { code: "proof-fuse-loaded", severity: "mend" as const, subject, numbers };
        found.push(proofFinding(plan, { ...fields, limit: most }));
      }
      if (opensMinA2s !== null && surgeA2s >= opensMinA2s) {
        const numbers = { surgeA2s, opensMinA2s };
        found.push(
          proofFinding(plan, { code: "proof-fuse-surge", severity: "mend", subject, numbers }),
        );
      }
      return found;
    }),
  ];
}

/** The share of its rating a fuse is asked to carry: the person's, else the usual one. */
function shareOf({ input: { job } }: ProofPlan): Figure {
  const usual = figure("protectionRules", "load-share-most", "value");
  const decided = job.decisions.fuseLoadPercent;
  if (decided === undefined) return usual;
  const own = { table: "job", row: job.id, source: "decided for this job", confidence: "own" };
  return { ...usual, ...own, place: "decisions", value: decided / 100 } as Figure;
}

const overRated = (plan: ProofPlan, { place, currentA }: RatedPlace, limit: Figure): Finding =>
  proofFinding(plan, {
    code: "proof-contact-over",
    // A remembered rating alone asks, and does not answer.
    severity: limit.confidence === "memory" ? "advise" : "mend",
    subject: { kind: limit.table === "job" ? "part" : "connector", id: place.split(/[:.]/)[0]! },
    numbers: { place, currentA },
    limit,
  });

const statedLimit = ({ place, ratingA }: RatedPlace): Figure => ({
  value: ratingA,
  unit: "A",
  table: "job",
  row: place,
  source: "stated for the contact",
  place: "parts",
  confidence: "own",
});

function classLimit({ input }: ProofPlan, { place }: RatedPlace): Figure {
  const { kind } = input.job.connectors.find(({ id }) => id === place.split(".")[0])!;
  return figure("connectorClasses", kind, "maxA");
}
