import {
  HUB,
  type Job,
  mainEarthBody,
  type Part,
  pinRef,
  presentParts,
  presentWires,
} from "../job/index.ts";
import type { Conductors } from "../route/index.ts";
import { insideName } from "./jobNodes.ts";
import type { BatteryRequest } from "./operateResult.ts";

/** What holds for a whole compiled job, whatever its switches do. */
export interface Conditions {
  readonly aged: boolean;
  readonly lampExponent: number;
  readonly conductorC: number;
  readonly ambientC: number;
  readonly battery: BatteryRequest;
}

/** Everything the makers of elements look at. */
export interface NetworkContext {
  readonly job: Job;
  readonly conductors: Conductors;
  readonly conditions: Conditions;
  readonly parts: readonly Part[];
  readonly wires: ReturnType<typeof presentWires>;
  /** Pins taken apart from their part, so that they can be opened or made worse. */
  readonly takenApart: ReadonlySet<string>;
  /** Node name of a part's inside behind one of its pins. */
  readonly inside: (part: Part, pinId: string) => string;
  /** The hub of the main body; null where there is no body. */
  readonly earth: string | null;
}

export function networkContext(
  job: Job,
  conductors: Conductors,
  conditions: Conditions,
  takenApart: ReadonlySet<string>,
): NetworkContext {
  const body = mainEarthBody(job);
  const behind = new Set(takenApart);
  for (const part of job.parts) {
    for (const pin of part.pins) if (pin.flyLead) behind.add(pinRef(part.id, pin.id));
  }
  return {
    job,
    conductors,
    conditions,
    parts: [...presentParts(job)].sort((a, b) => (a.id < b.id ? -1 : 1)),
    wires: presentWires(job),
    takenApart,
    inside: (part, pinId) => {
      const ref = pinRef(part.id, pinId);
      return behind.has(ref) ? insideName(ref) : ref;
    },
    earth: body === null ? null : pinRef(body.id, HUB),
  };
}
