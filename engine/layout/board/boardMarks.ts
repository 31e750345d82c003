import type { Job } from "../../job/index.ts";
import { figure } from "../../tables/index.ts";
import { alongLine } from "./alongLine.ts";
import type {
  BoardClip,
  BoardCovering,
  BoardJoint,
  BoardLimb,
  BoardNode,
  BoardPeg,
} from "./boardLayout.ts";

/** The covering stops so far before an end, to leave the wires free for their terminals, mm. */
const FREE_END_MM = 40;
/** No more than this between two pegs, mm. */
const PEG_PITCH_MM = 250;

/** Joints with a wire in this loom, where they lie. A joint at a station lies on its peg. */
export function boardJoints(
  job: Job,
  loom: string,
  limbs: readonly BoardLimb[],
  nodes: readonly BoardNode[],
): readonly BoardJoint[] {
  const own = new Set(
    job.wires
      .filter((wire) => wire.loom === loom && wire.status !== "remove")
      .flatMap(({ from, to }) => [from, to].map((pin) => pin.slice(0, pin.indexOf(".")))),
  );
  return job.joints
    .filter(({ id, status }) => own.has(id) && status !== "remove")
    .flatMap(({ id, station, offset }): BoardJoint[] => {
      if (offset === undefined) {
        const node = nodes.find((one) => one.station !== null && one.station === station);
        if (node === undefined) return [];
        const { at, fromDatumMm } = node;
        return [{ joint: id, at, alongDeg: 0, limb: null, fromDatumMm }];
      }
      const found = onLimb(limbs, offset.run, offset.mm.value);
      if (found === null) return [];
      const start = nodes.find((node) => node.id === found.limb.from)!.fromDatumMm;
      const place = alongLine(found.limb.points, found.alongMm);
      const fromDatumMm = start + found.alongMm;
      return [{ joint: id, ...place, limb: found.limb.id, fromDatumMm }];
    })
    .sort((p, q) => (p.joint < q.joint ? -1 : 1));
}

function onLimb(limbs: readonly BoardLimb[], run: string, mm: number) {
  for (const limb of limbs) {
    for (const { run: its, fromMm, runFromMm, runToMm } of limb.pieces) {
      if (its !== run) continue;
      if (mm < Math.min(runFromMm, runToMm) || mm > Math.max(runFromMm, runToMm)) continue;
      return { limb, alongMm: fromMm + Math.abs(mm - runFromMm) };
    }
  }
  return null;
}

/** Clips of the machine: the first behind each end, then no further apart than supports may be; none where it moves. */
export function boardClips(limbs: readonly BoardLimb[]): readonly BoardClip[] {
  const firstMm = figure("loomRules", "first-fixing", "value").value;
  const apartMm = figure("loomRules", "support", "value").value;
  return limbs.flatMap(({ lengthMm, points, pieces }) => {
    const inside = lengthMm - 2 * firstMm;
    const count = inside <= firstMm / 2 ? 0 : Math.ceil(inside / apartMm);
    const places =
      inside <= firstMm / 2
        ? lengthMm > firstMm
          ? [lengthMm / 2]
          : []
        : Array.from({ length: count + 1 }, (_, i) => firstMm + (inside * i) / count);
    return places
      .filter((mm) => !pieces.some(({ flex, fromMm, toMm }) => flex && mm >= fromMm && mm <= toMm))
      .map((mm) => alongLine(points, mm));
  });
}

/** Sleeve or tape from fork to fork: parted at a breakout so that tape can cross over, stopped before an end. */
export function boardCoverings(
  limbs: readonly BoardLimb[],
  nodes: readonly BoardNode[],
): readonly BoardCovering[] {
  const pastMm = figure("loomRules", "tape-past", "value").value;
  const kindOf = new Map(nodes.map(({ id, kind }) => [id, kind]));
  const leaves = (vertex: string): number => (kindOf.get(vertex) === "end" ? FREE_END_MM : pastMm);
  return limbs.flatMap(({ id, from, to, lengthMm }) => {
    const fromMm = leaves(from);
    const toMm = lengthMm - leaves(to);
    return toMm - fromMm < pastMm ? [] : [{ limb: id, fromMm, toMm }];
  });
}

/** A peg at every station and breakout, numbered outwards from the datum, and lettered ones on both sides of a fold and along a limb. */
export function boardPegs(
  limbs: readonly BoardLimb[],
  nodes: readonly BoardNode[],
): readonly BoardPeg[] {
  const inOrder = [...nodes].sort(
    (p, q) => p.partIndex - q.partIndex || p.fromDatumMm - q.fromDatumMm || (p.id < q.id ? -1 : 1),
  );
  const pegs: BoardPeg[] = inOrder.map(({ at, fromDatumMm, id }, i) => ({
    label: `${i + 1}`,
    at,
    fromDatumMm,
    node: id,
  }));
  const letters = new Map<string, number>();
  const numbered = new Map(pegs.map((peg) => [peg.node!, peg]));
  const between = limbs.flatMap((limb) => {
    const start = numbered.get(limb.from)!;
    return lettered(limb, inOrder, start.fromDatumMm).map((mm): BoardPeg => {
      const count = letters.get(start.label) ?? 0;
      letters.set(start.label, count + 1);
      const label = `${start.label}${letterOf(count)}`;
      const { at } = alongLine(limb.points, mm);
      return { label, at, fromDatumMm: start.fromDatumMm + mm, node: null };
    });
  });
  return [...pegs, ...between];
}

const letterOf = (index: number): string => {
  const last = String.fromCharCode(97 + (index % 26));
  return index < 26 ? last : `${letterOf(Math.floor(index / 26) - 1)}${last}`;
};

/** Places of the pegs between the numbered ones of a limb. */
function lettered(
  { lengthMm, folds, points }: BoardLimb,
  nodes: readonly BoardNode[],
  startMm: number,
): readonly number[] {
  const isOn = ({ at, fromDatumMm }: BoardNode): boolean => {
    const place = alongLine(points, fromDatumMm - startMm).at;
    return Math.hypot(place.x - at.x, place.y - at.y) < 1e-6;
  };
  const held = nodes
    .filter(({ kind, fromDatumMm }) => kind === "passed" && fromDatumMm > startMm)
    .filter(isOn)
    .map(({ fromDatumMm }) => fromDatumMm - startMm);
  const bends = folds.flatMap(({ fromMm, toMm }) => [fromMm, toMm]);
  const fixed = [...new Set([0, ...held, ...bends, lengthMm])].sort((a, b) => a - b);
  const filled = fixed.flatMap((mm, i) => {
    const next = fixed[i + 1];
    if (next === undefined) return [mm];
    const count = Math.ceil((next - mm) / PEG_PITCH_MM - 1e-9);
    const step = (next - mm) / Math.max(1, count);
    return Array.from({ length: Math.max(1, count) }, (_, k) => mm + k * step);
  });
  return filled.filter((mm) => mm > 1e-6 && mm < lengthMm - 1e-6 && !held.includes(mm));
}
