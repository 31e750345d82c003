import type { Bond, Job } from "../job.ts";
import { freePin } from "./freePin.ts";
import { idMaker } from "./idMaker.ts";
import type { Operation } from "./operation.ts";

/**
 * A bond between two places: a strap, a bolted face, a case on its bracket. An end may be `BODY.*`: then the body gets a point for it.
 *
 * @returns the operation, and the bond's id
 */
export function addBond(
  job: Job,
  bond: { readonly from: string; readonly to: string; readonly kind: Bond["kind"] },
): { readonly operation: Operation; readonly id: string } {
  const id = idMaker(job)("BOND");
  const from = freePin(job, bond.from);
  const to = freePin(job, bond.to);
  const add: Operation = {
    op: "add",
    list: "bonds",
    item: { id, from: from.pin, to: to.pin, kind: bond.kind },
  };
  return {
    id,
    operation: {
      op: "batch",
      name: `Bond ${from.pin} to ${to.pin}`,
      operations: [...from.operations, ...to.operations, add],
    },
  };
}

/** A further place on a body where something can be fastened, at a station where one is given. */
export function addEarthPoint(
  job: Job,
  point: { readonly body: string; readonly station?: string; readonly name?: string },
): Operation {
  const { body, station, name } = point;
  const { operations } = freePin(job, `${body}.*`, { station });
  const words = name?.trim() ?? "";
  return {
    op: "batch",
    name: `Add an earth point on ${body}`,
    operations: operations.map((operation) =>
      operation.op === "set" && words !== "" ? named(operation, words) : operation,
    ),
  };
}

function named(operation: Extract<Operation, { op: "set" }>, name: string): Operation {
  const points = operation.value as readonly object[];
  const last = points.length - 1;
  return {
    ...operation,
    value: points.map((point, i) => (i === last ? { ...point, name } : point)),
  };
}
