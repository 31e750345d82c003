import { batteriesOf, connectorCavityPins } from "../../job/index.ts";
import { type FeedGraph, feedGraph } from "../../protect/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";

/**
 * The half that stays live when a connector is pulled should be the socket, whose contacts are sunk. A connector that feeds both
 * ways has no better half and is left alone.
 */
export const connectorHalf: Judge = (design) => {
  const { job, compiled, wiresAt } = design;
  if (job.connectors.length === 0) return [];
  const graph = feedGraph(job, compiled.jobNetwork, design.conductors);
  const exposed = [...job.connectors]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .flatMap((connector) => {
      const live = liveNodes(design, graph, connector.id);
      const isLive = (pin: string): boolean =>
        wiresAt.has(pin) && live.has(compiled.jobNetwork.nodes.indexOf.get(pin) ?? -1);
      const halves = connectorCavityPins(connector).map(({ cavity, plug, socket }) => ({
        cavity,
        plug: isLive(plug),
        socket: isLive(socket),
      }));
      const isMixed = halves.some(({ socket }) => socket);
      const cavities = halves.filter(({ plug }) => plug);
      return cavities.length === 0 || isMixed
        ? []
        : [{ id: connector.id, cavities: cavities.map(({ cavity }) => cavity) }];
    });
  return exposed.map(({ id, cavities }) =>
    findingOf({
      code: "connector-half",
      severity: "advise",
      subject: { kind: "connector", id },
      also: cavities.map((cavity) => `${id}.${cavity}p`),
      numbers: { cavities: cavities.join(", "), cavityCount: cavities.length },
      limit: null,
    }),
  );
};

/** Nodes a battery's live post reaches over metal and contacts, whatever their position, with one connector pulled apart. */
function liveNodes(
  { job, compiled }: Design,
  graph: FeedGraph,
  apart: string,
): ReadonlySet<number> {
  const { elements, nodes } = compiled.jobNetwork;
  const isGap = (element: number): boolean => {
    const { kind, of } = elements[element]!;
    return kind === "joint" && of.startsWith(`${apart}.`);
  };
  const near = new Map<number, number[]>();
  const lead = (from: number, to: number): void => {
    near.set(from, [...(near.get(from) ?? []), to]);
  };
  for (const { element, from, to, oneWay } of graph.edges) {
    if (isGap(element)) continue;
    lead(from, to);
    if (!oneWay) lead(to, from);
  }
  const live = new Set(
    batteriesOf(job).flatMap(({ livePost }) => nodes.indexOf.get(livePost) ?? []),
  );
  for (const node of live) for (const next of near.get(node) ?? []) live.add(next);
  return live;
}

/** A connector at a place where every run that meets there moves. */
export const connectorInFlex: Judge = ({ job }) =>
  [...job.connectors]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .filter(({ station }) => {
      const runs = job.runs.filter(({ from, to }) => from === station || to === station);
      return station !== undefined && runs.length > 1 && runs.every(({ flex }) => flex === true);
    })
    .map(({ id, station }) =>
      findingOf({
        code: "connector-in-flex",
        severity: "advise",
        subject: { kind: "connector", id },
        numbers: { station: station! },
        limit: null,
      }),
    );

/** Cavities with a wire on one half only: the plug goes home and that wire leads nowhere. Empty cavities are spares. */
export const cavityHalfWired: Judge = ({ job, wiresAt }) => {
  const bonded = new Set(job.bonds.flatMap(({ from, to }) => [from, to]));
  const isUsed = (pin: string): boolean => wiresAt.has(pin) || bonded.has(pin);
  return [...job.connectors]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .flatMap((connector) => {
      const half = connectorCavityPins(connector).filter(
        ({ plug, socket }) => isUsed(plug) !== isUsed(socket),
      );
      if (half.length === 0) return [];
      const wires = half
        .flatMap(({ plug, socket }) => [plug, socket])
        .flatMap((pin) => (wiresAt.get(pin) ?? []).map(({ id }) => id));
      return findingOf({
        code: "cavity-half-wired",
        severity: "mend",
        subject: { kind: "connector", id: connector.id },
        also: wires,
        numbers: { cavities: half.map(({ cavity }) => cavity).join(", ") },
        limit: null,
      });
    });
};
