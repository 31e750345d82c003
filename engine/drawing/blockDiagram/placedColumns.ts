import type { Net, RankedBlocks } from "./rankedBlocks.ts";

/** A place in a column: a block, or the gap a line passes through. */
export interface Slot {
  readonly key: string;
  readonly heightMm: number;
}

const GAP_MM = 2.5;
const SWEEP_COUNT = 8;

export const passKey = (net: Net, rank: number): string => `${net.key} past ${rank}`;

/** Where a net goes in each column it reaches: its blocks there, and a pass where it goes on. */
export function netStops(net: Net, ranked: RankedBlocks): ReadonlyMap<number, readonly string[]> {
  const fromRank = ranked.rankOf.get(net.from)!;
  const lastRank = Math.max(...net.to.map((id) => ranked.rankOf.get(id)!));
  const stops = new Map<number, string[]>();
  for (let rank = fromRank + 1; rank <= lastRank; rank++) {
    const blocks = net.to.filter((id) => ranked.rankOf.get(id) === rank);
    stops.set(rank, rank < lastRank ? [...blocks, passKey(net, rank)] : blocks);
  }
  return stops;
}

/**
 * Middle of every slot, mm down its column. Columns are ordered by the mean height of what their slots are joined to, then each slot is drawn
 * to that mean as near as the order and the gaps allow (least squares, pooled neighbours).
 */
export function placedColumns(
  ranked: RankedBlocks,
  heightOf: ReadonlyMap<string, number>,
): ReadonlyMap<string, number> {
  const columns = slotColumns(ranked, heightOf);
  const neighbours = slotNeighbours(ranked);
  const middle = new Map<string, number>();
  for (const column of columns) stack(column, middle);
  for (let sweep = 0; sweep < SWEEP_COUNT; sweep++) {
    const order = sweep % 2 === 0 ? columns.keys() : [...columns.keys()].reverse();
    for (const k of order) {
      const column = columns[k]!;
      const wish = new Map(column.map((slot) => [slot.key, meanOf(slot.key, neighbours, middle)]));
      column.sort((a, b) => wish.get(a.key)! - wish.get(b.key)!);
      drawTogether(column, wish, middle);
    }
  }
  const topMm = Math.min(
    ...columns.flat().map((slot) => middle.get(slot.key)! - slot.heightMm / 2),
  );
  return new Map([...middle].map(([key, mm]) => [key, mm - topMm]));
}

function slotColumns(ranked: RankedBlocks, heightOf: ReadonlyMap<string, number>): Slot[][] {
  const count = Math.max(...ranked.rankOf.values()) + 1;
  const columns: Slot[][] = Array.from({ length: count }, () => []);
  for (const [id, rank] of ranked.rankOf)
    columns[rank]!.push({ key: id, heightMm: heightOf.get(id)! });
  for (const net of ranked.nets) {
    for (const [rank, keys] of netStops(net, ranked)) {
      if (keys.includes(passKey(net, rank)))
        columns[rank]!.push({ key: passKey(net, rank), heightMm: 0 });
    }
  }
  return columns;
}

function slotNeighbours(ranked: RankedBlocks): ReadonlyMap<string, readonly string[]> {
  const pairs: [string, string][] = ranked.nets.flatMap((net) => {
    const stops = netStops(net, ranked);
    return [...stops].flatMap(([rank, keys]) => {
      const feeder = stops.has(rank - 1) ? passKey(net, rank - 1) : net.from;
      return keys.map((key): [string, string] => [feeder, key]);
    });
  });
  const found = new Map<string, string[]>();
  for (const [a, b] of [...pairs, ...pairs.map(([a, b]): [string, string] => [b, a])]) {
    found.set(a, [...(found.get(a) ?? []), b]);
  }
  return found;
}

function stack(column: readonly Slot[], middle: Map<string, number>): void {
  let yMm = 0;
  for (const slot of column) {
    middle.set(slot.key, yMm + slot.heightMm / 2);
    yMm += slot.heightMm + GAP_MM;
  }
}

function meanOf(
  key: string,
  neighbours: ReadonlyMap<string, readonly string[]>,
  middle: ReadonlyMap<string, number>,
): number {
  const near = neighbours.get(key);
  if (!near) return middle.get(key)!;
  return near.reduce((sumMm, each) => sumMm + middle.get(each)!, 0) / near.length;
}

/** min Σ (yᵢ − wishᵢ)² with yᵢ₊₁ − yᵢ at least half of both heights and the gap: pooled adjacent violators. */
function drawTogether(
  column: readonly Slot[],
  wish: ReadonlyMap<string, number>,
  middle: Map<string, number>,
): void {
  const offsets: number[] = [];
  column.forEach((slot, i) => {
    const before = column[i - 1];
    const stepMm = before ? (before.heightMm + slot.heightMm) / 2 + GAP_MM : 0;
    offsets.push((offsets.at(-1) ?? 0) + stepMm);
  });
  const pools: { sumMm: number; count: number }[] = [];
  column.forEach((slot, i) => {
    pools.push({ sumMm: wish.get(slot.key)! - offsets[i]!, count: 1 });
    while (pools.length > 1 && mean(pools.at(-2)!) > mean(pools.at(-1)!)) {
      const last = pools.pop()!;
      const before = pools.at(-1)!;
      pools[pools.length - 1] = {
        sumMm: before.sumMm + last.sumMm,
        count: before.count + last.count,
      };
    }
  });
  const levels = pools.flatMap((pool) => Array<number>(pool.count).fill(mean(pool)));
  column.forEach((slot, i) => {
    middle.set(slot.key, levels[i]! + offsets[i]!);
  });
}

const mean = (pool: { readonly sumMm: number; readonly count: number }): number =>
  pool.sumMm / pool.count;
