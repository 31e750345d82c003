/** A logarithmic axis: where a value lies on it, and back, 0 to 1. */
export interface LogScale {
  readonly from: number;
  readonly to: number;
  readonly ratioOf: (value: number) => number;
  readonly valueAt: (ratio: number) => number;
  /** Whole decades on it. */
  readonly decades: readonly number[];
}

export function logScale(from: number, to: number): LogScale {
  const span = Math.log(to / from);
  const first = Math.ceil(Math.log10(from) - 1e-9);
  const last = Math.floor(Math.log10(to) + 1e-9);
  return {
    from,
    to,
    ratioOf: (value) => Math.min(1, Math.max(0, Math.log(value / from) / span)),
    valueAt: (ratio) => from * Math.exp(span * Math.min(1, Math.max(0, ratio))),
    decades: Array.from({ length: last - first + 1 }, (_, k) => 10 ** (first + k)),
  };
}
