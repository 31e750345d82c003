import type { RelaySettlement } from "../network/index.ts";
import { generatorCurrentA, shortedCurrentA } from "./generatorLine.ts";
import type { SupplyRow } from "./operateResult.ts";
import type { PlacedSource } from "./placedSources.ts";
import { kneeV } from "./regulatedCurve.ts";
import type { Control } from "./settleSupplies.ts";

/** What a source does in a solved state, in trade words. */
export function supplyRow(
  placed: PlacedSource,
  control: Control,
  speedRpm: number,
  { solution: { nodeV, branchA } }: RelaySettlement,
): SupplyRow {
  const { source, line, positive, negative } = placed;
  const outputV = nodeV[positive]! - nodeV[negative]!;
  const currentA = control.started === true ? Math.max(0, deliveredA(placed, control, branchA)) : 0;
  const turns = line !== null && speedRpm > 0;
  const availableA = turns ? generatorCurrentA(line, speedRpm, Math.max(0, outputV)) : null;
  const leadA = source.isShunt && turns ? shortedCurrentA(line, speedRpm) : currentA;
  return {
    part: source.generator,
    regulator: source.regulator,
    outputV,
    currentA,
    availableA,
    regulating: control.started === true && control.setV !== null && outputV > kneeV(control.setV),
    phaseA: source.phaseRatio === null ? null : source.phaseRatio * leadA,
    why: whyIdle(placed, control, speedRpm),
  };
}

function whyIdle(
  { source, fieldWinding, exciter }: PlacedSource,
  control: Control,
  speedRpm: number,
): string | null {
  if (speedRpm === 0) return "the engine does not run";
  if (source.why !== null) return source.why;
  if (control.started === false) return "its field is not fed, so it does not start to charge";
  if (source.cutInV !== null && !control.cutOutClosed) return "the cut-out is open";
  if (exciter >= 0 && fieldWinding < 0) return "its field is not described, and is taken as fed";
  return null;
}

/** Current the source gives to the machine, A: without what its own field takes of it. */
function deliveredA({ output }: PlacedSource, { fieldA }: Control, branchA: Float64Array): number {
  return -branchA[output]! - fieldA;
}
