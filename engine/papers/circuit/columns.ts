import type { Levels } from "./levels.ts";
import type { Link } from "./machineGraph.ts";
import type { Placed } from "./sheetLinks.ts";

/** One current path before it is worded. */
export interface PathColumn {
  readonly id: string;
  /** Point it begins at; `from` names the column whose dot that is, null where it is the top of the sheet. */
  readonly start: { readonly point: string; readonly column: string | null };
  readonly steps: readonly PathStep[];
  /** Point it ends at; `column` is where that point already stands, null where nothing follows on this sheet. */
  readonly end: { readonly point: string; readonly column: string | null };
}

export type PathStep =
  | { readonly kind: "link"; readonly placed: Placed }
  /** A dot: a joint of the job, or a terminal where ways part or meet. */
  | { readonly kind: "dot"; readonly point: string };

/**
 * Cuts what stands on a sheet into current paths: each link once, from feed to earth. Where ways part the longest goes on and the others begin beside it;
 * where they meet the later one ends at the dot of the earlier.
 *
 * @param ends  points a path ends at: earth and bodies
 */
export function columnsOf(
  placed: readonly Placed[],
  levels: Levels,
  joints: ReadonlySet<string>,
  ends: ReadonlySet<string>,
): readonly PathColumn[] {
  const outs = grouped(placed, ({ above }) => above);
  const ins = grouped(placed, ({ below }) => below);
  const depthOf = depths(placed, outs, levels);
  const isDot = (point: string): boolean =>
    !ends.has(point) &&
    (joints.has(point) || (outs.get(point)?.length ?? 0) > 1 || (ins.get(point)?.length ?? 0) > 1);
  const columns: PathColumn[] = [];
  const dotIn = new Map<string, string>();
  const draw = (point: string, column: string | null, first: Placed): void => {
    const id = `c${columns.length + 1}`;
    const steps: PathStep[] = [];
    const pending: Placed[] = [];
    const dot = (at: string): void => {
      steps.push({ kind: "dot", point: at });
      dotIn.set(at, id);
    };
    if (column === null && isDot(point)) dot(point);
    let next: Placed | undefined = first;
    let at = point;
    let end: string | null = null;
    const at0 = columns.length;
    columns.push({ id, start: { point, column }, steps, end: { point, column: null } });
    while (next !== undefined) {
      steps.push({ kind: "link", placed: next });
      at = next.below;
      end = dotIn.get(at) ?? null;
      if (end !== null || ends.has(at)) break;
      if (isDot(at)) dot(at);
      const [following, ...others]: readonly Placed[] = outs.get(at) ?? [];
      pending.unshift(...others);
      next = following;
    }
    columns[at0] = { ...columns[at0]!, end: { point: at, column: end } };
    for (const other of pending) draw(other.above, id, other);
  };
  for (const list of outs.values()) sortByDepth(list, depthOf);
  const tops = [...outs.keys()]
    .filter((point) => !ins.has(point) || ends.has(point))
    .sort((a, b) => levels.compare(a, b));
  for (const top of tops) {
    const [first, ...others] = outs.get(top)!;
    draw(top, null, first!);
    for (const other of others) draw(top, dotIn.get(top) ?? null, other);
  }
  return columns;
}

function grouped(placed: readonly Placed[], key: (one: Placed) => string): Map<string, Placed[]> {
  const groups = new Map<string, Placed[]>();
  for (const one of placed) groups.set(key(one), [...(groups.get(key(one)) ?? []), one]);
  return groups;
}

/** Longest way down from each link. Points are taken from earth upwards, so that what lies below is known. */
function depths(
  placed: readonly Placed[],
  outs: ReadonlyMap<string, readonly Placed[]>,
  levels: Levels,
): ReadonlyMap<string, number> {
  const depthOf = new Map<string, number>();
  const upwards = [...placed].sort((a, b) => levels.compare(b.above, a.above));
  for (const { link, below } of upwards) {
    const under = (outs.get(below) ?? []).map((one) => depthOf.get(one.link.key) ?? 0);
    depthOf.set(link.key, 1 + Math.max(0, ...under));
  }
  return depthOf;
}

const naturalOrder = (a: Link, b: Link): number =>
  a.key.localeCompare(b.key, "en", { numeric: true });

function sortByDepth(list: Placed[], depthOf: ReadonlyMap<string, number>): void {
  list.sort(
    (a, b) => depthOf.get(b.link.key)! - depthOf.get(a.link.key)! || naturalOrder(a.link, b.link),
  );
}
