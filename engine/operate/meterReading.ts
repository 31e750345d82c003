import { type Job, pinsOf } from "../job/index.ts";
import type { Refusal } from "../messages/index.ts";
import { compileNetwork, type Network, settleFrom } from "../network/index.ts";
import type { Conductors } from "../route/index.ts";
import type { CompiledJob } from "./compileJob.ts";
import { OPEN } from "./jobElement.ts";
import { prepare } from "./operateJob.ts";
import type { OperateRequest, OperateState } from "./operateResult.ts";
import { EARTH } from "./readState.ts";
import { solveState } from "./solveState.ts";
import { stateRefusal } from "./stateRefusal.ts";

/** Two leads and what the knob is turned to. A pin, or "earth" for the hub of the main body. */
export interface MeterQuestion {
  readonly red: string;
  readonly black: string;
  readonly mode: "volts" | "ohms";
}

/** What stands on the meter; `value` is null where it shows no figure, and `why` says what it shows instead. */
export interface MeterReading {
  readonly mode: MeterQuestion["mode"];
  readonly value: number | null;
  readonly unit: "V" | "ohm";
  /** Both pins on alternating current: rms, without sign. */
  readonly isAlternating: boolean;
  readonly why: null | "floating" | "two alternating pins" | "not solved" | "open";
}

export type Metered =
  | { readonly ok: true; readonly reading: MeterReading }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** A meter on ohms: volts too small to make a diode conduct, behind a resistance that keeps the current near a milliampere. Our own meter. */
const TEST_V = 0.2;
const TEST_OHM = 200;
/** Above this our meter shows no figure, Ω. */
const MOST_OHM = 20e6;

/**
 * A meter with its leads on two points of a machine in some state.
 *
 * Volts: V = v(red) − v(black), with the sign a real meter shows. Ohms: battery and sources off (their branches open, the engine standing, every
 * relay dropped), R = V / I with the meter's own small volts, so lamps are measured cold and diodes do not conduct. Opened places, added
 * resistances and shorts of the request stay.
 *
 * @param question  pins as in the job, or "earth".
 * @returns refusals where the state or a pin cannot be read.
 */
export function meterReading(
  job: Job,
  conductors: Conductors,
  request: OperateRequest,
  question: MeterQuestion,
): Metered {
  const refusals = wrongPins(job, question);
  if (refusals.length > 0) return { ok: false, refusals };
  const standing = question.mode === "ohms" ? { ...request, engine: STOPPED } : request;
  const prepared = prepare(job, conductors, standing);
  if (!prepared.ok) return prepared;
  const { compiled, state } = prepared;
  const reading =
    question.mode === "volts" ? volts(compiled, state, question) : ohms(compiled, state, question);
  return { ok: true, reading };
}

const STOPPED = { mode: "stopped" } as const;

function wrongPins(job: Job, { red, black }: MeterQuestion): readonly Refusal[] {
  const pins = pinsOf(job);
  const isKnown = (pin: string): boolean => (pin === EARTH ? job.bodies.length > 0 : pins.has(pin));
  return [
    { pointer: "red lead", found: red },
    { pointer: "black lead", found: black },
  ]
    .filter(({ found }) => !isKnown(found))
    .map((place) => stateRefusal("state-unknown-pin", place, [...pins.keys()]));
}

const pinNamed = ({ jobNetwork }: CompiledJob, pin: string): string =>
  pin === EARTH ? jobNetwork.earth! : pin;

function volts(
  compiled: CompiledJob,
  state: OperateState,
  { red, black }: MeterQuestion,
): MeterReading {
  const solved = solveState(compiled, state);
  const at = (pin: string) => solved.pins.find((row) => row.pin === pinNamed(compiled, pin))!;
  const [one, other] = [at(red), at(black)];
  const base = { mode: "volts", unit: "V", isAlternating: false } as const;
  if (!solved.converged) return { ...base, value: null, why: "not solved" };
  if (one.pin === other.pin) return { ...base, value: 0, why: null };
  if (one.floating || other.floating) return { ...base, value: null, why: "floating" };
  if (one.v === null || other.v === null) return { ...base, value: null, why: "not solved" };
  const [oneIsAc, otherIsAc] = [one.net !== "dc", other.net !== "dc"];
  if (!oneIsAc && !otherIsAc) return { ...base, value: one.v - other.v, why: null };
  // Only sizes are known on an alternating net, not how two of its points lie to each other.
  if (oneIsAc && otherIsAc) return { ...base, value: null, why: "two alternating pins" };
  return { ...base, isAlternating: true, value: oneIsAc ? one.v : other.v, why: null };
}

function ohms(
  compiled: CompiledJob,
  state: OperateState,
  { red, black }: MeterQuestion,
): MeterReading {
  const { jobNetwork } = compiled;
  const base = { mode: "ohms", unit: "ohm", isAlternating: false } as const;
  const node = (pin: string): number => jobNetwork.nodes.indexOf.get(pinNamed(compiled, pin))!;
  const [a, b] = [node(red), node(black)];
  if (a === b) return { ...base, value: 0, why: null };
  const { overrides, shorts, relays } = compiled.networkState(state);
  const off = jobNetwork.elements.flatMap(({ kind }, branchIndex) =>
    kind === "emf" ? [{ branchIndex, law: OPEN }] : [],
  );
  const settled = settleFrom(
    compileNetwork(withMeter(jobNetwork.network, a, b)),
    relays,
    relays.map(() => false),
    { overrides: [...overrides, ...off], shorts },
  );
  if (!settled.converged) return { ...base, value: null, why: "not solved" };
  const { nodeV, branchA } = settled.solution;
  const ohm = (nodeV[a]! - nodeV[b]!) / branchA[jobNetwork.elements.length]!;
  return ohm > MOST_OHM
    ? { ...base, value: null, why: "open" }
    : { ...base, value: ohm, why: null };
}

/** The network with the meter between two nodes: a source from `b` up, its resistance from there to `a`, the current counted into `a`. */
function withMeter(network: Network, a: number, b: number): Network {
  const inside = network.nodeCount;
  return {
    ...network,
    nodeCount: network.nodeCount + 1,
    branches: [
      ...network.branches,
      { id: "Rmeter", a: inside, b: a, law: { kind: "ohm", ohm: TEST_OHM } },
      {
        id: "Vmeter",
        a: inside,
        b,
        law: { kind: "emf", emfV: TEST_V, internalOhm: 1e-3 },
      },
    ],
  };
}
