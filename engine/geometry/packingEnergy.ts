import type { Slope } from "./limitedMemoryDescent.ts";

/** Pairs nearer than touching plus this are watched, against radii near 1. */
const SKIN = 0.6;
/** Keeps a direction defined for two centres on one spot. */
const TINY = 1e-300;

/** What the energy remembers between evaluations. */
interface Contacts {
  readonly radii: Float64Array;
  readonly first: Int32Array;
  readonly second: Int32Array;
  /** Where every circle was when the list of near pairs was made. */
  readonly listedAt: Float64Array;
  readonly pairPressure: Float64Array;
  readonly rimPressure: Float64Array;
  nearCount: number;
  stale: boolean;
  stiffness: number;
  pressed: boolean;
}

/**
 * How badly circles overlap inside a round rim, plus the rim's radius:
 *
 *   F = R + (stiffness / 2) · Σ max(0, overlap + pressure / stiffness)²
 *
 * over all pairs (overlap r_i + r_j − |x_i − x_j|) and all circles against the rim (|x_i| + r_i − R). With all pressures
 * nil it is the plain penalty; with the pressures updated it is the augmented Lagrangian of the packing problem, whose
 * minimum is a packing without overlap.
 *
 * State: x0, y0, x1, y1, …, R. Radii near 1. Only pairs near each other are looked at; the list is made anew when a
 * circle has moved half a skin.
 *
 * @returns `slope`, F with its gradient; `press`, which raises every pressure by what overlaps and returns the largest
 *          overlap left; `soften`, which begins anew with a stiffness and no pressures.
 */
export function packingEnergy(radii: Float64Array) {
  const count = radii.length;
  const pairCount = (count * (count - 1)) / 2;
  const contacts: Contacts = {
    radii,
    first: new Int32Array(pairCount),
    second: new Int32Array(pairCount),
    listedAt: new Float64Array(2 * count),
    pairPressure: new Float64Array(count * count),
    rimPressure: new Float64Array(count),
    nearCount: 0,
    stale: true,
    stiffness: 1,
    pressed: false,
  };
  const slope: Slope = (x, gradient) => {
    if (contacts.stale || hasMoved(contacts, x)) listNear(contacts, x);
    gradient.fill(0);
    const square = pairOverlaps(contacts, x, gradient) + rimOverlaps(contacts, x, gradient);
    return x[2 * count]! + (contacts.stiffness / 2) * square;
  };
  const soften = (stiffness: number): void => {
    contacts.stiffness = stiffness;
    contacts.pressed = false;
    contacts.stale = true;
    contacts.pairPressure.fill(0);
    contacts.rimPressure.fill(0);
  };
  return { slope, press: (x: Float64Array) => press(contacts, x), soften };
}

function listNear(contacts: Contacts, x: Float64Array): void {
  const { radii, first, second } = contacts;
  const count = radii.length;
  let nearCount = 0;
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      const dx = x[2 * i]! - x[2 * j]!;
      const dy = x[2 * i + 1]! - x[2 * j + 1]!;
      const reach = radii[i]! + radii[j]! + SKIN;
      if (dx * dx + dy * dy < reach * reach) {
        first[nearCount] = i;
        second[nearCount++] = j;
      }
    }
  }
  contacts.nearCount = nearCount;
  for (let k = 0; k < 2 * count; k++) contacts.listedAt[k] = x[k]!;
  contacts.stale = false;
}

function hasMoved({ radii, listedAt }: Contacts, x: Float64Array): boolean {
  for (let i = 0; i < radii.length; i++) {
    const dx = x[2 * i]! - listedAt[2 * i]!;
    const dy = x[2 * i + 1]! - listedAt[2 * i + 1]!;
    if (dx * dx + dy * dy > (SKIN * SKIN) / 4) return true;
  }
  return false;
}

/** Σ overlap² over pairs; their forces are added to the gradient. */
function pairOverlaps(contacts: Contacts, x: Float64Array, gradient: Float64Array): number {
  const { radii, first, second, nearCount, stiffness, pressed, pairPressure } = contacts;
  const count = radii.length;
  let sum = 0;
  for (let k = 0; k < nearCount; k++) {
    const i = first[k]!;
    const j = second[k]!;
    const dx = x[2 * i]! - x[2 * j]!;
    const dy = x[2 * i + 1]! - x[2 * j + 1]!;
    let reach = radii[i]! + radii[j]!;
    if (pressed) reach += pairPressure[i * count + j]! / stiffness;
    const square = dx * dx + dy * dy;
    if (square >= reach * reach) continue;
    const distance = Math.sqrt(square) + TINY;
    const overlap = reach - distance;
    sum += overlap * overlap;
    const force = (stiffness * overlap) / distance;
    gradient[2 * i]! -= force * dx;
    gradient[2 * i + 1]! -= force * dy;
    gradient[2 * j]! += force * dx;
    gradient[2 * j + 1]! += force * dy;
  }
  return sum;
}

/** Σ overlap² against the rim; forces on circles and on the rim itself go to the gradient. */
function rimOverlaps(contacts: Contacts, x: Float64Array, gradient: Float64Array): number {
  const { radii, stiffness, pressed, rimPressure } = contacts;
  const count = radii.length;
  const rim = x[2 * count]!;
  let sum = 0;
  let push = 0;
  for (let i = 0; i < count; i++) {
    const room = rim - radii[i]! + (pressed ? -rimPressure[i]! / stiffness : 0);
    const px = x[2 * i]!;
    const py = x[2 * i + 1]!;
    const square = px * px + py * py;
    if (room > 0 && square <= room * room) continue;
    const distance = Math.sqrt(square) + TINY;
    const overlap = distance - room;
    sum += overlap * overlap;
    push += overlap;
    const force = (stiffness * overlap) / distance;
    gradient[2 * i]! += force * px;
    gradient[2 * i + 1]! += force * py;
  }
  gradient[2 * count] = 1 - stiffness * push;
  return sum;
}

/** Pressure of each contact := max(0, pressure + stiffness · overlap). Returns the largest overlap. */
function press(contacts: Contacts, x: Float64Array): number {
  const { radii, stiffness, pairPressure, rimPressure } = contacts;
  const count = radii.length;
  let worst = 0;
  for (let i = 0; i < count; i++) {
    const outwards = Math.hypot(x[2 * i]!, x[2 * i + 1]!) + radii[i]! - x[2 * count]!;
    rimPressure[i] = Math.max(0, rimPressure[i]! + stiffness * outwards);
    worst = Math.max(worst, outwards);
    for (let j = i + 1; j < count; j++) {
      const distance = Math.hypot(x[2 * i]! - x[2 * j]!, x[2 * i + 1]! - x[2 * j + 1]!);
      const overlap = radii[i]! + radii[j]! - distance;
      const at = i * count + j;
      pairPressure[at] = Math.max(0, pairPressure[at]! + stiffness * overlap);
      worst = Math.max(worst, overlap);
    }
  }
  contacts.pressed = true;
  return worst;
}
