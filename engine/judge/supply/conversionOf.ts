import type { Job, Part } from "../../job/index.ts";
import { restPositions } from "../../operate/index.ts";
import {
  type ConvertRow,
  type ConvertTo,
  chargeBalance,
  convertJob,
  supplyModel,
} from "../../supply/index.ts";
import { type CheckedJob, checkedJob } from "../checkJob.ts";
import type { CheckResult } from "../checkResult.ts";

/** A fuse before and after. */
export interface ConvertedFuse {
  readonly fuse: string;
  readonly beforeA: number;
  readonly afterA: number;
  /** Largest lasting current through it before and after, A. */
  readonly loadBeforeA: number;
  readonly loadAfterA: number;
  readonly reason: string;
}

/** A wire whose current changes: it stays where it lies, and whether it may is said. */
export interface ConvertedWire {
  readonly wire: string;
  readonly makeId: string;
  readonly beforeA: number | null;
  readonly afterA: number | null;
  /** Make the converted job would take where nobody has chosen one; the same as before: it stays. */
  readonly makeAfterId: string;
  /** Codes of findings about it that were not there before. */
  readonly newFindings: readonly string[];
}

/** Balance speed of a lighting state before and after. */
export interface ConvertedBalance {
  readonly state: string;
  readonly name: string;
  readonly demandBeforeA: number;
  readonly demandAfterA: number;
  readonly beforeRpm: number | null;
  readonly afterRpm: number | null;
}

/** A conversion planned, carried out on the job and checked. */
export interface Conversion {
  readonly job: Job;
  readonly parts: readonly ConvertRow[];
  readonly fuses: readonly ConvertedFuse[];
  readonly wires: readonly ConvertedWire[];
  readonly balances: readonly ConvertedBalance[];
  readonly before: Pick<CheckResult, "verdict" | "counts">;
  readonly after: Pick<CheckResult, "verdict" | "counts" | "findings">;
}

/**
 * Plans a conversion and proves the result: parts by their kind, then fuses by the window between the new currents and the same wires,
 * then the whole job is checked again. Wires keep their makes where somebody chose them.
 */
export function conversionOf(asGiven: Job, to: ConvertTo): Conversion {
  const before = checkedJob(asGiven);
  const { job: unfused, rows } = convertJob(asGiven, to);
  const middle = checkedJob(unfused);
  // The other earth changes no current: fuses stay as they are.
  const isOtherVolts = unfused.supply.nominalV !== asGiven.supply.nominalV;
  const fuses = isOtherVolts ? fusesOf(before, middle) : [];
  const job = withFuses(unfused, fuses);
  const after = fuses.length === 0 ? middle : checkedJob(job);
  return {
    job,
    parts: rows,
    fuses,
    wires: wiresOf(before, after),
    balances: balancesOf(before, after),
    before: before.result,
    after: after.result,
  };
}

function fusesOf(before: CheckedJob, after: CheckedJob): readonly ConvertedFuse[] {
  const former = new Map(before.design.fuses.map((one) => [one.fuse.id, one]));
  const most = everythingOnA(after);
  return after.design.fuses.map(({ fuse, choice, worstLoadA, loadRatio }) => {
    const old = former.get(fuse.id);
    // Horn and brake lamp last a moment, but a fuse that carries them with its margin is not worn by them.
    const wantedA = (most.get(fuse.id) ?? 0) / loadRatio;
    const easyA = choice?.allowedA.find((ratedA) => ratedA >= wantedA);
    const chosenA = easyA ?? choice?.suggestedA ?? choice?.allowedA[0] ?? null;
    return {
      fuse: fuse.id,
      beforeA: fuse.ratingA,
      afterA: chosenA ?? fuse.ratingA,
      loadBeforeA: old?.worstLoadA ?? 0,
      loadAfterA: worstLoadA,
      reason:
        chosenA === null
          ? "no standard rating lies between its load and its wires: the check says what to do"
          : "the smallest standard rating that carries the new load and guards the wires",
    };
  });
}

/** Largest current of each fuse over the named states, what is held for a moment included, A. */
function everythingOnA({ design: { compiled, job } }: CheckedJob): ReadonlyMap<string, number> {
  const most = new Map<string, number>();
  for (const { positions, flash, engine } of job.states) {
    if (engine?.mode === "cranking") continue;
    const rest = restPositions(job, "stopped");
    const state = { positions: { ...rest, ...positions }, ...(flash && { flash }) };
    const { elementA } = compiled.solve(state);
    compiled.jobNetwork.elements.forEach(({ kind, of }, k) => {
      if (kind === "fuse") most.set(of, Math.max(most.get(of) ?? 0, Math.abs(elementA[k]!)));
    });
  }
  return most;
}

function withFuses(job: Job, fuses: readonly ConvertedFuse[]): Job {
  const ratings = new Map(fuses.map(({ fuse, afterA }) => [fuse, afterA]));
  const parts = job.parts.map((part): Part => {
    const ratingA = part.kind === "fuse" ? ratings.get(part.id) : undefined;
    if (part.kind !== "fuse" || ratingA === undefined || ratingA === part.ratingA) return part;
    const name = part.name.replace(`${part.ratingA} A`, `${ratingA} A`);
    return { ...part, name, ratingA, marking: "continuous", status: "new" };
  });
  return { ...job, parts };
}

function wiresOf(before: CheckedJob, after: CheckedJob): readonly ConvertedWire[] {
  const former = new Map(before.result.wires.map((row) => [row.wire, row]));
  const key = (one: CheckResult["findings"][number]): string => `${one.code} ${one.subject.id}`;
  const known = new Set(before.result.findings.map(key));
  return after.result.wires.flatMap((row) => {
    const old = former.get(row.wire);
    if (old === undefined || row.kind !== "wire") return [];
    const newFindings = after.result.findings
      .filter((one) => !known.has(key(one)))
      .filter((one) => one.subject.id === row.wire || one.also.includes(row.wire))
      .filter(({ severity }) => severity !== "advise")
      .map(({ code }) => code);
    return [
      {
        wire: row.wire,
        makeId: old.makeId,
        beforeA: old.worstA,
        afterA: row.worstA,
        makeAfterId: row.makeId,
        newFindings: [...new Set(newFindings)].sort(),
      },
    ];
  });
}

function balancesOf(before: CheckedJob, after: CheckedJob): readonly ConvertedBalance[] {
  const [old, now] = [before, after].map(({ design }) => {
    const model = supplyModel(design.job, design.conductors);
    return new Map(model.states.map((state) => [state.id, chargeBalance(model, state)]));
  });
  return [...old!].flatMap(([id, balance]) => {
    const other = now!.get(id);
    if (other === undefined) return [];
    return [
      {
        state: id,
        name: balance.name,
        demandBeforeA: balance.demandA,
        demandAfterA: other.demandA,
        beforeRpm: balance.balanceRpm,
        afterRpm: other.balanceRpm,
      },
    ];
  });
}
