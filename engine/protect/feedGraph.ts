import type { EdgeList } from "../geometry/index.ts";
import { type Job, loadRef, loadsOf, type PartOf, presentParts } from "../job/index.ts";
import type { JobElement, JobNetwork } from "../operate/index.ts";
import type { Conductors } from "../route/index.ts";
import { fuseReading } from "./fuseReading.ts";

/** One way a current can take without passing through a load. */
export interface FeedEdge {
  readonly element: number;
  readonly from: number;
  readonly to: number;
  /** Wire id or PART.PIN of a fly lead; null for anything else. */
  readonly conductor: string | null;
  /** Length of the conductor, mm; 0 for anything else, null where nobody measured it. */
  readonly lengthMm: number | null;
  readonly fuse: { readonly id: string; readonly carriesA: number } | null;
  /** What must stand where for this edge to conduct; null: it always does. */
  readonly contact: FeedContact | null;
  /** True for a diode and a cut-out: away from the live post from `from` to `to` only. */
  readonly oneWay: boolean;
}

export type FeedContact =
  | { readonly controller: string; readonly closedIn: readonly string[] }
  | { readonly controller: string; readonly closedIn: readonly ["pulled"] | readonly ["released"] };

/** A load as seen from the graph: it parts feed from return and is no edge of it. */
export interface FeedLoad {
  /** PART:A-B; for a relay coil too, which is no load of its own to `dies`. */
  readonly ref: string;
  readonly isCoil: boolean;
  /** Relay the coil belongs to, or box whose outputs conduct while this is fed. */
  readonly relay: string | null;
  readonly from: number;
  readonly to: number;
}

/** Every copper path of the machine with all loads taken out. */
export interface FeedGraph extends EdgeList {
  readonly edges: readonly FeedEdge[];
  readonly loads: readonly FeedLoad[];
  readonly nodeNames: readonly string[];
}

/**
 * Builds the graph from the elements of the machine. Filaments, windings, boxes, voltmeters and sources are no edges; ammeters are.
 */
export function feedGraph(job: Job, network: JobNetwork, conductors: Conductors): FeedGraph {
  const loadRefs = new Set(loadsOf(job).map((load) => load.ref));
  const fuses = new Map(
    presentParts(job)
      .filter((part): part is PartOf<"fuse"> => part.kind === "fuse")
      .map((part) => [part.id, part]),
  );
  const ammeters = new Set(
    presentParts(job)
      .filter((part) => part.kind === "meter" && part.measures === "amps")
      .map((part) => part.id),
  );
  const boxes = new Map(
    presentParts(job).flatMap((part) =>
      part.kind === "module" && part.driver !== undefined
        ? [[loadRef(part.id, part.driver.fed), part.id] as const]
        : [],
    ),
  );
  const edges: FeedEdge[] = [];
  const loads: FeedLoad[] = [];
  network.elements.forEach((element, index) => {
    const [from, to] = element.nodes;
    const isLoad = loadRefs.has(element.of);
    if (isLoad || element.kind === "coil") {
      const relay = isLoad ? (boxes.get(element.of) ?? null) : (element.of.split(":")[0] ?? null);
      loads.push({ ref: element.of, isCoil: !isLoad, relay, from, to });
    } else if (isPath(element, ammeters)) {
      const fuse = element.kind === "fuse" ? fuses.get(element.of) : undefined;
      const conductor = element.kind === "wire" ? element.of : null;
      // A cut-out opens on reverse current, so it feeds the machine and never the dynamo.
      const oneWay = element.kind === "diode" || element.role.role === "cutOut";
      // Feeds are followed from the live post; where that is the negative one, against the current.
      const isTurned = oneWay && job.supply.earthPolarity === "positive";
      edges.push({
        element: index,
        from: isTurned ? to : from,
        to: isTurned ? from : to,
        conductor,
        lengthMm: conductor === null ? 0 : (conductors.get(conductor)?.lengthMm ?? null),
        fuse: fuse ? { id: fuse.id, carriesA: fuseReading(fuse).highA } : null,
        contact: contactOf(element),
        oneWay,
      });
    }
  });
  return {
    nodeCount: network.nodes.names.length,
    from: edges.map((edge) => edge.from),
    to: edges.map((edge) => edge.to),
    edges,
    loads,
    nodeNames: network.nodes.names,
  };
}

function isPath(element: JobElement, ammeters: ReadonlySet<string>): boolean {
  switch (element.kind) {
    case "wire":
    case "contact":
    case "fuse":
    case "joint":
    case "bond":
    case "diode":
      return element.role.role !== "supply" && element.role.role !== "exciter";
    case "resistor":
      return ammeters.has(element.of.split(":")[0] ?? "");
    default:
      return false;
  }
}

function contactOf({ role }: JobElement): FeedContact | null {
  switch (role.role) {
    case "switch":
      return { controller: role.part, closedIn: role.closedIn };
    case "relay":
      return { controller: role.part, closedIn: [role.closedWhen] };
    default:
      return null;
  }
}
