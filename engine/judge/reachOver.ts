import { type Job, loadsOf, presentParts } from "../job/index.ts";
import type { Design } from "./judge.ts";

const CARRYING = new Set(["wire", "joint", "bond", "contact", "fuse", "diode"]);

/** What a current may pass without doing work: copper, contacts in any position, fuses, diodes, ammeters. */
export function carrying(job: Job): (kind: string, of: string) => boolean {
  const ammeters = new Set(
    presentParts(job)
      .filter((part) => part.kind === "meter" && part.measures === "amps")
      .map(({ id }) => id),
  );
  return (kind, of) => CARRYING.has(kind) || ammeters.has(of.split(":")[0] ?? "");
}

/** Pins (and inner nodes) reached from some pins over elements of the kinds wanted, whatever switches and relays do. Loads are never passed. */
export function reachOver(
  { job, compiled }: Pick<Design, "job" | "compiled">,
  starts: readonly string[],
  passes: (kind: string, of: string) => boolean,
  stopAt: ReadonlySet<string> = new Set(),
): ReadonlyMap<string, string | null> {
  const { elements } = compiled.jobNetwork;
  const loads = new Set(loadsOf(job).map(({ ref }) => ref));
  const near = new Map<string, { readonly to: string; readonly of: string }[]>();
  const join = (from: string, to: string, of: string): void => {
    const list = near.get(from) ?? [];
    list.push({ to, of });
    near.set(from, list);
  };
  for (const { kind, of, from, to } of elements) {
    if (!passes(kind, of) || (loads.has(of) && kind !== "contact")) continue;
    join(from, to, of);
    join(to, from, of);
  }
  // The value is the node it was reached from, so that a way can be read back.
  const reached = new Map<string, string | null>(starts.map((start) => [start, null]));
  for (const [node] of reached) {
    if (stopAt.has(node)) continue;
    for (const { to } of near.get(node) ?? []) if (!reached.has(to)) reached.set(to, node);
  }
  return reached;
}

/** Names from a reached node back to where the search began. */
export function wayBack(
  reached: ReadonlyMap<string, string | null>,
  node: string,
): readonly string[] {
  const way = [node];
  for (let at = reached.get(node); at !== undefined && at !== null; at = reached.get(at))
    way.push(at);
  return way;
}
