import { connectorClasses } from "../../tables/index.ts";
import type { Job } from "../job.ts";
import { connectorCavityPins, pinRef } from "../pinsOf.ts";
import { idMaker } from "./idMaker.ts";
import type { Operation } from "./operation.ts";
import { cutWire, type PieceWays } from "./splitWire.ts";

/** One wire to be cut at a connector. */
export interface WireAtConnector {
  readonly wire: string;
  /** Which of its ends lies on the plug's side. */
  readonly plugSide: "from" | "to";
  readonly via?: PieceWays;
}

/**
 * A connector put into one or several wires at once, a cavity each: a new one with the fewest cavities its kind is made with that are enough, or one that is
 * there, whose free cavities are taken before it gets more.
 *
 * @param into  id of a connector that is there; null: a new one
 * @returns     the operation, and the connector's id
 */
export function connectorInWires(
  job: Job,
  change: {
    readonly wires: readonly WireAtConnector[];
    readonly into: string | null;
    readonly kind: string;
    readonly station: string | null;
    readonly name?: string;
  },
): { readonly operation: Operation; readonly id: string } {
  const { wires, station, kind } = change;
  const nextId = idMaker(job);
  const known = job.connectors.find(({ id }) => id === change.into);
  const id = known?.id ?? nextId("X");
  const free = known === undefined ? [] : freeCavities(job, known);
  const grown = known === undefined ? [] : [...known.cavities];
  const taken = wires.map((_, i) => free[i] ?? grownBy(grown));
  const put: Operation =
    known === undefined
      ? {
          op: "add",
          list: "connectors",
          item: {
            id,
            name: change.name?.trim() || "connector",
            kind,
            cavities: cavitiesOf(kind, wires.length),
            status: "new",
            ...(station === null ? {} : { station }),
          },
        }
      : { op: "set", list: "connectors", id, path: ["cavities"], value: grown };
  const cuts = wires.flatMap(({ wire, plugSide, via }, i) => {
    const [plug, socket] = ["p", "s"].map((half) => pinRef(id, `${taken[i]}${half}`));
    const [near, far] = plugSide === "from" ? [plug!, socket!] : [socket!, plug!];
    const newWire = nextId("W");
    return cutWire(job, { wire, newWire, ...(via === undefined ? {} : { via }) }, near, far);
  });
  const words = wires.length === 1 ? `wire ${wires[0]!.wire}` : `${wires.length} wires`;
  return {
    id,
    operation: {
      op: "batch",
      name: `Put connector ${id} into ${words}`,
      operations: [put, ...cuts],
    },
  };
}

function freeCavities(job: Job, connector: Job["connectors"][number]): readonly string[] {
  const used = new Set(job.wires.flatMap(({ from, to }) => [from, to]));
  return connectorCavityPins(connector)
    .filter(({ plug, socket }) => !used.has(plug) && !used.has(socket))
    .map(({ cavity }) => cavity);
}

/** One more cavity, by the lowest number that is no name yet. */
function grownBy(cavities: string[]): string {
  let n = 1;
  while (cavities.includes(`${n}`)) n++;
  cavities.push(`${n}`);
  return `${n}`;
}

/** A row of tables/connectorClasses says how many cavities its kind is made with; where it says nothing, or none is enough, one for each wire. */
function cavitiesOf(kind: string, wireCount: number): readonly string[] {
  const row = connectorClasses.find(({ id }) => id === kind);
  const made = `${row?.ways ?? ""}`
    .split(" ")
    .map(Number)
    .filter((count) => count >= wireCount);
  const count = made.length === 0 ? wireCount : Math.min(...made);
  return Array.from({ length: count }, (_, i) => `${i + 1}`);
}
