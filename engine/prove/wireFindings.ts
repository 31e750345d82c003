import type { Figure, Finding } from "../messages/index.ts";
import type { Conductor } from "../route/index.ts";
import { figure } from "../tables/index.ts";
import type { WireSurvival } from "./allWires.ts";
import { proofFinding } from "./proofFinding.ts";
import type { ProofPlan } from "./proofPlan.ts";
import type { WorstShort } from "./proveResult.ts";
import { generatorOf } from "./sourceCeilings.ts";
import type { Peak, SurvivalAnswer } from "./wireSurvival.ts";

export interface JudgedWire {
  readonly survival: WireSurvival;
  readonly worst: WorstShort | null;
}

/** What the survival of the wires comes to: one finding a wire that is not saved, one a fuse where only the proof is lacking. */
export function wireFindings(plan: ProofPlan, wires: readonly JudgedWire[]): readonly Finding[] {
  const notSaved = wires.filter(
    ({ survival }) => survival.ruling === "stop" || survival.ruling === "mend",
  );
  return [
    ...notSaved.map((wire) => notSavedFinding(plan, wire)),
    ...unfusedFindings(plan, wires),
    ...grouped(plan, wires, "remembered-limit"),
    ...grouped(plan, wires, "band-ends"),
    ...generatorFindings(plan, wires),
  ];
}

const peakOf = (answer: SurvivalAnswer): Peak => {
  const over = [answer.short, answer.long, answer.forever].filter(
    (one): one is Peak => one !== null,
  );
  return over.reduce((low, one) => (one.marginK < low.marginK ? one : low), answer.worst!);
};

/** Of the peaks that only remembered limits speak of, the hottest. */
const hottestOf = ({ long, forever, worst }: SurvivalAnswer): Peak =>
  [long, forever].reduce<Peak>(
    (most, one) => (one !== null && one.peakC > most.peakC ? one : most),
    forever ?? long ?? worst!,
  );

const cutWords = ({ exposure: { cut } }: SurvivalAnswer): string =>
  cut.length === 0 ? "no fuse" : cut.join(" and ");

const subjectOf = (plan: ProofPlan, id: string) =>
  ({ kind: plan.input.conductors.get(id)?.kind === "flyLead" ? "flyLead" : "wire", id }) as const;

/** The limit of a duration with where it comes from; the value is that of the tenderest insulation in the bundle. */
export function limitFigure(
  { placed }: SurvivalAnswer,
  peak: Peak,
  { insulation }: Conductor,
): Figure {
  const value = placed.limits[`${peak.duration}C`];
  const base =
    peak.duration === "short"
      ? figure("insulations", insulation, "adiabaticEndC")
      : figure("heatLimits", peak.duration === "long" ? "hours-rise" : "endless-rise", "value");
  return { ...base, value, unit: "C" };
}

function notSavedFinding(plan: ProofPlan, { survival, worst }: JudgedWire): Finding {
  const answer = survival.answers[0]!;
  const conductor = plan.input.conductors.get(survival.wire)!;
  const { exposure } = answer;
  if (answer.worst === null) {
    return proofFinding(plan, {
      code: "proof-wire-not-saved",
      severity: "stop",
      subject: subjectOf(plan, survival.wire),
      numbers: {
        peakC: answer.placed.limits.shortC,
        currentA: exposure.sumA ?? exposure.largestA,
        source: exposure.source,
        cut: cutWords(answer),
      },
      limit: { ...figure("insulations", conductor.insulation, "adiabaticEndC") },
    });
  }
  const peak = peakOf(answer);
  return proofFinding(plan, {
    code: "proof-wire-not-saved",
    severity: survival.ruling === "mend" ? "mend" : "stop",
    subject: subjectOf(plan, survival.wire),
    also: exposure.through === null ? [] : [exposure.through],
    numbers: {
      peakC: peak.peakC,
      currentA: peak.currentA,
      source: exposure.source,
      cut: cutWords(answer),
      timeS: peak.timeS,
      place: worst === null ? null : `${worst.place} to ${worst.to}`,
    },
    limit: limitFigure(answer, peak, conductor),
    leansOnMemory: survival.leansOnMemory,
    state: worst?.state ?? null,
    reproduce: worst?.reproduce ?? null,
  });
}

