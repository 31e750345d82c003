import { type Job, loadsOf } from "../job/index.ts";
import {
  type CompiledNetwork,
  compileNetwork,
  type Network,
  type NetworkOrder,
  type RelayRule,
} from "../network/index.ts";
import {
  buildJobNetwork,
  type Conditions,
  conditionsOf,
  type Ended,
  type JobElement,
  type JobNetwork,
  stateTranslator,
  withCopper,
} from "../operate/index.ts";
import type { Conductors } from "../route/index.ts";
import { figure } from "../tables/index.ts";
import { carrying, flashing, solvedOnce, solver } from "./designSolver.ts";
import type { DesignState } from "./designStates.ts";
import { ringedElements } from "./ringedElements.ts";

/** Share of its resistance every wire and contact of a ring keeps, so that loads see all but some millivolts of the supply. */
const LOSSLESS_RATIO = 2e-3;
/** What is on no ring keeps this, Ω, or what it has if that is less; smaller would drown the balance of currents in rounding. */
const LEAST_OHM = 3e-5;

/** The job as a network in which nothing is lost on the way: the largest currents its loads can draw. */
export interface DesignNetwork {
  readonly elements: readonly JobElement[];
  /** What is solved: the elements without their losses. */
  readonly lossless: Network;
  /** Elements of loads, by place. */
  readonly loadAt: ReadonlyMap<number, string>;
  /** Elements of wires and fly leads, by place. */
  readonly conductorAt: ReadonlyMap<number, string>;
  /** Elements of batteries, by place. */
  readonly batteryAt: ReadonlySet<number>;
  /** Null where the state does not settle. A state asked for again is not solved again. */
  readonly solve: (state: DesignState) => DesignSolution | null;
  /** Solutions so far, by what the network sees of their states. */
  readonly kept: DesignsKept;
  /** The network laid out for solving; another of the same joins can be laid out like it. */
  readonly compiled: () => CompiledNetwork;
}

export type DesignsKept = ReadonlyMap<string, DesignSolution | null>;

export interface DesignSolution extends Ended {
  /** Current of every element, A, from its first to its second node. */
  readonly elementA: Float64Array;
  readonly nodeV: Float64Array;
  /** What the battery gives, A. */
  readonly drawnA: number;
  /** Where its relays rest. */
  readonly pulled: readonly boolean[];
}

/** What a design network can be made from. */
export interface DesignFrom {
  /** See withCopper. */
  readonly base?: JobNetwork | null;
  /** See compileNetwork. */
  readonly order?: NetworkOrder | null;
  /** Of the same switches, states and joins: see carriedOver. */
  readonly kept?: DesignsKept | null;
}

/**
 * Lays a job out for design currents, which no choice of wire can exceed. Rings still share their current as their real
 * resistances would; what is on no ring carries what its loads draw, whatever it is made of, so that its length and size leave
 * the network as it is.
 *
 * @param supply  "charging": the battery post held at the highest volts the regulator makes, and wires, joints, bonds,
 *                fuses and contacts next to nothing. "cranking": a full battery behind its own resistance, and only wires and
 *                fuses without loss, because contacts limit a starter whatever the cable.
 */
export function designNetwork(
  job: Job,
  conductors: Conductors,
  supply: "charging" | "cranking",
  from: DesignFrom = {},
): DesignNetwork {
  const conditions = conditionsFor(job, supply);
  const jobNetwork =
    from.base == null
      ? buildJobNetwork(job, conductors, { conditions })
      : withCopper(from.base, job, conductors, conditions);
  const { elements } = jobNetwork;
  const loads = new Set(loadsOf(job).map(({ ref }) => ref));
  const lossless = withoutLoss(jobNetwork, loads, supply);
  const networkState = stateTranslator(job, jobNetwork);
  // Laid out with the first state asked for: where nothing is asked it need not be.
  let made: CompiledNetwork | null = null;
  const compiled = (): CompiledNetwork => {
    made ??= compileNetwork(lossless, from.order ?? null);
    return made;
  };
  const batteryAt = placesOf(elements, ({ kind, of }) => (kind === "emf" ? of : null));
  const kept = new Map<string, DesignSolution | null>();
  const relaysOf = (relays: readonly RelayRule[]): readonly RelayRule[] =>
    supply === "cranking"
      ? relays
      : relays.map((relay) => ({ ...relay, closedOhm: lessOhm(relay.closedOhm) }));
  const solve = solver(compiled, networkState, relaysOf, batteryAt);
  return {
    elements,
    lossless,
    loadAt: placesOf(elements, ({ of }) => (loads.has(of) ? of : null)),
    conductorAt: placesOf(elements, ({ kind, of }) => (kind === "wire" ? of : null)),
    batteryAt: new Set(batteryAt.keys()),
    solve: solvedOnce(job, carrying(lossless, solve, from.kept ?? null), flashing(elements), kept),
    kept,
    compiled,
  };
}

function withoutLoss(
  { elements, network }: JobNetwork,
  loads: ReadonlySet<string>,
  supply: "charging" | "cranking",
): Network {
  const isLoss = ({ kind, of }: JobElement): boolean =>
    (supply === "charging" ? LOSS_KINDS : CRANKING_LOSS_KINDS).has(kind) && !loads.has(of);
  const isCopper = ({ kind, of, law }: JobElement): boolean =>
    !loads.has(of) && (law.kind === "diode" || (law.kind === "ohm" && kind !== "coil"));
  const ringed = ringedElements(elements, network.nodeCount, isCopper);
  const branches = network.branches.map((branch, k) => {
    const { law } = branch;
    if (law.kind !== "ohm" || !isLoss(elements[k]!)) return branch;
    const ohm = ringed.has(k) ? lessOhm(law.ohm) : Math.min(law.ohm, LEAST_OHM);
    return { ...branch, law: { kind: "ohm" as const, ohm } };
  });
  return { ...network, branches };
}

function conditionsFor(job: Job, supply: "charging" | "cranking"): Conditions {
  if (supply === "cranking") return conditionsOf(job, { battery: "full" });
  const emfV = designV(job);
  return conditionsOf(job, { battery: { emfV, internalOhm: LEAST_OHM } });
}

/** Highest volts a healthy supply holds at the battery, V: what the regulator is set to, else the usual setting. */
export function designV(job: Job): number {
  const setsV = job.parts
    .filter((part) => part.kind === "regulator" && part.status !== "remove")
    .map((part) => (part.kind === "regulator" ? part.setV.value : 0));
  const usualV = figure("sizeRules", "charging-volts", "value").value * job.supply.nominalV;
  return setsV.length > 0 ? Math.max(...setsV) : usualV;
}

const LOSS_KINDS: ReadonlySet<string> = new Set(["wire", "contact", "fuse", "joint", "bond"]);
const CRANKING_LOSS_KINDS: ReadonlySet<string> = new Set(["wire", "fuse"]);

const lessOhm = (ohm: number): number => Math.max(ohm * LOSSLESS_RATIO, Math.min(ohm, LEAST_OHM));

function placesOf(
  elements: readonly JobElement[],
  nameOf: (element: JobElement) => string | null,
): ReadonlyMap<number, string> {
  const places = new Map<number, string>();
  for (const [k, element] of elements.entries()) {
    const name = nameOf(element);
    if (name !== null) places.set(k, name);
  }
  return places;
}
