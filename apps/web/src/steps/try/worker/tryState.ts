import {
  type CheckedJob,
  type FaultStory,
  faultStory,
  type OperateRequest,
  type OperateSolution,
  operateJob,
  type Refusal,
  type SetFault,
  wireTemperatures,
  withFaults,
} from "@copperwright/engine";
import type { Held } from "../../../engine/held.ts";
import { type TryView, viewOf } from "./tryView.ts";

export type Shown = "current" | "drop" | "temperature";

/** Everything set up on the bench. */
export interface BenchSetting {
  readonly set: Readonly<Record<string, string>>;
  readonly engine: NonNullable<OperateRequest["engine"]>;
  readonly battery: "full" | "half" | "weak";
  readonly aged: boolean;
  readonly faults: readonly SetFault[];
}

export interface StateQuestion extends BenchSetting {
  readonly shows: Shown;
}

/** The machine from one moment on. */
export interface TryStage {
  readonly opened: string | null;
  /** Every fuse that has gone by then. */
  readonly gone: readonly string[];
  readonly soonestS: number;
  readonly latestS: number | null;
  readonly lit: TryView;
  /** The dark half of the flasher's rhythm; null where nothing changes with it. */
  readonly dark: TryView | null;
}

export type StateAnswer =
  | { readonly ok: false; readonly refusals: readonly Refusal[] }
  | {
      readonly ok: true;
      readonly stages: readonly TryStage[];
      /** Null: nothing is broken and no fuse goes. */
      readonly story: FaultStory | null;
      /** Without the faults; null where there are none. */
      readonly well: TryView | null;
    };

export function requestOf(setting: BenchSetting, flash: "on" | "off"): OperateRequest {
  const { set, engine, battery, aged } = setting;
  return { set, engine, battery, aged, flash };
}

/** The state solved with the faults in it, what the fuses do then, and what follows in time. */
export function tryState(held: Held, question: StateQuestion): StateAnswer {
  const checked = held.checked();
  const { job, conductors } = checked.design;
  const isFaulty = question.faults.length > 0;
  const solve = (flash: "on" | "off", open: readonly string[] = []) => {
    const faulted = withFaults(job, { ...requestOf(question, flash), open }, question.faults);
    return faulted.ok ? operateJob(faulted.job, conductors, faulted.request) : faulted;
  };
  const lit = solve("on");
  if (!lit.ok) return lit;
  const { solution } = lit;
  const dark = solve("off");
  const flashes = dark.ok && isOther(solution, dark.solution);
  const well = operateJob(job, conductors, isFaulty ? requestOf(question, "on") : {});
  const story =
    well.ok && (isFaulty || solution.afterFuses.length > 0)
      ? faultStory(checked.design, well.solution, solution)
      : null;
  // A wire a fault loads warms up in time, from where it was before; without one, wires are shown settled.
  const isWarming = well.ok && (story?.wires.length ?? 0) > 0;
  const show = (one: Solved): TryView =>
    viewOf(checked, one, heatIf(checked, question.shows, isWarming ? well.solution : one));
  const gone: string[] = [];
  const stages = [solution, ...solution.afterFuses.map((step) => step.solution)].map((one, k) => {
    const step = solution.afterFuses[k - 1];
    if (step !== undefined) gone.push(...step.opened);
    const off = flashes ? (k === 0 ? dark : solve("off", gone)) : null;
    return {
      opened: step?.opened[0] ?? null,
      gone: [...gone],
      soonestS: step?.atS[0] ?? 0,
      latestS: step === undefined ? 0 : step.atS[1],
      lit: show(one),
      dark: off?.ok ? show(off.solution) : null,
    };
  });
  return {
    ok: true,
    stages,
    story,
    well: isFaulty && well.ok ? show(well.solution) : null,
  };
}

type Solved = Omit<OperateSolution, "afterFuses" | "afterFusesByMin">;

const heatIf = ({ design }: CheckedJob, shows: Shown, { wires }: Solved) =>
  shows === "temperature" ? wireTemperatures(design, wires) : null;

const isOther = (one: Solved, other: Solved): boolean =>
  one.lamps.some(({ lit }, k) => lit !== other.lamps[k]?.lit);
