import type { Job } from "@copperwright/engine";
import { recordedReading, type TestSheetSection, testSheetOf } from "@copperwright/engine/scenes";
import type { Held } from "../../engine/held.ts";

export const testAnswers = {
  testSheet: (held: Held): readonly TestSheetSection[] => testSheetOf(held.scenes()),

  /** A reading as it is written into the job. */
  testRecord: (
    _held: Held,
    { unit, read }: { readonly unit: string; readonly read: number },
  ): { readonly read: number; readonly unit: Job["tests"][number]["unit"] } =>
    recordedReading(unit, read),
};
