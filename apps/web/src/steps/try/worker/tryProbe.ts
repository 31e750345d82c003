import {
  type MeterQuestion,
  type MeterReading,
  meterReading,
  type OperateRequest,
  type Refusal,
  withFaults,
} from "@copperwright/engine";
import type { Held } from "../../../engine/held.ts";
import { type BenchSetting, requestOf } from "./tryState.ts";

export interface ProbeQuestion extends MeterQuestion {
  readonly setting: BenchSetting;
  /** Fuses gone by the moment the flag stands at. */
  readonly gone: readonly string[];
  readonly flash: "on" | "off";
}

export type ProbeAnswer =
  | { readonly ok: false; readonly refusals: readonly Refusal[] }
  | {
      readonly ok: true;
      readonly reading: MeterReading;
      /** The same two points with nothing broken; null where nothing is. */
      readonly well: MeterReading | null;
    };

export function tryProbe(held: Held, question: ProbeQuestion): ProbeAnswer {
  const { job, conductors } = held.checked().design;
  const { setting, gone, flash, red, black, mode } = question;
  const request: OperateRequest = { ...requestOf(setting, flash), open: gone };
  const faulted = withFaults(job, request, setting.faults);
  if (!faulted.ok) return faulted;
  const leads = { red, black, mode };
  const read = meterReading(faulted.job, conductors, faulted.request, leads);
  if (!read.ok) return read;
  const isWell = setting.faults.length === 0 && gone.length === 0;
  const well = isWell ? null : meterReading(job, conductors, requestOf(setting, flash), leads);
  return { ok: true, reading: read.reading, well: well?.ok ? well.reading : null };
}
