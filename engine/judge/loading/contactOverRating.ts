import { loadsOf, type Part, presentParts } from "../../job/index.ts";
import type { Figure, Finding } from "../../messages/index.ts";
import type { QuickState } from "../../operate/index.ts";
import { allTables, figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { operateCommand, stateOf } from "../stateArguments.ts";

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

function contactFindings(design: Design): readonly Finding[] {
  const deratingIn = deratings(design);
  const partOf = partOfContact(design);
  return [...design.worst.contacts].flatMap(([contact, most]): readonly Finding[] => {
    const part = partOf(contact);
    const stated = part !== undefined && "contactRatingA" in part ? part.contactRatingA : undefined;
    if (stated === undefined || most.state === null) return [];
    const derating = deratingIn(most.state);
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
}

function partOfContact({ job }: Design): (contact: string) => Part | undefined {
  const parts = new Map(presentParts(job).map((part) => [part.id, part]));
  return (contact) => parts.get(contact.slice(0, contact.indexOf(":")));
}

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

interface Derating {
  readonly ratio: number;
  readonly kind: string;
  readonly figures: readonly Figure[];
}

/**
 * Answers how many times its current a contact should be rated for, by what kind of load is on in a state, weighted by
 * current. A state many contacts carry most in is solved once.
 */
function deratings({ compiled, job }: Design): (state: QuickState) => Derating {
  const placeOf = new Map(compiled.jobNetwork.elements.map(({ of }, k) => [of, k]));
  const loads = loadsOf(job).map((load) => ({
    kind: INDUCTIVE.has(load.part.kind) ? "inductive" : KINDS[load.kind],
    place: placeOf.get(load.ref) ?? -1,
  }));
  const known = new Map<QuickState, Derating>();
  return (state) => {
    const derating = known.get(state) ?? deratingOf(job, loads, compiled.solve(state).elementA);
    known.set(state, derating);
    return derating;
  };
}

function deratingOf(
  job: Design["job"],
  loads: readonly { readonly kind: string; readonly place: number }[],
  elementA: Float64Array,
): Derating {
  const column = job.supply.nominalV > 12 ? "at28Ratio" : "at12Ratio";
  const drawn = new Map<string, number>();
  for (const { kind, place } of loads) {
    drawn.set(kind, (drawn.get(kind) ?? 0) + Math.abs(elementA[place] ?? 0));
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
