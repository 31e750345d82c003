import type { FaultStory } from "@copperwright/engine";
import type { TryView } from "./worker/tryView.ts";

/** A view with the wires a fault warms as warm as they are at a moment; every other wire stays as it was before the fault. */
export function heatAt(view: TryView, story: FaultStory | null, atS: number): TryView {
  if (story === null || story.wires.length === 0) return view;
  const warm = new Map(
    story.wires.map(({ wire, points, startC }) => [
      wire,
      points.findLast(({ timeS }) => timeS <= atS)?.temperatureC ?? startC,
    ]),
  );
  const wires = view.wires.map((wire) => {
    const temperatureC = warm.get(wire.wire);
    return temperatureC === undefined || wire.temperature === null
      ? wire
      : { ...wire, temperature: { ...wire.temperature, temperatureC } };
  });
  const byId = new Map(wires.map((wire) => [wire.wire, wire]));
  const runs = view.runs.map((run) => {
    const heats = run.wires.flatMap((id) => byId.get(id)?.temperature?.temperatureC ?? []);
    return run.temperatureC === null || heats.length === 0
      ? run
      : { ...run, temperatureC: Math.max(...heats) };
  });
  return { ...view, wires, runs };
}
