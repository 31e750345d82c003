/** One net in the channel between two columns: where it comes in at the left and goes out at the right. */
export interface ChannelNet {
  readonly key: string;
  readonly leftYMm: number;
  readonly rightYsMm: readonly number[];
}

/** Two levels closer than this would be read as one line. */
const APART_MM = 0.6;

/**
 * Which track each net of a channel turns on, from 0 at the left. No two nets share one, and a net that comes in on the level on which another
 * goes out turns before it, so that no two lie on each other. Null where that cannot be: nets that wait for each other in a ring.
 */
export function channelTracks(nets: readonly ChannelNet[]): ReadonlyMap<string, number> | null {
  const turning = nets.filter(isTurning);
  const mustPrecede = (a: ChannelNet, b: ChannelNet): boolean =>
    a !== b && b.rightYsMm.some((yMm) => Math.abs(yMm - a.leftYMm) < APART_MM);
  const waiting = turning.toSorted((a, b) => b.leftYMm - a.leftYMm);
  const tracks = new Map<string, number>();
  while (waiting.length > 0) {
    const index = waiting.findIndex((net) => !waiting.some((other) => mustPrecede(other, net)));
    if (index < 0) return null;
    tracks.set(waiting[index]!.key, tracks.size);
    waiting.splice(index, 1);
  }
  return tracks;
}

/** Whether a net needs an upright at all. */
export const isTurning = (net: ChannelNet): boolean =>
  net.rightYsMm.some((yMm) => Math.abs(yMm - net.leftYMm) > 1e-6);
