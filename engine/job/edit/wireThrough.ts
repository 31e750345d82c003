import type { Job } from "../job.ts";
import { pinRef } from "../pinsOf.ts";
import { freePin, NEW_PIN } from "./freePin.ts";
import { idMaker } from "./idMaker.ts";
import type { Operation } from "./operation.ts";
import { cutWire, type PieceWays } from "./splitWire.ts";

/**
 * A wire led over a place between its ends: cut in two there. On a terminal of a part or a point of a body both pieces end on it; on a joint each takes a
 * way; through a connector they take the two halves of a free cavity.
 *
 * @param pin  a pin, or `OWNER.*` for a new place on a joint, connector or body
 */
export function wireThrough(
  job: Job,
  change: { readonly wire: string; readonly pin: string; readonly via?: PieceWays },
): Operation {
  const { wire, pin: asked, via } = change;
  const owner = asked.slice(0, asked.indexOf("."));
  const [near, far, operations] = halves(job, owner, asked);
  const cut = { wire, newWire: idMaker(job)("W"), ...(via === undefined ? {} : { via }) };
  return {
    op: "batch",
    name: `Lead ${wire} over ${owner}`,
    operations: [...operations, ...cutWire(job, cut, near, far)],
  };
}

type Halves = readonly [near: string, far: string, operations: readonly Operation[]];

function halves(job: Job, owner: string, asked: string): Halves {
  const joint = job.joints.find(({ id }) => id === owner);
  if (joint !== undefined) return twoWays(job, joint);
  const connector = job.connectors.find(({ id }) => id === owner);
  if (connector !== undefined) {
    const used = new Set(job.wires.flatMap(({ from, to }) => [from, to]));
    const free = connector.cavities.find((one) =>
      ["p", "s"].every((half) => !used.has(pinRef(owner, `${one}${half}`))),
    );
    if (free !== undefined) return [pinRef(owner, `${free}p`), pinRef(owner, `${free}s`), []];
    const { pin, operations } = freePin(job, `${owner}.${NEW_PIN}`, { half: "p" });
    return [pin, `${pin.slice(0, -1)}s`, operations];
  }
  const { pin, operations } = freePin(job, asked);
  return [pin, pin, operations];
}

/** Ways no wire ends on, first; then new ones. */
function twoWays(job: Job, { id, ways }: Job["joints"][number]): Halves {
  const used = new Set(job.wires.flatMap(({ from, to }) => [from, to]));
  const all = [...ways];
  const take = (but: string | null): string => {
    const free = all.find((way) => way !== but && !used.has(pinRef(id, way)));
    if (free !== undefined) return free;
    let n = 1;
    while (all.includes(`${n}`)) n++;
    all.push(`${n}`);
    return `${n}`;
  };
  const first = take(null);
  const second = take(first);
  const grown: readonly Operation[] =
    all.length === ways.length
      ? []
      : [{ op: "set", list: "joints", id, path: ["ways"], value: all }];
  return [pinRef(id, first), pinRef(id, second), grown];
}
