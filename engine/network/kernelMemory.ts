/**
 * Arrays the number loops work on, laid one after another in the memory of one network. Sizes: n unknown nodes, m branches,
 * k slots, e entries, u updates, s columns before the split, d entries from the split on.
 */
export const REAL_ARRAYS = [
  /** Conductances, then weights (e); 1 / Σg of each column (n). */
  "value",
  "pivotOhm",
  /** By position (n + 1): currents injected, volts, currents left over; two more for anyone's use. */
  "injectedA",
  "positionV",
  "leftoverA",
  "spareA",
  "spareV",
  /** By branch (m): currents; conductance and EMF of the linear ones. */
  "branchA",
  "linearS",
  "linearEmfV",
  /** Late part after the linear branches: conductances (d) and currents (n + 1 − s). */
  "reducedS",
  "reducedA",
  /** By slot (k): volts wanted; volts last evaluated at, current and slope there; the line i ≈ lineA + lineS·(v − lineV). */
  "slotV",
  "slotAtV",
  "slotA",
  "slotS",
  "lineV",
  "lineA",
  "lineS",
  /** By slot (k), of filaments: 1/ratedV, ratedA, eps², (exponent − 1)/2, ratedA/ratedV, slope at 0 V. */
  "perRatedV",
  "ratedA",
  "epsSquared",
  "halfExponent",
  "chordS",
  "coldS",
  /** Volts a slot may move while its line still serves in a Newton step (k); 0 where it must be evaluated. */
  "stillV",
  /** y of each short (16 · (n + 1)), as carried through all columns, and its late part as left by the early ones. */
  "shortColumn",
  "shortLate",
  /** Of a single short: its resistance and volts as seen by the early columns, and its current (3). */
  "oneShort",
] as const;

export const WHOLE_ARRAYS = [
  "columnStart",
  "rowIndex",
  "updateStart",
  "updateTarget",
  "positionA",
  "positionB",
  "entry",
  "branchOfSlot",
  /** 1 where the slot holds a filament (k). */
  "isFilament",
] as const;

export const COUNTS = [
  "unknownCount",
  "branchCount",
  "slotCount",
  "splitColumn",
  "firstLate",
  "entryCount",
] as const;

export type RealName = (typeof REAL_ARRAYS)[number];
export type WholeName = (typeof WHOLE_ARRAYS)[number];
export type CountName = (typeof COUNTS)[number];
export type Counts = Readonly<Record<CountName, number>>;

/** Shorts that fit beside the pattern; more are compiled into it. */
export const MOST_SHORTS = 16;

export type KernelArrays = Readonly<Record<RealName, Float64Array>> &
  Readonly<Record<WholeName, Int32Array>>;

export interface KernelMemory {
  readonly arrays: KernelArrays;
  readonly addresses: Readonly<Record<RealName | WholeName, number>>;
  readonly memory: unknown;
}

const PAGE_BYTES = 65536;

/** Lays the arrays out in fresh memory made by `makeMemory`. */
export function kernelMemory(
  counts: Counts,
  whole: Readonly<Record<WholeName, Int32Array>>,
  makeMemory: (pageCount: number) => { readonly buffer: ArrayBuffer },
): KernelMemory {
  const sizes = realSizes(counts);
  let byteCount = 0;
  const addresses: Record<string, number> = {};
  const place = (name: string, bytes: number): void => {
    addresses[name] = byteCount;
    byteCount += Math.ceil(bytes / 8) * 8;
  };
  for (const name of REAL_ARRAYS) place(name, 8 * sizes[name]);
  for (const name of WHOLE_ARRAYS) place(name, 4 * whole[name].length);
  const memory = makeMemory(Math.max(1, Math.ceil(byteCount / PAGE_BYTES)));
  const arrays: Record<string, Float64Array | Int32Array> = {};
  for (const name of REAL_ARRAYS) {
    arrays[name] = new Float64Array(memory.buffer, addresses[name], sizes[name]);
  }
  for (const name of WHOLE_ARRAYS) {
    const array = new Int32Array(memory.buffer, addresses[name], whole[name].length);
    array.set(whole[name]);
    arrays[name] = array;
  }
  return {
    arrays: arrays as KernelArrays,
    addresses: addresses as Record<RealName | WholeName, number>,
    memory,
  };
}

function realSizes(counts: Counts): Record<RealName, number> {
  const {
    unknownCount: n,
    branchCount: m,
    slotCount: k,
    splitColumn,
    firstLate,
    entryCount,
  } = counts;
  const late = n + 1 - splitColumn;
  const byNode = {
    injectedA: n + 1,
    positionV: n + 1,
    leftoverA: n + 1,
    spareA: n + 1,
    spareV: n + 1,
  };
  const byBranch = { branchA: m, linearS: m, linearEmfV: m };
  const line = { slotV: k, slotAtV: k, slotA: k, slotS: k, lineV: k, lineA: k, lineS: k };
  const filament = {
    perRatedV: k,
    ratedA: k,
    epsSquared: k,
    halfExponent: k,
    chordS: k,
    coldS: k,
    stillV: k,
  };
  return {
    ...{ ...byNode, ...byBranch, ...line, ...filament },
    value: entryCount,
    pivotOhm: n,
    reducedS: entryCount - firstLate,
    reducedA: late,
    shortColumn: MOST_SHORTS * (n + 1),
    shortLate: MOST_SHORTS * late,
    oneShort: 3,
  };
}
