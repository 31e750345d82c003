import type { Finding } from "../../messages/index.ts";
import { type Figure, figure } from "../../tables/index.ts";
import { printQuantity } from "../../units/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";

/** A length somebody typed. */
interface Typed {
  readonly kind: "run" | "wire";
  readonly id: string;
  readonly lengthMm: number;
}

interface Doubt {
  readonly typed: Typed;
  readonly reason: "shorter-than-a-connector" | "longer-than-a-machine" | "same-figures" | "unlike";
  readonly limit: Figure | null;
  readonly like: string | null;
}

/** Lengths that look like another unit: asked about, never corrected. */
export const doubtfulLengths: Judge = ({ job }) => {
  const typed = typedLengths(job);
  const lengthsMm = typed
    .filter(({ kind }) => kind === "run")
    .map(({ lengthMm }) => lengthMm)
    .sort((a, b) => a - b);
  const middleMm = lengthsMm[Math.floor(lengthsMm.length / 2)] ?? null;
  return typed
    .flatMap((one) => doubtOf(one, typed, middleMm) ?? [])
    .map((doubt) => doubtFinding(doubt, middleMm));
};

function typedLengths(job: Design["job"]): readonly Typed[] {
  const runs = job.runs.map(({ id, lengthMm }) => ({ kind: "run" as const, id, lengthMm }));
  const wires = job.wires
    .filter(({ status }) => status !== "remove")
    .map(({ id, lengthMm }) => ({ kind: "wire" as const, id, lengthMm }));
  return [...runs, ...wires].flatMap(({ kind, id, lengthMm }) =>
    lengthMm === undefined ? [] : [{ kind, id, lengthMm: lengthMm.value }],
  );
}

function doubtOf(typed: Typed, all: readonly Typed[], middleMm: number | null): Doubt | null {
  const least = figure("routeRules", "length-least", "value");
  const most = figure("routeRules", "length-most", "value");
  const unlike = figure("routeRules", "length-unlike", "value");
  const { lengthMm } = typed;
  if (lengthMm < least.value) {
    return { typed, reason: "shorter-than-a-connector", limit: least, like: null };
  }
  if (lengthMm > most.value) {
    return { typed, reason: "longer-than-a-machine", limit: most, like: null };
  }
  const twin = all.find((other) => isSameFigures(typed, other));
  if (twin !== undefined) return { typed, reason: "same-figures", limit: null, like: twin.id };
  if (typed.kind === "wire" || middleMm === null) return null;
  const timesRatio = Math.max(lengthMm / middleMm, middleMm / lengthMm);
  return timesRatio > unlike.value ? { typed, reason: "unlike", limit: unlike, like: null } : null;
}

/** 160 and 1600, 1.6 and 160: the same figures with the point elsewhere. One figure alone (300 and 30) says nothing. */
function isSameFigures(one: Typed, other: Typed): boolean {
  if (one.kind !== other.kind || one.lengthMm === other.lengthMm) return false;
  const figures = ({ lengthMm }: Typed): string =>
    lengthMm.toString().replace(".", "").replace(/^0+/, "").replace(/0+$/, "");
  return figures(one).length > 1 && figures(one) === figures(other);
}

/** Millimetres that were centimetres, metres or inches, and the reverse. */
const READINGS = [
  { unit: "cm", timesMm: 10 },
  { unit: "m", timesMm: 1000 },
] as const;

function doubtFinding({ typed, reason, limit, like }: Doubt, middleMm: number | null): Finding {
  const { lengthMm, id, kind } = typed;
  const timesRatio = figure("routeRules", "length-unlike", "value").value;
  const least = figure("routeRules", "length-least", "value").value;
  const most = figure("routeRules", "length-most", "value").value;
  const goodMm = {
    least: Math.max(least, (middleMm ?? least) / timesRatio),
    most: Math.min(most, (middleMm ?? most) * timesRatio),
  };
  const readings = [
    ...READINGS.map(({ unit, timesMm }) => ({ mm: lengthMm * timesMm, as: `${lengthMm} ${unit}` })),
    { mm: lengthMm / 10, as: "a nought too many" },
  ].filter(({ mm }) => mm >= goodMm.least && mm <= goodMm.most);
  return findingOf({
    code: `length-doubtful-${reason}`,
    severity: "mend",
    subject: { kind, id },
    also: like === null ? [] : [like],
    limit,
    numbers: {
      typedAs: `${lengthMm} mm`,
      lengthMm,
      middleMm,
      like,
      readings:
        readings.length === 0
          ? null
          : readings.map(({ mm, as }) => `${printQuantity(mm, "mm")} (${as})`).join(" or "),
    },
    remedies: readings.map(({ mm, as }) => ({
      kind: "read-as",
      change: [lengthChange(typed, mm)],
      cures: null,
      newNumbers: { readMm: mm, as },
    })),
  });
}

function lengthChange({ kind, id }: Typed, mm: number) {
  const list = kind === "run" ? "runs" : "wires";
  return { op: "set", list, id, path: ["lengthMm"], value: { value: mm, basis: "measured" } };
}
