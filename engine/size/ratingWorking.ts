import type { WorkingInput, WorkingStep } from "../messages/index.ts";
import type { Figure, WiresRow } from "../tables/index.ts";
import type { Rating, RatingQuestion } from "./ratingOf.ts";

/** Everything that went into a rating, before it is written out. */
export interface RatingParts extends Omit<Rating, "working"> {
  readonly question: RatingQuestion;
  readonly row: WiresRow;
  readonly rated: Figure | null;
  readonly bundleFigures: readonly Figure[];
  readonly bundleBeyondTable: boolean;
  readonly aloneA: number;
  readonly togetherA: number;
}

const given = (name: string, value: number | string, unit: string, from: string): WorkingInput => ({
  name,
  value,
  unit,
  from,
});

const cited = (figure: Figure): string =>
  `tables/${figure.table} ${figure.row}: ${figure.source}, ${figure.place} (${figure.confidence})`;

/** The rating line by line: list, factors, model, and the lower of the two. */
export function ratingWorking(parts: RatingParts): readonly WorkingStep[] {
  return [...tableSteps(parts), ...modelSteps(parts), lowerStep(parts)];
}

function tableSteps(parts: RatingParts): WorkingStep[] {
  const { row, rated, question, ambientRatio, deratedTableA } = parts;
  if (rated === null || deratedTableA === null) return [bundleStep(parts)];
  const list = given("list", rated.value, "A", `${cited(rated)}; ${row.ratedBasis ?? ""}`);
  if (row.ratedUse !== "thermal") {
    return [
      bundleStep(parts),
      {
        name: "list for one wire, a rule of volts or custom: holds as it stands",
        equation: "I = list",
        inputs: [list],
        value: deratedTableA,
        unit: "A",
      },
    ];
  }
  return [
    {
      name: "ambient factor",
      equation: "least of 1 and sqrt((limit - air) / (limit - stated))",
      inputs: [
        given("limit", row.ratedConductorC ?? "", "C", `tables/wires ${row.id}`),
        given("air", question.ambientC, "C", "the wire's way"),
        given("stated", row.ratedAmbientC ?? "", "C", `tables/wires ${row.id}`),
      ],
      value: ambientRatio,
      unit: "ratio",
    },
    bundleStep(parts),
    {
      name: "list in this place",
      equation: "I = list x ambient factor x bundle factor",
      inputs: [
        list,
        given("ambient factor", ambientRatio, "ratio", "above"),
        given("bundle factor", parts.bundleRatio, "ratio", "above"),
      ],
      value: deratedTableA,
      unit: "A",
    },
  ];
}

function bundleStep(parts: RatingParts): WorkingStep {
  const { wireCount, loadedCount } = parts.question.bundle;
  const sources = parts.bundleFigures.map(cited).join("; ");
  return {
    name: parts.bundleBeyondTable
      ? "bundle factor (the published curve ends before so many wires: its last row, which is too kind)"
      : "bundle factor",
    equation: "published curve at so many wires and so many of them loaded",
    inputs: [
      given("wires", wireCount, "count", "stretch with the lowest rating"),
      given("loaded", loadedCount, "count", "stretch with the lowest rating"),
      given("rows", sources, "", "tables"),
    ],
    value: parts.bundleRatio,
    unit: "ratio",
  };
}

function modelSteps(parts: RatingParts): WorkingStep[] {
  const { question, row } = parts;
  const inputs = [
    given("class", row.tempClassC, "C", `tables/wires ${row.id}`),
    given("air", question.ambientC, "C", "the wire's way"),
  ];
  return [
    {
      name: "heat model, one wire in still air",
      equation: "I = sqrt(heat that leaves at the class temperature / hot resistance)",
      inputs,
      value: parts.aloneA,
      unit: "A",
    },
    {
      name: "heat model in the bundle, all loaded wires alike",
      equation: "the same with the heat of all of them through one surface",
      inputs: [
        ...inputs,
        given("wires", question.bundle.wireCount, "count", "stretch"),
        given("loaded", question.bundle.loadedCount, "count", "stretch"),
      ],
      value: parts.togetherA,
      unit: "A",
    },
    {
      name: "heat model used",
      equation: "least of alone x bundle factor and in the bundle",
      inputs: [
        given("alone", parts.aloneA, "A", "above"),
        given("bundle factor", parts.bundleRatio, "ratio", "above"),
        given("in the bundle", parts.togetherA, "A", "above"),
      ],
      value: parts.modelA,
      unit: "A",
    },
  ];
}

function lowerStep(parts: RatingParts): WorkingStep {
  return {
    name: `rating: the ${parts.governedBy} governs`,
    equation: "I = least of list in this place and heat model",
    inputs: [
      given("list", parts.deratedTableA ?? "none", "A", "above"),
      given("model", parts.modelA, "A", "above"),
    ],
    value: parts.currentA,
    unit: "A",
  };
}
