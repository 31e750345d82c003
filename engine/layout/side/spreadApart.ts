import type { Point } from "../../geometry/index.ts";

const ROUND_COUNT = 200;

/**
 * Points moved as little as needed so that no two are nearer than asked: each round parts every close pair by half of what is
 * missing, each to its own side. Points on one spot part sideways in their order.
 */
export function spreadApart(points: readonly Point[], apartMm: number): readonly Point[] {
  const spread = points.map(({ x, y }) => ({ x, y }));
  for (let round = 0; round < ROUND_COUNT; round++) {
    let isDone = true;
    for (let i = 0; i < spread.length; i++) {
      for (let j = 0; j < i; j++) {
        const [p, q] = [spread[i]!, spread[j]!];
        const [dx, dy] = [p.x - q.x, p.y - q.y];
        const distance = Math.hypot(dx, dy);
        if (distance >= apartMm - 1e-6) continue;
        isDone = false;
        const [ux, uy] = distance < 1e-6 ? [1, 0] : [dx / distance, dy / distance];
        const push = (apartMm - distance) / 2 + 1e-6;
        p.x += ux * push;
        p.y += uy * push;
        q.x -= ux * push;
        q.y -= uy * push;
      }
    }
    if (isDone) break;
  }
  return spread;
}
