/** A circle packing being worked on. `x` holds x0, y0, x1, y1, …, and last the radius of the rim. */
export interface PackingState {
  readonly radii: Float64Array;
  readonly x: Float64Array;
  readonly random: () => number;
}

type Point = readonly [x: number, y: number];

/** How many different starts there are before they repeat with other chances. */
const LATTICE_CENTRES: readonly Point[] = [
  [0, 0],
  [1, 0],
  [1, 1 / Math.sqrt(3)],
];

/**
 * Lays the circles out afresh: by turns as rings from the rim inwards and as a patch of the triangular lattice about a
 * lattice point, the middle of an edge, of a triangle, or any point. Larger circles tend to the places listed first.
 *
 * @param turn  0, 1, 2, …: which start.
 */
export function layOut(state: PackingState, turn: number): void {
  const { radii, x, random } = state;
  const count = radii.length;
  const places =
    turn % 2 === 0 ? rings(count, random) : latticePatch(count, random, (turn - 1) / 2);
  const rank = new Float64Array(count);
  for (let i = 0; i < count; i++) rank[i] = radii[i]! + random() - 0.5;
  const order = [...rank.keys()];
  if (radii[0] !== radii[count - 1]) order.sort((i, j) => rank[j]! - rank[i]! || i - j);
  for (const [k, i] of order.entries()) {
    x[2 * i] = places[k]![0] + (random() - 0.5) / 50;
    x[2 * i + 1] = places[k]![1] + (random() - 0.5) / 50;
  }
  let square = 0;
  for (let i = 0; i < count; i++) square += radii[i]! ** 2;
  x[2 * count] = 1.15 * Math.sqrt(square);
}

/** Points 2 apart nearest to a centre. */
function latticePatch(count: number, random: () => number, kind: number): readonly Point[] {
  const centre = LATTICE_CENTRES[kind] ?? [2 * random(), Math.sqrt(3) * random()];
  const reach = Math.ceil(Math.sqrt(count)) + 3;
  const points: { readonly point: Point; readonly far: number }[] = [];
  for (let i = -reach; i <= reach; i++) {
    for (let j = -reach; j <= reach; j++) {
      const point: Point = [2 * i + j - centre[0], j * Math.sqrt(3) - centre[1]];
      points.push({ point, far: point[0] ** 2 + point[1] ** 2 });
    }
  }
  points.sort((a, b) => a.far - b.far || a.point[0] - b.point[0] || a.point[1] - b.point[1]);
  return points.slice(0, count).map(({ point }) => point);
}

/** Full rings from the rim inwards, each turned by chance; what is left goes in the middle. */
function rings(count: number, random: () => number): readonly Point[] {
  const points: Point[] = [];
  let reach = Math.sqrt(count / (0.78 + 0.06 * random()));
  for (let left = count; left > 0; reach -= 1.8) {
    const isMiddle = reach < 1 || left === 1;
    const room = isMiddle ? left : Math.floor(Math.PI / Math.asin(1 / reach));
    const taken = Math.min(left, room);
    const turned = 2 * Math.PI * random();
    const ring = isMiddle ? 0.2 : reach;
    for (let k = 0; k < taken; k++) {
      const angle = turned + (2 * Math.PI * k) / taken;
      points.push([ring * Math.cos(angle), ring * Math.sin(angle)]);
    }
    left -= taken;
  }
  return points;
}
