import type { Operation } from "../job/index.ts";
import type { Finding, Remedy } from "../messages/index.ts";
import { wireGuards } from "../protect/index.ts";
import { makeFields } from "../route/index.ts";
import { allTables, wires as makes } from "../tables/index.ts";
import { fusesOf, survivalOfWires } from "./allWires.ts";
import type { CurrentTallies } from "./currentTallies.ts";
import { exposuresIn, type ProofPlan } from "./proofPlan.ts";
import type { JudgedWire } from "./wireFindings.ts";

/** Findings about a wire for which a change is tried; the others are told without. */
const TRIED = new Set(["proof-wire-not-saved", "proof-remembered-limit", "proof-fuse-band-ends"]);
/** Thicker copper is tried for this many findings. */
const MOST_FINDINGS = 12;

/**
 * The smallest changes that mend what is not saved, found by trying: a smaller fuse of the same kind (a blade where no page says how
 * quick the old one is), and the next thicker wires. A rating is put to the survival theorem for every wire found behind that fuse; what
 * does not cure is left out.
 */
export function withRemedies(
  plan: ProofPlan,
  tallies: CurrentTallies,
  judged: readonly JudgedWire[],
  findings: readonly Finding[],
): readonly Finding[] {
  let triedCount = 0;
  const byFuse = new Map<string, Remedy | null>();
  const wireOf = new Map(judged.map((one) => [one.survival.wire, one]));
  const tried = findings.filter(({ code, subject }) => TRIED.has(code) && wireOf.has(subject.id));
  return findings.map((finding) => {
    const wire = wireOf.get(finding.subject.id);
    if (wire === undefined || !TRIED.has(finding.code)) return finding;
    const cut = wire.survival.answers[0]!.exposure.cut.join();
    const key = `${cut} ${isBandEnd(finding)}`;
    // One fuse has one rating: the one that saves every wire found behind it.
    if (!byFuse.has(key)) {
      const behind = tried.filter(
        (one) =>
          isBandEnd(one) === isBandEnd(finding) &&
          wireOf.get(one.subject.id)!.survival.answers[0]!.exposure.cut.join() === cut,
      );
      byFuse.set(key, fuseRemedy(plan, tallies, wire, behind));
    }
    const isSized = triedCount++ < MOST_FINDINGS;
    const size = isSized ? sizeRemedy(plan, tallies, wire) : null;
    const remedies = [byFuse.get(key) ?? null, size];
    return { ...finding, remedies: remedies.filter((one): one is Remedy => one !== null) };
  });
}

const isBandEnd = ({ code }: Finding): boolean => code === "proof-fuse-band-ends";

/** Largest standard rating below the one fitted, and not below the largest lasting current, with which all wires are saved. */
function fuseRemedy(
  plan: ProofPlan,
  tallies: CurrentTallies,
  { survival }: JudgedWire,
  findings: readonly Finding[],
): Remedy | null {
  const { exposure } = survival.answers[0]!;
  const fuse = fusesOf(plan.input.job).get(exposure.cut[0] ?? "");
  if (fuse === undefined || exposure.cut.length !== 1) return null;
  const isBlade = findings.every(isBandEnd);
  const type = isBlade ? "blade" : fuse.type;
  const { elements } = plan.solver.compiled.jobNetwork;
  const element = elements.findIndex(({ kind, of }) => kind === "fuse" && of === fuse.id);
  const loadA = tallies.lastingA[element]!;
  const ratings = allTables.fuseStandardRatings.rows
    .filter((row) => row.type === type && row.ratedA >= loadA)
    .map((row) => row.ratedA)
    .filter((ratedA) => (isBlade ? ratedA <= fuse.ratingA : ratedA < fuse.ratingA))
    .sort((a, b) => b - a);
  const wires = [...new Set(findings.flatMap(({ subject, also }) => [subject.id, ...also]))].filter(
    (id) => plan.input.conductors.has(id),
  );
  for (const newFuseA of ratings) {
    const job = {
      ...plan.input.job,
      parts: plan.input.job.parts.map((part) =>
        part.id === fuse.id && part.kind === "fuse"
          ? { ...part, type, ratingA: newFuseA, marking: "continuous" as const }
          : part,
      ),
    };
    const newPeakC = peakIfSaved(reguarded(plan, job), tallies, wires, fuse.id);
    if (newPeakC === null) continue;
    const set = (path: string, value: unknown): Operation => ({
      op: "set",
      list: "parts",
      id: fuse.id,
      path: [path],
      value,
    });
    const change = [set("ratingA", newFuseA), ...(isBlade ? [set("type", "blade")] : [])];
    const newNumbers = { newFuseA, newPeakC, cut: fuse.id };
    return { kind: isBlade ? "blade" : "fuse", change, cures: true, newNumbers };
  }
  return null;
}

/** The thinnest make of the same insulation and kind that saves this wire. */
function sizeRemedy(
  plan: ProofPlan,
  tallies: CurrentTallies,
  { survival }: JudgedWire,
): Remedy | null {
  const { conductors } = plan.input;
  const conductor = conductors.get(survival.wire)!;
  if (conductor.kind !== "wire") return null;
  const kind = conductor.makeId.split("-")[0];
  const thicker = makes
    .filter((row) => row.id.split("-")[0] === kind)
    .map((row) => makeFields(row.id))
    .filter((make) => make.areaMm2 > conductor.areaMm2 && make.insulation === conductor.insulation)
    .sort((a, b) => a.areaMm2 - b.areaMm2);
  for (const make of thicker) {
    const changed = new Map(conductors).set(survival.wire, { ...conductor, ...make });
    const tried = { ...plan, input: { ...plan.input, conductors: changed } };
    const newPeakC = peakIfSaved(tried, tallies, [survival.wire]);
    if (newPeakC === null) continue;
    const value = { make: make.makeId, basis: "chosen" };
    const change: readonly Operation[] = [
      { op: "set", list: "wires", id: survival.wire, path: ["size"], value },
    ];
    return { kind: "size", change, cures: true, newNumbers: { makeId: make.makeId, newPeakC } };
  }
  return null;
}

/**
 * The hottest any of the wires gets; null where one of them is still not saved. Another size feeds nothing another way, so guards stay.
 *
 * @param behind  only what comes through this fuse is asked; absent: everything.
 */
function peakIfSaved(
  plan: ProofPlan,
  tallies: CurrentTallies,
  wires: readonly string[],
  behind?: string,
): number | null {
  const answers = survivalOfWires(plan, tallies.lastingA, wires).flatMap((one) =>
    one.answers.filter(({ exposure }) => behind === undefined || exposure.cut.includes(behind)),
  );
  if (answers.some(({ ruling }) => ruling !== "saved")) return null;
  return Math.max(0, ...answers.map(({ worst }) => worst?.peakC ?? 0));
}

/** The plan with other ratings: which fuses cut a wire off goes by what they carry together. */
function reguarded(plan: ProofPlan, job: ProofPlan["input"]["job"]): ProofPlan {
  const { conductors } = plan.input;
  const protection = wireGuards(job, plan.solver.compiled.jobNetwork, conductors);
  const input = { ...plan.input, job, protection };
  return { ...plan, input, exposuresOf: exposuresIn(input, plan.solver.compiled) };
}
