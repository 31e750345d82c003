import { figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Judge } from "../judge.ts";

/** Insulation whose class is no hotter than the air it lies in: it ages, softens and shorts with no current in it at all. */
export const insulationClass: Judge = ({ conductors, routed }) => {
  const cooked = [...conductors.values()]
    .filter(({ classC, ambientC }) => classC <= ambientC)
    .sort((a, b) => a.classC - a.ambientC - (b.classC - b.ambientC) || (a.id < b.id ? -1 : 1));
  const [first, ...others] = cooked;
  if (first === undefined) return [];
  const { id, kind, classC, ambientC, insulation, makeId } = first;
  return [
    findingOf({
      code: "insulation-class",
      severity: "mend",
      subject: { kind, id },
      also: others.map((one) => one.id),
      numbers: { makeId, insulation, classC, ambientC, at: routed.ambients.get(id)?.at ?? null },
      limit: figure("wires", makeId, "tempClassC"),
    }),
  ];
};

/** Runs beside the exhaust with wires in them. */
export const nearExhaust: Judge = ({ job, routed }) => {
  const used = new Set(routed.stretches.map(({ run }) => run));
  const [first, ...others] = job.runs
    .filter(({ id, surroundings }) => surroundings === "near-exhaust" && used.has(id))
    .map(({ id }) => id)
    .sort();
  if (first === undefined) return [];
  const shielded = figure("loomRules", "exhaust-shielded", "value");
  return [
    findingOf({
      code: "near-exhaust",
      severity: "advise",
      subject: { kind: "run", id: first },
      also: others,
      numbers: { shieldedMm: shielded.value },
      limit: figure("loomRules", "exhaust", "value"),
      figures: [shielded],
      restsOnFigures: false,
    }),
  ];
};

/** A taped loom in air hotter than vinyl tape holds: it lets go and runs. */
export const tapeHot: Judge = ({ job, routed }) => {
  const limit = figure("loomRules", "tape-hot", "value");
  const taped = new Set(job.looms.filter((loom) => loom.covering === "tape").map(({ id }) => id));
  const hot = routed.stretches
    .filter(({ loom, ambientC }) => loom !== null && taped.has(loom) && ambientC > limit.value)
    .sort((a, b) => b.ambientC - a.ambientC || (a.id < b.id ? -1 : 1));
  const [first] = hot;
  if (first === undefined) return [];
  const runs = [...new Set(hot.map(({ run }) => run))];
  return [
    findingOf({
      code: "tape-hot",
      severity: "advise",
      subject: { kind: "loom", id: first.loom! },
      also: hot.map(({ loom }) => loom!).filter((loom) => loom !== first.loom),
      numbers: { run: first.run, ambientC: first.ambientC, runs: runs.join(", ") },
      limit,
    }),
  ];
};
