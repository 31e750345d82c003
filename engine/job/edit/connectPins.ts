import type { Colour, Job, Status } from "../job.ts";
import { pinsOf } from "../pinsOf.ts";
import { freePin } from "./freePin.ts";
import { idMaker } from "./idMaker.ts";
import type { Operation } from "./operation.ts";

export interface NewWire {
  readonly from: string;
  readonly to: string;
  readonly circuit: string;
  readonly colour?: Colour | undefined;
  readonly loom?: string | undefined;
  readonly make?: string | undefined;
  readonly status?: Status | undefined;
}

/** A wire from pin to pin. Either end may be `OWNER.*`: then the joint, connector or body gets a place for it, a body's at the station of the other end. */
export function connectPins(
  job: Job,
  wire: NewWire,
): { readonly operation: Operation; readonly id: string } {
  const pins = pinsOf(job);
  const stationOf = (pin: string): string | undefined => pins.get(pin)?.station ?? undefined;
  const from = freePin(job, wire.from, { station: stationOf(wire.to), half: "s" });
  const to = freePin(job, wire.to, { station: stationOf(wire.from), half: "p" });
  const { circuit, colour, loom, make, status } = wire;
  const id = idMaker(job)("W");
  const item = {
    id,
    from: from.pin,
    to: to.pin,
    circuit,
    status: status ?? "new",
    ...(colour === undefined ? {} : { colour }),
    ...(loom === undefined ? {} : { loom }),
    ...(make === undefined ? {} : { size: { make, basis: "chosen" } }),
  };
  const name = `Connect ${from.pin} to ${to.pin}`;
  const add: Operation = { op: "add", list: "wires", item };
  return {
    id,
    operation: { op: "batch", name, operations: [...from.operations, ...to.operations, add] },
  };
}
