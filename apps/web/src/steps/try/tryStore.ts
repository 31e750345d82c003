import type { SetFault } from "@copperwright/engine";
import { create } from "zustand";
import { useBench } from "../../store/benchStore.ts";
import type { BenchSetting, Shown, TryStage } from "./worker/tryState.ts";

export type Lead = "red" | "black";

/** What is set up on the bench. It belongs to this device and is no part of the job. */
export interface TryBench extends BenchSetting {
  readonly jobKey: string;
  readonly shows: Shown;
  readonly mode: "volts" | "ohms";
  readonly red: string | null;
  readonly black: string | null;
  /** The flasher beats; false: held lit. */
  readonly isFlashing: boolean;
  /** Where the flag stands in time, s since the fault; null: at its beginning. */
  readonly atS: number | null;
  /** A station whose pins are offered to a lead. */
  readonly offer: { readonly lead: Lead; readonly station: string } | null;
}

const EMPTY: Omit<TryBench, "jobKey"> = {
  set: {},
  engine: { mode: "stopped" },
  battery: "full",
  aged: false,
  faults: [],
  shows: "current",
  mode: "volts",
  red: null,
  black: null,
  isFlashing: true,
  atS: null,
  offer: null,
};

export const useTry = create<TryBench>()(() => ({ jobKey: "", ...EMPTY }));

/** Clears the bench for another job; the same job finds its set-up again. */
export function benchFor(jobKey: string): void {
  if (useTry.getState().jobKey !== jobKey) useTry.setState({ jobKey, ...EMPTY });
}

export function setPosition(part: string, position: string | null): void {
  useTry.setState(({ set }) => {
    const { [part]: _gone, ...others } = set;
    return { set: position === null ? others : { ...others, [part]: position } };
  });
}

export function addFault(fault: SetFault): void {
  useTry.setState(({ faults }) => ({ faults: [...faults, fault], atS: null }));
}

export function removeFault(index: number): void {
  useTry.setState(({ faults }) => ({ faults: faults.filter((_, k) => k !== index), atS: null }));
}

export function clearFaults(): void {
  useTry.setState({ faults: [], atS: null });
}

export function putLead(lead: Lead, pin: string): void {
  useTry.setState({ [lead]: pin, offer: null });
}

/** The stamp says that an experiment is set up: the plan's own verdict is not changed by it. */
export function stampBench(faults: readonly SetFault[]): void {
  const words = faults.length === 1 ? faultWords(faults[0]!) : `${faults.length} faults set here`;
  useBench.setState({ onTheBench: faults.length === 0 ? null : words });
}

export function faultWords(fault: SetFault): string {
  switch (fault.kind) {
    case "open":
      return `${fault.place} is open`;
    case "corroded":
      return `${fault.place} is corroded`;
    case "short":
      return `${fault.a} shorted to ${fault.b === undefined || fault.b === "earth" ? "earth" : fault.b}`;
    default:
      return `${fault.wires.join(" and ")} swapped`;
  }
}

/** The last stage that has certainly begun by a moment: each fuse counted as gone at its latest. */
export function stageAt(stages: readonly TryStage[], atS: number | null): number {
  let at = 0;
  stages.forEach(({ latestS }, k) => {
    if (latestS !== null && atS !== null && latestS <= atS) at = k;
  });
  return at;
}
