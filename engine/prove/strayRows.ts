import { type Finding, messageOf } from "../messages/index.ts";
import { operateArguments } from "./operateArguments.ts";
import { proofFinding, stateOf } from "./proofFinding.ts";
import type { ProofPlan } from "./proofPlan.ts";
import type { StrayRow } from "./proveResult.ts";
import { secondWay } from "./secondWay.ts";
import type { StrayLoad } from "./strayOf.ts";

const MOST_OTHERS = 4;

/** Strays as rows, each with the sentence a rider would say; and one finding for each place that makes something work by itself. */
export function strayRows(
  plan: ProofPlan,
  strays: readonly StrayLoad[],
): { readonly rows: readonly StrayRow[]; readonly findings: readonly Finding[] } {
  const told = strays.map((stray) => ({ stray, finding: findingOf(plan, stray) }));
  const { litRatio } = plan.solver;
  const worst = new Map<string, (typeof told)[number]>();
  for (const one of told) {
    const { open, shareRatio } = one.stray;
    const known = worst.get(open!);
    if (shareRatio < litRatio || (known && known.stray.shareRatio >= shareRatio)) continue;
    worst.set(open!, one);
  }
  return {
    rows: told.map(({ stray, finding }) => ({
      load: finding.subject.id,
      shareOfRatedPower: stray.shareRatio,
      open: stray.open,
      alsoOpen: stray.openNames.filter((name) => name !== stray.open),
      symptom: messageOf(finding),
      designOut: isEarthPlace(plan, stray) ? "earth" : "feed",
      state: stateOf(plan.input.job, stray.state),
      reproduce: operateArguments(plan.input.job, stray.state),
    })),
    findings: [...worst.values()].map(({ finding }) => finding),
  };
}

function findingOf(plan: ProofPlan, stray: StrayLoad): Finding {
  const ref = (k: number): string => plan.solver.loads[k]!.load.ref;
  const others = stray.openNames.filter((name) => name !== stray.open);
  const kind = isEarthPlace(plan, stray) ? "earth" : "feed";
  return proofFinding(plan, {
    code: "proof-stray",
    severity: "advise",
    subject: { kind: "load", id: ref(stray.load) },
    numbers: {
      open: stray.open,
      sharePercent: 100 * stray.shareRatio,
      dimmed: stray.dimmed.slice(0, MOST_OTHERS).map(ref).join(", ") || null,
      others: others.slice(0, MOST_OTHERS).join(", ") || null,
    },
    state: stray.state,
    remedies: [secondWay(plan, stray) ?? { kind, change: [], cures: null, newNumbers: {} }],
  });
}

/** An earth: one of its ends hangs on the bodies by copper alone. */
function isEarthPlace({ solver }: ProofPlan, { open }: StrayLoad): boolean {
  const { jobNetwork, nets } = solver.compiled;
  const element = jobNetwork.elements.find(
    ({ of, controlledBy }) => of === open || controlledBy?.includes(open!),
  );
  return element !== undefined && (nets.earthed.has(element.from) || nets.earthed.has(element.to));
}
