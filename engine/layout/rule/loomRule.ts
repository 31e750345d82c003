import type { Job } from "../../job/index.ts";
import type { Routed } from "../../route/index.ts";
import type { BoardPiece } from "../board/boardLayout.ts";
import { loomTrees, type TreeLimb } from "../board/loomTree.ts";

/** A loom unrolled along a rule: its trunk from the foremost place to the end furthest from it, and every branch from where it leaves. All mm along the loom. */
export interface LoomRule {
  readonly loom: string;
  /** The trunk of each connected part first, then its branches in the order they leave. */
  readonly rows: readonly RuleRow[];
  /** Runs taken out of a loop: their far end is shown as what it meets. */
  readonly brokenLoops: readonly string[];
  /** Stretches nobody has measured: not on the rule. */
  readonly unmeasured: readonly string[];
}

export interface RuleRow {
  readonly id: string;
  /** Which connected part of the loom. */
  readonly partIndex: number;
  /** 0: a trunk; 1: leaves a trunk; 2: leaves such a branch. */
  readonly depthIndex: number;
  /** Row it leaves; null for a trunk. */
  readonly parent: string | null;
  /** Where it starts and ends, from the datum of its part. */
  readonly startMm: number;
  readonly endMm: number;
  readonly places: readonly RulePlace[];
  readonly pieces: readonly RulePiece[];
  readonly joints: readonly { readonly joint: string; readonly atMm: number }[];
}

/** A station, a part or an earth point a wire goes to, or RUN@mm where the wires change. */
export interface RulePlace {
  readonly id: string;
  readonly station: string | null;
  readonly atMm: number;
  /** Station the end of an opened loop meets; null otherwise. */
  readonly meets: string | null;
}

/** Part of a run with the same wires from end to end. */
export interface RulePiece
  extends Pick<BoardPiece, "run" | "stretch" | "runFromMm" | "runToMm" | "flex" | "wires"> {
  readonly fromMm: number;
  readonly toMm: number;
  /** As laid. */
  readonly diameterMm: number;
}

/**
 * One loom along a rule. No search: the same loom that a board lays out, in one dimension.
 *
 * @param diameterOf  outside diameter of a bundle as laid, mm
 */
export function loomRule(
  job: Job,
  routed: Routed,
  loom: string,
  diameterOf: (wires: readonly string[]) => number,
): LoomRule {
  const { trees, brokenLoops, unmeasured } = loomTrees(job, routed, loom, diameterOf);
  const rows = trees.flatMap(({ root, limbs }, partIndex) => {
    const made: RuleRow[] = [];
    addRows({ job, limbs, joints: jointsOfLoom(job, loom), partIndex, made }, root);
    return made;
  });
  return { loom, rows, brokenLoops, unmeasured };
}

interface Unrolling {
  readonly job: Job;
  readonly limbs: readonly TreeLimb[];
  readonly joints: Job["joints"];
  readonly partIndex: number;
  readonly made: RuleRow[];
}

/** From the root: the way to the furthest end is the trunk, and what else leaves the root comes after it. */
function addRows(unrolling: Unrolling, root: string): void {
  const { limbs, made } = unrolling;
  const first = furthest(limbs, root)[0];
  if (first === undefined) return;
  addRow(unrolling, first, 0, null);
  const leaving = limbs.filter((limb) => limb.from === root && limb !== first);
  for (const limb of byId(leaving)) addRow(unrolling, limb, 0, made[0]!);
}

function addRow(
  unrolling: Unrolling,
  first: TreeLimb,
  startMm: number,
  parent: RuleRow | null,
): void {
  const { limbs, made } = unrolling;
  const chain = [first, ...furthest(limbs, first.to)];
  const row = rowOf(unrolling, chain, startMm, parent);
  made.push(row);
  let atMm = startMm;
  for (const [i, { to, lengthMm }] of chain.entries()) {
    atMm += lengthMm;
    const leaving = limbs.filter((limb) => limb.from === to && limb !== chain[i + 1]);
    for (const limb of byId(leaving)) addRow(unrolling, limb, atMm, row);
  }
}

const byId = (limbs: readonly TreeLimb[]): readonly TreeLimb[] =>
  [...limbs].sort((p, q) => (p.id < q.id ? -1 : 1));

/** The limbs of the longest way on from a vertex. */
function furthest(limbs: readonly TreeLimb[], vertex: string): readonly TreeLimb[] {
  const ways = byId(limbs.filter(({ from }) => from === vertex)).map((limb) => {
    const chain = [limb, ...furthest(limbs, limb.to)];
    return { chain, totalMm: chain.reduce((sum, { lengthMm }) => sum + lengthMm, 0) };
  });
  return ways.sort((p, q) => q.totalMm - p.totalMm)[0]?.chain ?? [];
}

function rowOf(
  { job, joints: own, partIndex }: Unrolling,
  chain: readonly TreeLimb[],
  startMm: number,
  parent: RuleRow | null,
): RuleRow {
  const stations = new Set(job.stations.map(({ id }) => id));
  const placeOf = (id: string, atMm: number, meets: string | null): RulePlace => {
    return { id, station: stations.has(id) ? id : null, atMm, meets };
  };
  const places = [placeOf(chain[0]!.from, startMm, null)];
  const pieces: RulePiece[] = [];
  let atMm = startMm;
  for (const limb of chain) {
    const along = limb.passed.map((one) => placeOf(one.vertex, atMm + one.atMm, null));
    places.push(...along, placeOf(limb.to, atMm + limb.lengthMm, limb.meets));
    for (const { fromMm, toMm, ...piece } of limb.pieces) {
      pieces.push({ ...piece, fromMm: atMm + fromMm, toMm: atMm + toMm });
    }
    atMm += limb.lengthMm;
  }
  const common = { id: chain[0]!.id, partIndex, parent: parent?.id ?? null };
  const depthIndex = parent === null ? 0 : parent.depthIndex + 1;
  const joints = jointsOn(own, pieces, parent === null ? places : places.slice(1));
  return { ...common, depthIndex, startMm, endMm: atMm, places, pieces, joints };
}

/** Joints a wire of the loom ends on. */
function jointsOfLoom(job: Job, loom: string): Job["joints"] {
  const met = new Set(
    job.wires
      .filter((wire) => wire.loom === loom && wire.status !== "remove")
      .flatMap(({ from, to }) => [from, to].map((pin) => pin.slice(0, pin.indexOf(".")))),
  );
  return job.joints.filter(({ id, status }) => met.has(id) && status !== "remove");
}

/** Joints at a station of the row, or along one of its runs. */
function jointsOn(
  joints: Job["joints"],
  pieces: readonly RulePiece[],
  places: readonly RulePlace[],
): RuleRow["joints"] {
  const found = joints.flatMap(({ id, station, offset }) => {
    if (offset === undefined) {
      const place = places.find((one) => one.station !== null && one.station === station);
      return place === undefined ? [] : [{ joint: id, atMm: place.atMm }];
    }
    const mm = offset.mm.value;
    const piece = pieces.find(
      ({ run, runFromMm, runToMm }) =>
        run === offset.run &&
        mm >= Math.min(runFromMm, runToMm) &&
        mm <= Math.max(runFromMm, runToMm),
    );
    if (piece === undefined) return [];
    return [{ joint: id, atMm: piece.fromMm + Math.abs(mm - piece.runFromMm) }];
  });
  return found.sort((p, q) => p.atMm - q.atMm || (p.joint < q.joint ? -1 : 1));
}
