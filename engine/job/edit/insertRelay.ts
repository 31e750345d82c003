import type { Job, PartOf, Wire } from "../job.ts";
import type { Operation } from "./operation.ts";

/**
 * A relay between a switch and its load: the wire that fed the load now works the coil, a new wire feeds the load through the contacts.
 * `loadEnd` is the end of the wire that lay on the load; `feed` is where the contacts take their current, `earth` where the coil returns.
 * A coil with a diode across it is connected with its first pin to the more positive side, whichever pole is earthed.
 */
export function insertRelay(
  job: Job,
  change: {
    readonly wire: string;
    readonly loadEnd: "from" | "to";
    readonly relay: PartOf<"relay">;
    readonly feed: { readonly pin: string; readonly newWire: string };
    readonly load: { readonly newWire: string };
    readonly earth: { readonly pin: string; readonly newWire: string };
  },
): Operation {
  const { relay, loadEnd, feed, load, earth } = change;
  const wire = job.wires.find((item) => item.id === change.wire);
  const pin = (id: string): string => `${relay.id}.${id}`;
  const [first, second] = relay.coil.pins;
  const isPositiveEarth = job.supply.earthPolarity === "positive";
  const [switched, returned] = isPositiveEarth ? [second, first] : [first, second];
  const [common, made] = relay.made[0] ?? [first, second];
  const set = (path: string, value?: unknown): Operation => ({
    op: "set",
    list: "wires",
    id: change.wire,
    path: [path],
    ...(value === undefined ? {} : { value }),
  });
  const add = (id: string, from: string, to: string, like: Partial<Wire>): Operation => ({
    op: "add",
    list: "wires",
    item: { id, from, to, status: "new", ...like },
  });
  const like = wire === undefined ? {} : sharedFields(wire);
  const uncoloured = { circuit: like.circuit, ...(like.loom ? { loom: like.loom } : {}) };
  const toLoad = wire?.[loadEnd] ?? "";
  return {
    op: "batch",
    name: `Put relay ${relay.id} into ${change.wire}`,
    operations: [
      { op: "add", list: "parts", item: relay },
      set(loadEnd, pin(switched)),
      set(`${loadEnd}End`),
      set("lengthMm"),
      set("via"),
      add(feed.newWire, feed.pin, pin(common), uncoloured as Partial<Wire>),
      add(load.newWire, pin(made), toLoad, like),
      add(earth.newWire, pin(returned), earth.pin, uncoloured as Partial<Wire>),
    ],
  };
}

/** What the new wire to the load has in common with the old one. */
function sharedFields(wire: Wire): Partial<Pick<Wire, "circuit" | "loom" | "colour">> {
  const { circuit, loom, colour } = wire;
  return { circuit, ...(loom ? { loom } : {}), ...(colour ? { colour } : {}) };
}
