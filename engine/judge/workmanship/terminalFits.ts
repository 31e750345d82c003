import type { PinPlace } from "../../job/index.ts";
import type { Finding, Severity } from "../../messages/index.ts";
import { type EndFitting, endFittings, type FittingProblem } from "../../size/index.ts";
import { type Figure, figure, studs, terminals } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";

const SEVERITY: Readonly<Record<FittingProblem, Severity>> = {
  "below-range": "mend",
  "above-range": "mend",
  "between-ranges": "advise",
  insulation: "mend",
  "stud-not-stated": "advise",
};

/** Barrels and seals that do not suit the wire, and rings for a stud nobody stated: one finding a kind of trouble and terminal. */
export const terminalRange: Judge = (design) => {
  const groups = new Map<string, EndFitting[]>();
  for (const fitting of endFittings(design.job, design.conductors)) {
    const { problem } = fitting;
    if (problem === null) continue;
    const key = problem === "stud-not-stated" ? problem : `${problem} ${fitting.terminal}`;
    groups.set(key, [...(groups.get(key) ?? []), fitting]);
  }
  return [...groups].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, ends]) => troubled(design, ends));
};

function troubled(design: Design, ends: readonly EndFitting[]): Finding {
  const problem = ends[0]!.problem!;
  const worst = [...ends].sort((a, b) => b.barrelAreaMm2 - a.barrelAreaMm2);
  const first = problem === "below-range" ? worst.at(-1)! : worst[0]!;
  const wires = ends.map(({ wire }) => wire).filter((id) => id !== first.wire);
  const odMm = design.conductors.get(first.wire)?.odMm ?? null;
  return findingOf({
    code: problem === "stud-not-stated" ? "stud-unknown" : `terminal-${problem}`,
    severity: SEVERITY[problem],
    subject: { kind: "wire", id: first.wire },
    also: wires,
    numbers: {
      terminal: first.terminal,
      pin: first.pin,
      copperMm2: first.barrelAreaMm2,
      fromMm2: first.wireFromMm2,
      toMm2: first.wireToMm2,
      sharedWith: first.sharedWith.length === 0 ? null : first.sharedWith.join(", "),
      odMm,
    },
    limit: rangeLimit(first, problem),
  });
}

function rangeLimit({ terminal }: EndFitting, problem: FittingProblem): Figure | null {
  if (terminal === null || !terminals.some(({ id }) => id === terminal)) return null;
  if (problem === "insulation") return null;
  const column = problem === "below-range" ? "wireFromMm2" : "wireToMm2";
  return figure("terminals", terminal, column);
}

/** Terminals a person chose that do not go on what is there: a blade on a stud, a ring too small for it, another bullet, another block. */
export const terminalMate: Judge = (design) =>
  endFittings(design.job, design.conductors)
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
  return new Set(BLADES_6.includes(terminal) ? BLADES_6 : [terminal]);
}
