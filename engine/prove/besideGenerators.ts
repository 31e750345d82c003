import { type CompiledJob, currentNets } from "../operate/index.ts";
import { type FeedEdge, feedGraph, feedSources } from "../protect/index.ts";
import { generatorOf, sourceCeilings } from "./sourceCeilings.ts";

/** What running generators can add to a battery's fault current without passing its fuses. */
export interface BesideGenerators {
  /** In the conductor itself: only what enters it by the end the battery enters by, A. */
  readonly inConductor: (conductor: string, cut: readonly string[]) => number;
  /** In whatever touches the conductor: all that reaches it, A. */
  readonly inTouch: (conductor: string, cut: readonly string[]) => number;
  /** Terminals at which an alternator feeds its own field, with conductors they reach. */
  readonly exciters: readonly { readonly pin: string; readonly conductors: ReadonlySet<string> }[];
}

/**
 * A fuse sees only what passes it. Where a running generator joins the wire by another way, the wire carries the generator's ceiling on
 * top of what its own fuse lets by: 19 A through a 15 A fuse that need not open, and 6 A more from the dynamo.
 *
 * The two add up in a wire only if both enter it by the same end; so each end is asked apart, with the wire itself and the fuses of
 * the set taken out: what cannot be reached then has passed a fuse of the set or comes from the other side. Contacts count as closed.
 * A generator whose terminal the battery reaches by copper and other fuses alone adds nothing: from there the battery would go on by
 * the same way past the set, in that very position of the switches, and then the set would not cut it off.
 */
export function besideGenerators(compiled: CompiledJob): BesideGenerators {
  const { job, jobNetwork, conductors } = compiled;
  const { indexOf, names } = jobNetwork.nodes;
  const { machines, exciterPins } = machinesOf(compiled);
  const posts = feedSources(job)
    .filter(({ kind }) => kind === "battery")
    .map(({ pin }) => indexOf.get(pin)!);
  const graph = feedGraph(job, jobNetwork, conductors);
  const reach = reachOf(graph.edges, names.length);
  const edgeOf = new Map(
    graph.edges.flatMap((edge) => (edge.conductor === null ? [] : [[edge.conductor, edge]])),
  );
  const addedA = (node: number, without: (edge: FeedEdge) => boolean): number => {
    const byMachine = new Map<string, number>();
    const isLoose = (edge: FeedEdge): boolean => edge.contact !== null || without(edge);
    const beforeSet = reach(posts, isLoose);
    for (const { part, pin, largestA } of machines) {
      const terminal = indexOf.get(pin)!;
      if (beforeSet.has(terminal) || !reach([terminal], without).has(node)) continue;
      const machine = generatorOf(jobNetwork, part);
      byMachine.set(machine, Math.max(byMachine.get(machine) ?? 0, largestA));
    }
    return [...byMachine.values()].reduce((sum, a) => sum + a, 0);
  };
  const isCut = (cut: readonly string[]) => (edge: FeedEdge) =>
    edge.fuse !== null && cut.includes(edge.fuse.id);
  return {
    inConductor: (conductor, cut) => {
      const own = edgeOf.get(conductor);
      if (own === undefined || machines.length === 0) return 0;
      const opened = isCut(cut);
      const battery = reach(posts, (edge) => edge === own);
      const ends = [own.from, own.to].filter((node) => battery.has(node));
      return Math.max(0, ...ends.map((end) => addedA(end, (edge) => edge === own || opened(edge))));
    },
    inTouch: (conductor, cut) => {
      const own = edgeOf.get(conductor);
      if (own === undefined || machines.length === 0) return 0;
      return Math.max(addedA(own.from, isCut(cut)), addedA(own.to, isCut(cut)));
    },
    exciters: exciterPins.map(({ pin }) => {
      const nodes = reach([indexOf.get(pin)!], () => false);
      const reached = [...edgeOf].flatMap(([id, { from, to }]) =>
        nodes.has(from) || nodes.has(to) ? [id] : [],
      );
      return { pin, conductors: new Set(reached) };
    }),
  };
}

interface Machine {
  readonly part: string;
  readonly pin: string;
  readonly largestA: number;
}

/** Live terminals of generators and regulators, those that feed a field among them, with what each can give. */
function machinesOf(compiled: CompiledJob): {
  readonly machines: readonly Machine[];
  readonly exciterPins: readonly Pick<Machine, "part" | "pin">[];
} {
  const { job, jobNetwork } = compiled;
  const ceilings = sourceCeilings(compiled);
  const { earthed } = currentNets(jobNetwork);
  const isLive = ({ pin }: { readonly pin: string }): boolean => !earthed.has(pin);
  const exciterPins = jobNetwork.sources
    .flatMap(({ generator: part, exciter }) =>
      exciter === null ? [] : [exciter.positive, exciter.negative].map((pin) => ({ part, pin })),
    )
    .filter(isLive);
  const outputs = feedSources(job)
    .filter(({ kind }) => kind === "generator")
    .filter(isLive)
    .map(({ part, pin, id }) => ({
      part,
      pin,
      largestA: ceilings.get(id) ?? ceilings.get(part) ?? 0,
    }));
  const excited = exciterPins.map((one) => ({ ...one, largestA: ceilings.get(one.part) ?? 0 }));
  const machines = [...outputs, ...excited].filter(
    ({ pin, largestA }) => jobNetwork.nodes.indexOf.has(pin) && largestA > 0,
  );
  return { machines, exciterPins };
}

/** Nodes that can be reached from some along edges that are not left out. */
function reachOf(edges: readonly FeedEdge[], nodeCount: number) {
  const at: FeedEdge[][] = Array.from({ length: nodeCount }, () => []);
  for (const edge of edges) {
    at[edge.from]!.push(edge);
    if (!edge.oneWay) at[edge.to]!.push(edge);
  }
  return (roots: readonly number[], without: (edge: FeedEdge) => boolean): ReadonlySet<number> => {
    const seen = new Set(roots);
    const queue = [...roots];
    for (const node of queue) {
      for (const edge of at[node]!) {
        const next = edge.from === node ? edge.to : edge.from;
        if (seen.has(next) || without(edge)) continue;
        seen.add(next);
        queue.push(next);
      }
    }
    return seen;
  };
}
