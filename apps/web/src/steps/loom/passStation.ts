import { ask } from "../../engine/engineClient.ts";
import { say, useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";

/** Tells a wire to pass one more station, where that is the shortest way; says why where it cannot. */
export async function passStation(wireId: string, station: string): Promise<boolean> {
  const { job } = useBench.getState().document!;
  const wire = job.wires.find(({ id }) => id === wireId);
  const number = wire?.number ?? wireId;
  const name = job.stations.find(({ id }) => id === station)?.name ?? station;
  if (wire?.via?.includes(station)) {
    say(`Wire ${number} must pass ${name} already.`);
    return false;
  }
  const via = await ask("loomVia", { wire: wireId, station });
  if (via === null) {
    say(`No run leads wire ${number} over ${name}. Lay a run to it first, or place its ends.`);
    return false;
  }
  return edit(`wire ${number} by ${name}`, setVia(wireId, via));
}

export const setVia = (id: string, via: readonly string[]) => ({
  op: "set" as const,
  list: "wires" as const,
  id,
  path: ["via"],
  ...(via.length === 0 ? {} : { value: via }),
});