function unfusedFindings(plan: ProofPlan, wires: readonly JudgedWire[]): readonly Finding[] {
  const limit = figure("protectionRules", "unfused-lead", "value");
  return wires
    .filter(({ survival }) => survival.ruling === "unfused")
    .map(({ survival: { wire, answers }, worst }) => {
      const { exposure } = answers[0]!;
      const lengthMm = exposure.unfusedMm;
      const subject = subjectOf(plan, wire);
      const shown = { state: worst?.state ?? null, reproduce: worst?.reproduce ?? null };
      if (isStarterCable(plan, wire)) {
        return proofFinding(plan, {
          code: "proof-starter-cable-unfused",
          severity: "advise",
          subject,
          ...shown,
        });
      }
      if (lengthMm !== null && lengthMm <= limit.value) {
        const numbers = { lengthMm };
        return proofFinding(plan, {
          code: "proof-lead-unfused",
          severity: "advise",
          subject,
          numbers,
          limit,
          ...shown,
        });
      }
      return proofFinding(plan, {
        code: "proof-wire-unfused",
        severity: "stop",
        subject,
        numbers: { source: exposure.source, currentA: worst?.currentA ?? exposure.largestA },
        ...shown,
      });
    });
}

/** A wire of a circuit of the starter's own kind, or a lead of a starter. */
export function isStarterCable({ input: { job, conductors } }: ProofPlan, id: string): boolean {
  const { circuit, from, to } = conductors.get(id)!;
  const dropClass = job.circuits.find((one) => one.id === circuit)?.dropClass;
  if (dropClass !== undefined) return dropClass === "starter";
  return job.parts.some(
    (part) =>
      part.kind === "motor" &&
      part.use === "starter" &&
      (from.startsWith(`${part.id}.`) || to.startsWith(`${part.id}.`)),
  );
}

const CODES = {
  "remembered-limit": "proof-remembered-limit",
  "band-ends": "proof-fuse-band-ends",
} as const;

/** One finding for each fuse, told of the wire that comes out worst. */
function grouped(
  plan: ProofPlan,
  wires: readonly JudgedWire[],
  why: "remembered-limit" | "band-ends",
): readonly Finding[] {
  const byCut = new Map<string, JudgedWire[]>();
  for (const wire of wires) {
    const answer = wire.survival.answers[0];
    if (wire.survival.ruling !== "not-proven" || answer?.why !== why) continue;
    const key = `${answer.exposure.cut.join(" ")} ${answer.exposure.cut.length === 0 ? answer.exposure.source : ""}`;
    byCut.set(key, [...(byCut.get(key) ?? []), wire]);
  }
  return [...byCut.values()].map((list) => {
    const overK = ({ survival }: JudgedWire): number => -peakOf(survival.answers[0]!).marginK;
    const worst = list.reduce((most, one) => (overK(one) > overK(most) ? one : most));
    const answer = worst.survival.answers[0]!;
    const peak = why === "band-ends" ? peakOf(answer) : hottestOf(answer);
    const { wire } = worst.survival;
    return proofFinding(plan, {
      code: CODES[why],
      severity: "not-proven",
      subject: subjectOf(plan, wire),
      also: list.map(({ survival }) => survival.wire).filter((id) => id !== wire),
      numbers: {
        cut: answer.exposure.cut.length === 0 ? answer.exposure.source : cutWords(answer),
        peakC: peak.peakC,
        currentA: peak.currentA,
        ...(why === "band-ends" && { endPercent: answer.endPercent ?? 0 }),
      },
      limit: limitFigure(answer, peak, plan.input.conductors.get(wire)!),
      leansOnMemory: answer.leansOnMemory,
      state: worst.worst?.state ?? null,
      reproduce: worst.worst?.reproduce ?? null,
    });
  });
}

/** Wires a generator alone can feed with no fuse between, that carry its ceiling for ever: said in words, one a source. */
function generatorFindings(plan: ProofPlan, wires: readonly JudgedWire[]): readonly Finding[] {
  const bySource = new Map<string, { wire: string; answer: SurvivalAnswer }[]>();
  for (const { survival } of wires) {
    for (const answer of survival.answers) {
      const { sourceKind, cut, source, largestA } = answer.exposure;
      if (sourceKind !== "generator" || answer.worst === null || answer.ruling !== "saved")
        continue;
      const isOpened = cut.length > 0 && largestA > 1.35 * (answer.exposure.sumA ?? 0);
      if (isOpened || largestA === 0) continue;
      const part = generatorOf(plan.solver.compiled.jobNetwork, source.split(".")[0]!);
      bySource.set(part, [...(bySource.get(part) ?? []), { wire: survival.wire, answer }]);
    }
  }
  return [...bySource].map(([, list]) => {
    const worst = list.reduce((most, one) =>
      one.answer.worst!.marginK < most.answer.worst!.marginK ? one : most,
    );
    const peak = worst.answer.forever ?? worst.answer.worst!;
    return proofFinding(plan, {
      code: "proof-generator-ceiling",
      severity: "advise",
      subject: subjectOf(plan, worst.wire),
      also: list.map(({ wire }) => wire).filter((id) => id !== worst.wire),
      numbers: {
        source: worst.answer.exposure.source,
        currentA: worst.answer.exposure.largestA,
        peakC: peak.peakC,
      },
      limit: limitFigure(worst.answer, peak, plan.input.conductors.get(worst.wire)!),
    });
  });
}
