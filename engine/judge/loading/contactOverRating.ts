import { loadsOf, type Part, presentParts } from "../../job/index.ts";
import type { Figure, Finding } from "../../messages/index.ts";
import { allTables, figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { operateCommand, stateOf } from "../stateArguments.ts";
import type { WorstCurrent } from "../worstCase.ts";

/**
 * Contacts against what is stated for them; of switches with the share a lamp or a motor leaves of it, one contact a switch and only where it
 * carries a good share of its rating.
 */
export const contactOverRating: Judge = (design) => {
  const found = contactFindings(design);
  const worstOf = new Map<string, Finding>();
  for (const finding of found.filter(({ code }) => code === "contact-derated")) {
    const known = worstOf.get(finding.subject.id);
    if (known === undefined || needsA(finding) > needsA(known))
      worstOf.set(finding.subject.id, finding);
  }
  return found.filter(
    (one) => one.code !== "contact-derated" || worstOf.get(one.subject.id) === one,
  );
};

const needsA = ({ numbers }: Finding): number => Number(numbers.needsA);

const contactFindings = (design: Design): readonly Finding[] =>
  [...design.worst.contacts].flatMap(([contact, most]): readonly Finding[] => {
    const part = partOf(design, contact);
    const stated = part !== undefined && "contactRatingA" in part ? part.contactRatingA : undefined;
    if (stated === undefined || most.state === null) return [];
    const derating = deratingOf(design, most);
    const isOver = most.currentA > stated.value;
    // The published factors are for switches; a relay's rating is stated for loads of its own kind.
    const toldFromA =
      figure("protectionRules", "contact-derated-told", "value").value * stated.value;
    const isDerated =
      part?.kind === "switch" &&
      most.currentA >= toldFromA &&
      most.currentA * derating.ratio > stated.value;
    if (!isOver && !isDerated) return [];
    return [
      findingOf({
        code: isOver ? "contact-over-rating" : "contact-derated",
        severity: isOver ? "mend" : "advise",
        subject: { kind: "part", id: contact.split(":")[0]! },
        state: stateOf(design.job, most.state),
        limit: ratingFigure(contact, stated.value),
        figures: derating.figures,
        restsOnFigures: false,
        numbers: {
          contact,
          currentA: most.currentA,
          kind: derating.kind,
          timesRatio: derating.ratio,
          needsA: most.currentA * derating.ratio,
        },
        reproduce: operateCommand(design.job, most.state, most.batteryV),
      }),
    ];
  });

const partOf = ({ job }: Design, contact: string): Part | undefined =>
  presentParts(job).find(({ id }) => contact.startsWith(`${id}:`));

const ratingFigure = (contact: string, value: number): Figure => ({
  value,
  unit: "A",
  table: "job",
  row: contact,
  source: "stated for the contact",
  place: "parts",
  confidence: "own",
});

const KINDS = { filament: "lamp", winding: "motor", element: "resistive" } as const;
const INDUCTIVE = new Set(["horn", "coil"]);

/** How many times its current a contact should be rated for, by what kind of load is on in that state, weighted by current. */
function deratingOf({ compiled, job }: Design, { state }: WorstCurrent) {
  const column = job.supply.nominalV > 12 ? "at28Ratio" : "at12Ratio";
  const solution = compiled.solve(state ?? {});
  const placeOf = new Map(compiled.jobNetwork.elements.map(({ of }, k) => [of, k]));
  const drawn = new Map<string, number>();
  for (const load of loadsOf(job)) {
    const kind = INDUCTIVE.has(load.part.kind) ? "inductive" : KINDS[load.kind];
    const currentA = Math.abs(solution.elementA[placeOf.get(load.ref) ?? -1] ?? 0);
    drawn.set(kind, (drawn.get(kind) ?? 0) + currentA);
  }
  const totalA = [...drawn.values()].reduce((sum, one) => sum + one, 0);
  const figures = allTables.switchDerating.rows.map(({ id }) =>
    figure("switchDerating", id, column),
  );
  const ratio = figures.reduce(
    (sum, one) => sum + (one.value * (drawn.get(one.row) ?? 0)) / (totalA || 1),
    0,
  );
  const most = [...drawn].sort((a, b) => b[1] - a[1])[0];
  return { ratio: Math.max(1, ratio), kind: most?.[0] ?? "resistive", figures };
}
