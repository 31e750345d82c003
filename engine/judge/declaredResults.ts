import type { Job } from "../job/index.ts";
import { loadsOf } from "../job/index.ts";
import { type CompiledJob, expectedOf, readState } from "../operate/index.ts";
import { figure } from "../tables/index.ts";
import { type DeclaredState, declaredStates } from "./declaredStates.ts";

/** One load in one state. */
export interface LoadInState {
  readonly load: string;
  readonly v: number;
  readonly currentA: number;
  readonly shareRatio: number;
  /** At least the lit share of its rated power. */
  readonly works: boolean;
  /** What the job says: by the state's own list first, then by intents; null where it says nothing. */
  readonly expected: boolean | null;
}

/** A declared state solved. */
export interface DeclaredResult extends DeclaredState {
  readonly converged: boolean;
  readonly loads: readonly LoadInState[];
  readonly nodeV: Float64Array;
}

/** Every state the job speaks of, solved; loads on alternating nets are left out: they are judged by watts. */
export function declaredResults(compiled: CompiledJob): readonly DeclaredResult[] {
  const { job, jobNetwork } = compiled;
  const share = figure("lampLaws", "lit-share", "value").value;
  const base = readState(job, {});
  if (!base.ok) throw new Error("an empty request is no request");
  const placeOf = new Map(
    jobNetwork.elements.flatMap(({ of, kind }, k) =>
      kind === "contact" ? [] : [[of, k] as const],
    ),
  );
  const loads = loadsOf(job).filter(({ ac, ref }) => !ac && placeOf.has(ref));
  return declaredStates(job).map((declared): DeclaredResult => {
    const { positions = {}, flash = "off", engine } = declared.state;
    const mode = engine?.mode ?? "stopped";
    const solution = compiled.solve(declared.state);
    const full = { ...base.state, positions, flash, engine: { mode, speedRpm: 0 } };
    return {
      ...declared,
      converged: solution.converged,
      nodeV: solution.nodeV.slice(),
      loads: loads.map((load): LoadInState => {
        const place = placeOf.get(load.ref)!;
        const [a, b] = jobNetwork.elements[place]!.nodes;
        const v = solution.nodeV[a]! - solution.nodeV[b]!;
        const currentA = solution.elementA[place]!;
        const ratedW = load.ratedW ?? job.supply.nominalV ** 2 / (load.resistanceOhm ?? Infinity);
        const shareRatio = (v * currentA) / ratedW;
        const own = declared.on.includes(load.ref)
          ? true
          : declared.off.includes(load.ref)
            ? false
            : null;
        return {
          load: load.ref,
          v,
          currentA,
          shareRatio,
          works: shareRatio >= share,
          expected: own ?? expectedOf(job, load.ref, full),
        };
      }),
    };
  });
}

/** Whether anything turns the engine over in a state: then other loads are dim or shed by right. */
export function starterTurns(job: Job, result: DeclaredResult): boolean {
  return starterRefs(job).some((ref) =>
    result.loads.some(({ load, works }) => works && load.startsWith(ref)),
  );
}

/** What the loads of every starter are named by first. */
const starterRefs = (job: Job): readonly string[] =>
  job.parts.flatMap((part) =>
    part.kind === "motor" && part.use === "starter" && part.status !== "remove"
      ? [`${part.id}:`]
      : [],
  );
