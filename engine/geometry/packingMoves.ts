import type { PackingState } from "./packingStarts.ts";

/** Places looked at for the biggest hole. */
const HOLE_TRIES = 40;
/** A circle trades places with one of this many nearest in size. */
const LIKE_COUNT = 4;

/** Changes a packing by chance in one of three ways: turn an outer shell, trade two sizes, move one circle to a hole. */
export function disturb(state: PackingState, isEqual: boolean): void {
  const { random } = state;
  const die = random();
  if (die < 0.25) turnShell(state);
  else if (die < 0.6 && !isEqual) tradeAlike(state);
  else moveToHole(state);
}

/** Turns everything beyond a chance radius about the middle, by up to about one place. */
function turnShell({ radii, x, random }: PackingState): void {
  const count = radii.length;
  const cut = x[2 * count]! * (0.3 + 0.5 * random());
  const angle = ((random() - 0.5) * 4 * Math.PI) / Math.max(3, 3 * cut);
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  for (let i = 0; i < count; i++) {
    const [a, b] = [x[2 * i]!, x[2 * i + 1]!];
    if (Math.hypot(a, b) <= cut) continue;
    x[2 * i] = a * cosine - b * sine;
    x[2 * i + 1] = a * sine + b * cosine;
  }
}

/** Two circles of different but near sizes change places. */
function tradeAlike({ radii, x, random }: PackingState): void {
  const i = Math.floor(random() * radii.length);
  const gap = (k: number): number => Math.abs(radii[k]! - radii[i]!);
  const others = [...radii.keys()].filter((k) => radii[k] !== radii[i]);
  others.sort((a, b) => gap(a) - gap(b) || a - b);
  // All of one size are as near as each other: every one of them may be drawn.
  const reach = Math.min(others.length, LIKE_COUNT);
  const farthest = gap(others[reach - 1]!);
  const near = others.filter((k) => gap(k) <= farthest);
  const j = near[Math.floor(random() * near.length)]!;
  for (const axis of [0, 1]) {
    const kept = x[2 * i + axis]!;
    x[2 * i + axis] = x[2 * j + axis]!;
    x[2 * j + axis] = kept;
  }
}

/** One circle goes to the roomiest of some chance places. */
function moveToHole({ radii, x, random }: PackingState): void {
  const count = radii.length;
  const rim = x[2 * count]!;
  const i = Math.floor(random() * count);
  const radius = radii[i]!;
  let best = { room: Number.NEGATIVE_INFINITY, px: x[2 * i]!, py: x[2 * i + 1]! };
  for (let n = 0; n < HOLE_TRIES; n++) {
    const far = Math.sqrt(random()) * Math.max(0, rim - 0.7 * radius);
    const angle = 2 * Math.PI * random();
    const [px, py] = [far * Math.cos(angle), far * Math.sin(angle)];
    if (Math.hypot(px - x[2 * i]!, py - x[2 * i + 1]!) < 1.2 * radius) continue;
    let room = rim - far;
    for (let j = 0; j < count && room > best.room; j++) {
      if (j === i) continue;
      room = Math.min(room, Math.hypot(px - x[2 * j]!, py - x[2 * j + 1]!) - radii[j]!);
    }
    if (room > best.room) best = { room, px, py };
  }
  x[2 * i] = best.px;
  x[2 * i + 1] = best.py;
}
