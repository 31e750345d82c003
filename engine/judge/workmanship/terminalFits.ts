import type { PinPlace } from "../../job/index.ts";
import type { Finding, Severity } from "../../messages/index.ts";
import type { EndFitting, FittingProblem } from "../../size/index.ts";
import {
  bulletRanges,
  type Figure,
  figure,
  ringBarrels,
  studs,
  terminals,
} from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { sleevedBlades } from "./preInsulatedEnds.ts";

/**
 * Barrels and seals that do not suit the wire, and rings for a stud nobody stated: one finding a kind of trouble and terminal.
 * A range seen in print is mend; a remembered one is advice, because the maker's own barrel may be another.
 */
export const terminalRange: Judge = (design) => {
  const groups = new Map<string, EndFitting[]>();
  for (const fitting of design.fittings) {
    const { problem, terminal } = fitting;
    if (problem === null) continue;
    const isOfJob = problem === "stud-not-stated" || problem === "between-ranges";
    const key = isOfJob ? problem : `${problem} ${terminal}`;
    groups.set(key, [...(groups.get(key) ?? []), fitting]);
  }
  return [...groups].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, ends]) => troubled(design, ends));
};

function troubled(design: Design, ends: readonly EndFitting[]): Finding {
  const problem = ends[0]!.problem!;
  const thickest = [...ends].sort(
    (a, b) => b.barrelAreaMm2 - a.barrelAreaMm2 || (a.wire < b.wire ? -1 : 1),
  );
  const first = problem === "below-range" ? thickest.at(-1)! : thickest[0]!;
  const limit = rangeLimit(first, problem);
  const { terminal, pin, barrelAreaMm2, wireFromMm2, wireToMm2, sharedWith } = first;
  return findingOf({
    code: problem === "stud-not-stated" ? "stud-unknown" : `terminal-${problem}`,
    severity: severityOf(problem, limit),
    subject: { kind: "wire", id: first.wire },
    also: ends.map(({ wire }) => wire).filter((id) => id !== first.wire),
    numbers: {
      terminal,
      pin,
      copperMm2: barrelAreaMm2,
      fromMm2: wireFromMm2,
      toMm2: wireToMm2,
      sharedWith: sharedWith.length === 0 ? null : sharedWith.join(", "),
      odMm: design.conductors.get(first.wire)?.odMm ?? null,
    },
    limit,
  });
}

function severityOf(problem: FittingProblem, limit: Figure | null): Severity {
  if (problem === "stud-not-stated" || problem === "between-ranges") return "advise";
  if (problem === "insulation") return "mend";
  return limit === null || limit.confidence === "memory" ? "advise" : "mend";
}

/** The end of the range that was passed; above what the standard allows any blade, the standard's. */
function rangeLimit(fitting: EndFitting, problem: FittingProblem): Figure | null {
  if (problem !== "below-range" && problem !== "above-range") return null;
  const { terminal, kind, barrelAreaMm2, wireFromMm2 } = fitting;
  const scope = figure("workmanshipRules", "blade-scope", "value");
  if (kind === "blade" && problem === "above-range" && barrelAreaMm2 > scope.value) return scope;
  const column = problem === "below-range" ? "wireFromMm2" : "wireToMm2";
  const bore = bulletRanges.find(
    (row) => terminal === `bullet-${row.pinMm}` && row.wireFromMm2 === wireFromMm2,
  );
  if (bore !== undefined) return figure("bulletRanges", bore.id, column);
  const barrel = ringBarrels.find((row) => row.wireFromMm2 === wireFromMm2);
  if (kind === "ring")
    return barrel === undefined ? null : figure("ringBarrels", barrel.id, column);
  if (terminal === null || !terminals.some(({ id }) => id === terminal)) return null;
  return figure("terminals", terminal, column);
}

/** Terminals a person chose that do not go on what is there: a blade on a stud, a ring too small for it, another bullet, another block. */
export const terminalMate: Judge = (design) =>
  design.fittings
    .filter(({ chosenBy, terminal }) => chosenBy === "person" && terminal !== null)
    .flatMap((fitting) => {
      const place = design.pins.get(fitting.pin);
      if (place === undefined) return [];
      const stud = studAt(place);
      if (stud !== null) return studFindings(fitting, stud);
      const mates = matesAt(place);
      if (mates === null || mates.has(fitting.terminal!)) return [];
      const offered = [...mates].sort().join(" or ");
      return findingOf({
        code: "terminal-mate",
        severity: "mend",
        subject: { kind: "wire", id: fitting.wire },
        numbers: { terminal: fitting.terminal, pin: fitting.pin, offered },
        limit: null,
      });
    });

function studFindings({ wire, pin, terminal }: EndFitting, stud: string): readonly Finding[] {
  const subject = { kind: "wire", id: wire } as const;
  const ring = studs.find(({ id }) => terminal === `ring-${id}`);
  if (ring === undefined) {
    const numbers = { terminal, pin, offered: `ring-${stud}` };
    return [findingOf({ code: "terminal-mate", severity: "mend", subject, numbers, limit: null })];
  }
  if (ring.id === stud) return [];
  const thread = figure("studs", stud, "threadMm");
  const hole = figure("studs", ring.id, "holeMm");
  const tooSmall = hole.value < thread.value;
  return [
    findingOf({
      code: tooSmall ? "ring-too-small" : "ring-too-large",
      severity: tooSmall ? "mend" : "advise",
      subject,
      numbers: { terminal, pin, holeMm: hole.value, stud },
      limit: thread,
      figures: [hole],
    }),
  ];
}

function studAt(place: PinPlace): string | null {
  if (place.ownerKind === "part")
    return place.part.pins.find(({ id }) => id === place.pinId)?.stud ?? null;
  if (place.ownerKind !== "body") return null;
  return place.body.points.find(({ id }) => id === place.pinId)?.stud ?? null;
}

const idsOfClass = (kind: string): readonly string[] =>
  terminals.filter((row) => row.class === kind).map(({ id }) => id);

const BLADES_6 = ["blade-6.3", "blade-6.3-large"];

/** Terminals that go together with what is there; null where nobody said what is there. */
function matesAt(place: PinPlace): ReadonlySet<string> | null {
  if (place.ownerKind === "connector") {
    const { kind } = place.connector;
    if (kind === "bullet-joint") return new Set(idsOfClass("bullet"));
    if (kind === "block-6.3") return new Set(BLADES_6);
    return new Set([kind === "block-2.8" ? "blade-2.8" : kind]);
  }
  if (place.ownerKind === "joint")
    return place.joint.kind === "multiway-bullet" ? new Set(idsOfClass("bullet")) : null;
  if (place.ownerKind !== "part") return null;
  const terminal = place.part.pins.find(({ id }) => id === place.pinId)?.flyLead?.terminal;
  if (terminal === undefined) return null;
  return new Set(BLADES_6.includes(terminal) ? [...BLADES_6, ...sleevedBlades] : [terminal]);
}
