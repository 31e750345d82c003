import type { PointMm } from "../../drawing/index.ts";
import type { MachineScene } from "./machineScene.ts";
import { type SceneAsked, sourceOf } from "./sceneSource.ts";

/**
 * The way of a wire as a line over the rings of a machine's drawing: from station to station, and to the places along runs where its joints lie, at their
 * share of the run. Empty where its way is not known or a station of it has no place.
 */
export function wayPoints(
  asked: SceneAsked,
  wire: string,
  rings: MachineScene["rings"],
): readonly PointMm[] {
  const { job, design } = sourceOf(asked).input;
  const at = new Map(rings.map((ring) => [ring.station, ring.at]));
  const runs = new Map(job.runs.map((run) => [run.id, run]));
  const placeOf = (runId: string, mm: number | null): PointMm | null => {
    const run = runs.get(runId);
    const [from, to] = [at.get(run?.from ?? ""), at.get(run?.to ?? "")];
    if (from === undefined || to === undefined) return null;
    const wholeMm = run?.lengthMm?.value ?? null;
    // A run nobody measured has no mm at its far end.
    const share = mm === 0 ? 0 : mm === null || wholeMm === null ? 1 : mm / wholeMm;
    return {
      xMm: from.xMm + (to.xMm - from.xMm) * share,
      yMm: from.yMm + (to.yMm - from.yMm) * share,
    };
  };
  const steps = design.routed.wires.get(wire)?.steps ?? [];
  const points = steps.flatMap((step, i) => [
    ...(i === 0 ? [placeOf(step.run, step.enterMm)] : []),
    placeOf(step.run, step.leaveMm),
  ]);
  return points.some((point) => point === null) ? [] : points.flatMap((point) => point ?? []);
}
