import type { Job } from "../job.ts";
import { idMaker } from "./idMaker.ts";
import type { Operation } from "./operation.ts";

/** Wires put into a loom, or into none: then each lies by itself. Those that lie there already are left alone. */
export function putInLoom(job: Job, loom: string | null, wires: readonly string[]): Operation {
  const moved = job.wires.filter(
    ({ id, loom: now }) => wires.includes(id) && now !== (loom ?? undefined),
  );
  return {
    op: "batch",
    name:
      loom === null ? `Take ${moved.length} wires out` : `Put ${moved.length} wires into ${loom}`,
    operations: moved.map(
      ({ id }): Operation => ({
        op: "set",
        list: "wires",
        id,
        path: ["loom"],
        ...(loom === null ? {} : { value: loom }),
      }),
    ),
  };
}

/**
 * A new loom with the wires that are to lie in it.
 *
 * @returns the operation, and the loom's id
 */
export function addLoom(
  job: Job,
  loom: {
    readonly name: string;
    readonly covering?: Job["looms"][number]["covering"];
    readonly wires?: readonly string[];
  },
): { readonly operation: Operation; readonly id: string } {
  const { name, covering, wires = [] } = loom;
  const id = idMaker(job)("LOOM");
  const item = { id, name, ...(covering === undefined ? {} : { covering }) };
  const add: Operation = { op: "add", list: "looms", item };
  return {
    id,
    operation: {
      op: "batch",
      name: `Add loom ${name}`,
      operations: [add, putInLoom(job, id, wires)],
    },
  };
}
