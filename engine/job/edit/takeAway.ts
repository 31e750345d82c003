import { namesInWords, type Refusal, refusal } from "../../messages/index.ts";
import type { Job } from "../job.ts";
import { type Hanging, type Holder, hangingOn } from "./hangingOn.ts";
import { healWires } from "./healWires.ts";
import type { Operation } from "./operation.ts";
import { removeWithPlaces } from "./wireEdits.ts";

export type TakenAway =
  | { readonly ok: true; readonly operation: Operation }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

const NAMES: Readonly<Record<Holder, string>> = {
  joints: "joint",
  connectors: "connector",
  bodies: "body",
  points: "earth point",
  looms: "loom",
  circuits: "circuit",
};

/**
 * A thing taken away that nothing hangs on. A joint or connector that wires only pass through goes too: the two wires that meet there become one again.
 *
 * @param id  of a point of a body: BODY.POINT
 * @returns a refusal that says what still hangs on it
 */
export function takeAway(job: Job, holder: Holder, id: string): TakenAway {
  const hanging = hangingOn(job, holder, id);
  const isFree = Object.values(hanging).every((ids) => ids.length === 0);
  if (!isFree) {
    const isPassed = holder === "joints" || holder === "connectors";
    const healed = isPassed && hanging.bonds.length === 0 ? healWires(job, holder, id) : null;
    return healed === null ? stillInUse(holder, id, hanging) : { ok: true, operation: healed };
  }
  if (holder !== "points") {
    return { ok: true, operation: removeWithPlaces(job.layout, holder, id) };
  }
  return { ok: true, operation: withoutPoint(job, id) };
}

function withoutPoint(job: Job, ref: string): Operation {
  const dot = ref.indexOf(".");
  const [body, point] = [ref.slice(0, dot), ref.slice(dot + 1)];
  const points = job.bodies.find(({ id }) => id === body)?.points ?? [];
  return {
    op: "set",
    list: "bodies",
    id: body,
    path: ["points"],
    value: points.filter(({ id }) => id !== point),
  };
}

function stillInUse(holder: Holder, id: string, hanging: Hanging): TakenAway {
  const verb = holder === "looms" ? "lies in it" : holder === "circuits" ? "belongs to it" : "";
  const many = holder === "looms" ? "lie in it" : "belong to it";
  const said = (word: string, ids: readonly string[]): readonly string[] => {
    if (ids.length === 0) return [];
    const [one, more] = verb === "" ? ["ends on it", "end on it"] : [verb, many];
    return ids.length === 1
      ? [`${word} ${ids[0]} ${one}`]
      : [`${word}s ${namesInWords(ids)} ${more}`];
  };
  const uses = [
    ...said("wire", hanging.wires),
    ...said("bond", hanging.bonds),
    ...said("the case of part", hanging.parts),
  ].join("; ");
  const place = { pointer: "", line: null, found: id };
  const what = `${NAMES[holder]} ${id}`;
  return { ok: false, refusals: [refusal("edit-still-in-use", place, { what, uses })] };
}
