import { presentParts } from "../../job/index.ts";
import type { Finding } from "../../messages/index.ts";
import type { Guard } from "../../protect/index.ts";
import { figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import { listA } from "../fuseFacts.ts";
import type { Design, Judge } from "../judge.ts";
import { listFigure } from "../wireLimit.ts";

interface Unfused {
  readonly wire: string;
  readonly guard: Guard;
}

/**
 * Wires a battery reaches with no fuse between: the starter's cable by convention, a short main lead up to a stated
 * length, anything else not at all.
 */
export const unfusedWires: Judge = (design) => {
  const found = unfused(design, "battery");
  const starter = found.filter(({ wire }) => isStarterCable(design, wire));
  const leads = found.filter((one) => !starter.includes(one));
  const limit = figure("protectionRules", "unfused-lead", "value");
  const isShort = ({ guard }: Unfused): boolean =>
    guard.unfusedMm !== null && guard.unfusedMm <= limit.value;
  const short = leads.filter(isShort);
  const long = leads.filter((one) => !isShort(one) && one.guard.unfusedMm !== null);
  const unmeasured = leads.filter(({ guard }) => guard.unfusedMm === null);
  return [
    ...group("unfused-starter-cable", "advise", starter, null),
    ...group("unfused-lead", "advise", short, limit),
    ...group("unfused-wire", "stop", long, limit),
    ...group("unfused-wire-unmeasured", "not-proven", unmeasured, limit),
  ];
};

/** Conductors of loom and parts that a source of one kind reaches with no fuse between, not counting through a load. */
export function unfused(design: Design, kind: Guard["sourceKind"]): readonly Unfused[] {
  return [...design.protection.guards].flatMap(([wire, guards]) =>
    guards
      .filter(({ sumA, via, sourceKind }) => sumA === null && via === null && sourceKind === kind)
      .slice(0, 1)
      .map((guard) => ({ wire, guard })),
  );
}

/** Wires of a starter circuit, and what lies between them and the battery or motor. */
function isStarterCable({ job, conductors }: Design, id: string): boolean {
  const { circuit, from, to } = conductors.get(id)!;
  const dropClass = job.circuits.find((one) => one.id === circuit)?.dropClass;
  if (dropClass !== undefined) return dropClass === "starter";
  const parts = presentParts(job).filter(
    (part) => from.startsWith(`${part.id}.`) || to.startsWith(`${part.id}.`),
  );
  return parts.some((part) => part.kind === "motor" && part.use === "starter");
}

function group(
  code: string,
  severity: Finding["severity"],
  found: readonly Unfused[],
  limit: Finding["limit"],
): readonly Finding[] {
  const longest = [...found].sort(
    (a, b) => (b.guard.unfusedMm ?? Infinity) - (a.guard.unfusedMm ?? Infinity),
  )[0];
  if (longest === undefined) return [];
  return [
    findingOf({
      code,
      severity,
      subject: { kind: "wire", id: longest.wire },
      also: found.map(({ wire }) => wire).filter((wire) => wire !== longest.wire),
      limit,
      numbers: {
        source: longest.guard.source,
        unfusedMm: longest.guard.unfusedMm,
        wireCount: found.length,
      },
    }),
  ];
}

/** Wires a generator reaches with no fuse between: no fuse there would open, so the wire carries what the machine can give. */
export const generatorWires: Judge = (design) => {
  const groups = new Map<string, Unfused[]>();
  for (const one of unfused(design, "generator")) {
    if (listA(design, one.wire) === 0) continue;
    const part = generatorOf(design, one.guard.source.split(".")[0]!);
    groups.set(part, [...(groups.get(part) ?? []), one]);
  }
  const toldRatio = figure("protectionRules", "generator-wire-told", "value").value;
  return [...groups].flatMap(([part, found]) =>
    generatorFinding(design, { part, found, toldRatio }),
  );
};

/** A regulator sends what its generator makes. */
function generatorOf({ job }: Design, id: string): string {
  const part = job.parts.find((one) => one.id === id);
  return part?.kind === "regulator" ? (part.generator ?? id) : id;
}

/** Quiet where the weakest wire has enough to spare that there is nothing to look after. */
function generatorFinding(
  design: Design,
  {
    part,
    found,
    toldRatio,
  }: { readonly part: string; readonly found: readonly Unfused[]; readonly toldRatio: number },
): readonly Finding[] {
  const weakest = found.reduce((least, one) =>
    listA(design, one.wire) < listA(design, least.wire) ? one : least,
  );
  // Windings of one machine are alike: what is stated for one phase holds for the others.
  const ceilings = found.flatMap(({ guard }) => guard.ceilingA ?? []);
  const ceilingA = ceilings.length === 0 ? null : Math.max(...ceilings);
  const limit = listFigure(design, weakest.wire);
  const heatAgrees = (ceilingA ?? 0) > design.ratings.get(weakest.wire)!.modelA;
  const isOver = ceilingA !== null && ceilingA > limit.value;
  if (ceilingA !== null && limit.value >= toldRatio * ceilingA) return [];
  const finding = findingOf({
    code:
      ceilingA === null
        ? "generator-ceiling-unknown"
        : isOver
          ? "generator-over-wire"
          : "generator-wire-unfused",
    severity: ceilingA === null ? "not-proven" : isOver ? "stop" : "advise",
    subject: { kind: "part", id: part },
    also: found.map(({ wire }) => wire),
    limit,
    restsOnFigures: isOver && !heatAgrees,
    numbers: {
      wire: weakest.wire,
      areaMm2: design.conductors.get(weakest.wire)!.areaMm2,
      wireCount: found.length,
      ceilingA,
    },
  });
  return [finding];
}
