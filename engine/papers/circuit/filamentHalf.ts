import type { PartHalf } from "../../drawing/index.ts";
import type { Job, Part } from "../../job/index.ts";
import type { Levels } from "./levels.ts";
import type { Link, MachineGraph } from "./machineGraph.ts";
import { sheetsOf } from "./relayHalf.ts";

/**
 * A lamp with more filaments than one is drawn where each works, as a relay is, by the dispersed representation of IEC 61082 (*memory*): the same name at each,
 * and where the others are. Null for a lamp of another kind.
 */
export function filamentHalf(
  job: Job,
  graph: MachineGraph,
  levels: Levels,
  part: Part,
  link: Link,
): PartHalf | null {
  const others = otherFilaments(graph.links, part, link);
  if (others.length === 0) return null;
  const names = others.map((other) => filamentName(other, link)).join(", ");
  const circuits = sheetsOf(job, graph, levels, others);
  const other = `filament${others.length > 1 ? "s" : ""} ${names}`;
  return {
    is: link.key,
    other,
    elsewhere: circuits.length === 0 ? "" : `${other} on sheet ${circuits.join(" or ")}`,
  };
}

function otherFilaments(links: readonly Link[], part: Part, link: Link): readonly Link[] {
  if (part.kind !== "lamp" || part.source === "led" || link.kind !== "load") return [];
  return links.filter(({ of, kind, key }) => of === part.id && kind === "load" && key !== link.key);
}

/** What another filament is called beside this one: by the pin that is not its return as well. */
function filamentName(other: Link, link: Link): string {
  const own = [other.pinA, other.pinB].find((pin) => pin !== link.pinA && pin !== link.pinB);
  const pin = own ?? other.pinA;
  return pin.slice(pin.indexOf(".") + 1);
}
