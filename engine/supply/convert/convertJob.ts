import { type Job, loadsOfPart, type Part, pinRef } from "../../job/index.ts";
import type { ConvertedPart } from "./convertedPart.ts";
import type { ConvertRow } from "./convertRow.ts";
import { partOnEarth } from "./earthOfParts.ts";
import { partAtVolts } from "./voltsOfParts.ts";

type Earth = Job["supply"]["earthPolarity"];

/** What a machine is to become; absent: as it is. */
export interface ConvertTo {
  readonly nominalV?: Job["supply"]["nominalV"];
  readonly earth?: Earth;
}

/** A converted job with the fate of every part. Fuses still have their old ratings. */
export interface ConvertedJob {
  readonly job: Job;
  readonly rows: readonly ConvertRow[];
}

/**
 * The job on other volts, on the other earth, or both. Wires, switches and places stay; every part that cannot is replaced in the job by
 * one of the same watts, with its value marked as an estimate until the new part is in hand. Lamps and horn of machines with an alternating
 * lighting coil are changed like the rest.
 */
export function convertJob(asGiven: Job, to: ConvertTo): ConvertedJob {
  const fromV = asGiven.supply.nominalV;
  const toV = to.nominalV ?? fromV;
  const earth = to.earth ?? asGiven.supply.earthPolarity;
  const turns = earth !== asGiven.supply.earthPolarity;
  const voltsIn = (name: string): string => name.replaceAll(`${fromV} V`, `${toV} V`);
  const rows: ConvertRow[] = [];
  const parts = asGiven.parts.map((part) => {
    if (part.status === "remove") return part;
    const steps: ConvertedPart[] = [];
    if (toV !== fromV) steps.push(partAtVolts(part, { fromV, toV }));
    if (turns) steps.push(partOnEarth(steps.at(-1)?.part ?? part, earth));
    const last = steps.at(-1)?.part ?? part;
    rows.push(rowOf(part, last, steps, { fromV, toV }));
    return last === part || last.status !== "new" ? last : { ...last, name: voltsIn(last.name) };
  });
  const job: Job = {
    ...asGiven,
    name: voltsIn(asGiven.name),
    parts,
    supply: { ...asGiven.supply, nominalV: toV, earthPolarity: earth },
    revision: asGiven.revision + 1,
    decisions: withoutAcceptances(asGiven, toV / fromV),
  };
  return { job: turns ? withLeadsSwapped(job) : job, rows };
}

const ORDER = ["replace", "rewind", "adjust", "keep"] as const;

function rowOf(
  before: Part,
  after: Part,
  steps: readonly ConvertedPart[],
  { fromV, toV }: { readonly fromV: number; readonly toV: number },
): ConvertRow {
  const action = ORDER.find((one) => steps.some((step) => step.action === one)) ?? "keep";
  const told = steps.filter((step) => step.action !== "keep");
  return {
    part: before.id,
    name: before.name,
    action,
    reason: [...new Set((told.length > 0 ? told : steps).map(({ reason }) => reason))].join("; "),
    beforeA: ratedA(before, fromV),
    afterA: ratedA(after, toV),
  };
}

/** What the loads of a part take at rated volts, the largest of those that work one at a time. */
function ratedA(part: Part, nominalV: number): number | null {
  const currents = loadsOfPart(part).map(({ ratedW, ratedV, resistanceOhm }) =>
    ratedW !== null && ratedV !== null ? ratedW / ratedV : nominalV / (resistanceOhm ?? Infinity),
  );
  return currents.length === 0 ? null : Math.max(...currents);
}

/** What somebody accepted on the old volts is not accepted on the new ones; limits given in volts follow the volts. */
function withoutAcceptances({ decisions }: Job, ratio: number): Job["decisions"] {
  const { accepted: _, dropLimits, ...rest } = decisions;
  const scaled = dropLimits?.map((one) => ({ ...one, limitV: one.limitV * ratio }));
  return { ...rest, ...(scaled && { dropLimits: scaled }) };
}

/** Every wire and bond on a battery post moves to the other post. */
function withLeadsSwapped(job: Job): Job {
  const other = new Map<string, string>();
  for (const part of job.parts) {
    if (part.kind !== "battery" || part.status === "remove") continue;
    const [positive, negative] = [part.positivePin, part.negativePin].map((pin) =>
      pinRef(part.id, pin),
    );
    other.set(positive!, negative!);
    other.set(negative!, positive!);
  }
  const moved = <T extends { readonly from: string; readonly to: string }>(one: T): T => ({
    ...one,
    from: other.get(one.from) ?? one.from,
    to: other.get(one.to) ?? one.to,
  });
  return { ...job, wires: job.wires.map(moved), bonds: job.bonds.map(moved) };
}
