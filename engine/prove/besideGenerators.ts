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
  const pastOf = pastSet(reach, posts, machines, indexOf);
  const everywhere = reach(posts, () => false);
  return {
    inConductor: (conductor, cut) => {
      const own = edgeOf.get(conductor);
      if (own === undefined) return 0;
      return sumOf(jobNetwork, pastOf(cut), (machine) => {
        const isNear = machine.reached.has(own.from) || machine.reached.has(own.to);
        const isBeforeSet = machine.wayFromBattery !== null && !machine.wayFromBattery.has(own);
        if (!isNear || isBeforeSet || !(everywhere.has(own.from) || everywhere.has(own.to)))
          return false;
        const opened = isIn(cut);
        const without = (edge: FeedEdge): boolean => edge === own || opened(edge);
        const isLoose = (edge: FeedEdge): boolean => edge.contact !== null || without(edge);
        if (reach(posts, isLoose).has(machine.terminalIndex)) return false;
        const battery = reach(posts, (edge) => edge === own);
        const reached = reach([machine.terminalIndex], without);
        return [own.from, own.to].some((end) => battery.has(end) && reached.has(end));
      });
    },
    inTouch: (conductor, cut) => {
      const own = edgeOf.get(conductor);
      if (own === undefined) return 0;
      return sumOf(
        jobNetwork,
        pastOf(cut),
        ({ reached, wayFromBattery }) =>
          wayFromBattery === null && (reached.has(own.from) || reached.has(own.to)),
      );
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

const isIn =
  (cut: readonly string[]) =>
  ({ fuse }: FeedEdge): boolean =>
    fuse !== null && cut.includes(fuse.id);

/** Ceilings of the machines that add, each machine once however many terminals it has. */
function sumOf(
  jobNetwork: CompiledJob["jobNetwork"],
  machines: readonly MachinePast[],
  adds: (machine: MachinePast) => boolean,
): number {
  const byMachine = new Map<string, number>();
  for (const machine of machines) {
    const id = generatorOf(jobNetwork, machine.part);
    if ((byMachine.get(id) ?? 0) >= machine.largestA || !adds(machine)) continue;
    byMachine.set(id, machine.largestA);
  }
  return [...byMachine.values()].reduce((sum, a) => sum + a, 0);
}

/** A generator's terminal with a set of fuses taken out. */
interface MachinePast extends Machine {
  readonly terminalIndex: number;
  /** What it reaches past the set. */
  readonly reached: Reached;
  /** Edges of one way by which the battery reaches the terminal past the set by copper and fuses alone; null: there is none. */
  readonly wayFromBattery: ReadonlySet<FeedEdge> | null;
}

/** The generators past each set of fuses, reckoned once a set. */
function pastSet(
  reach: Reach,
  posts: readonly number[],
  machines: readonly Machine[],
  indexOf: ReadonlyMap<string, number>,
): (cut: readonly string[]) => readonly MachinePast[] {
  const known = new Map<string, readonly MachinePast[]>();
  return (cut) => {
    const key = cut.join("+");
    const before = known.get(key);
    if (before !== undefined) return before;
    const opened = isIn(cut);
    const battery = reach(posts, (edge) => edge.contact !== null || opened(edge));
    const made = machines.map((machine): MachinePast => {
      const terminalIndex = indexOf.get(machine.pin)!;
      const wayFromBattery = battery.has(terminalIndex) ? wayTo(battery, terminalIndex) : null;
      return { ...machine, terminalIndex, reached: reach([terminalIndex], opened), wayFromBattery };
    });
    known.set(key, made);
    return made;
  };
}

function wayTo(reached: Reached, node: number): ReadonlySet<FeedEdge> {
  const way = new Set<FeedEdge>();
  for (let here = node; ; ) {
    const edge = reached.get(here);
    if (edge == null) return way;
    way.add(edge);
    here = edge.from === here ? edge.to : edge.from;
  }
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

/** Nodes reached, each with the edge it was reached by; null for those begun at. */
type Reached = ReadonlyMap<number, FeedEdge | null>;
type Reach = (roots: readonly number[], without: (edge: FeedEdge) => boolean) => Reached;

/** Nodes that can be reached from some along edges that are not left out. */
function reachOf(edges: readonly FeedEdge[], nodeCount: number): Reach {
  const at: FeedEdge[][] = Array.from({ length: nodeCount }, () => []);
  for (const edge of edges) {
    at[edge.from]!.push(edge);
    if (!edge.oneWay) at[edge.to]!.push(edge);
  }
  return (roots, without) => {
    const seen = new Map<number, FeedEdge | null>(roots.map((node) => [node, null]));
    const queue = [...roots];
    for (const node of queue) {
      for (const edge of at[node]!) {
        const next = edge.from === node ? edge.to : edge.from;
        if (seen.has(next) || without(edge)) continue;
        seen.set(next, edge);
        queue.push(next);
      }
    }
    return seen;
  };
}
