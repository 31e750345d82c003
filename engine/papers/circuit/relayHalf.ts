import type { PartHalf } from "../../drawing/index.ts";
import type { Job, Part } from "../../job/index.ts";
import type { Levels } from "./levels.ts";
import type { Link, MachineGraph } from "./machineGraph.ts";

/** Which half of a relay a link is, and on whose sheets the other half stands where it is not on the same. */
export function relayHalf(
  job: Job,
  graph: MachineGraph,
  levels: Levels,
  part: Part & { readonly kind: "relay" },
  link: Link,
): PartHalf {
  const isCoil = link.kind === "coil";
  const others = graph.links.filter(
    ({ of, kind }) => of === part.id && (kind === "coil") !== isCoil && kind !== "wire",
  );
  const other = isCoil ? "contact" : "coil";
  const circuits = sheetsOf(job, graph, levels, others);
  return {
    is: isCoil ? "coil" : "contact",
    other,
    elsewhere: circuits.length === 0 ? "" : `${other} on sheet ${circuits.join(" or ")}`,
  };
}

/** Names of the circuits whose wires feed some links. */
export function sheetsOf(
  job: Job,
  graph: MachineGraph,
  levels: Levels,
  links: readonly Link[],
): readonly string[] {
  const names = new Map(job.circuits.map(({ id, name }) => [id, name]));
  const ends = links.flatMap(({ a, b }) => [a, b]);
  const fed = ends.filter((at) => levels.side(at) !== "earth");
  const wired = (fed.length > 0 ? fed : ends)
    .flatMap((at) => graph.linksAt.get(at) ?? [])
    .flatMap(({ wire }) => (wire === undefined ? [] : [wire.circuit]));
  return [...new Set(wired)].map((id) => names.get(id) ?? id);
}
