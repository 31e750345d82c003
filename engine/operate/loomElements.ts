import { connectorCavityPins, HUB, type Job, pinRef } from "../job/index.ts";
import type { Conductor } from "../route/index.ts";
import { figure } from "../tables/index.ts";
import { contactOhm } from "./contactOhm.ts";
import { type ElementDraft, FIXED, OPEN_OHM } from "./jobElement.ts";
import { insideName, starName } from "./jobNodes.ts";
import type { NetworkContext } from "./networkContext.ts";

/** A wire nobody has measured stands in the network with this length, so that the network is complete; its row says so. */
export const ASSUMED_LENGTH_MM = 1000;

/** A pin prepared to be taken apart and left alone, Ω: next to nothing, and not nothing because a node cannot be two. */
const UNTOUCHED_OHM = 1e-6;

/** R = ρ' · l · (1 + α (t − 20)), Ω: the published maximum resistance per metre at 20 °C, brought to the conductor's temperature. */
export function conductorOhm(conductor: Conductor, conductorC: number): number {
  const lengthM = (conductor.lengthMm ?? ASSUMED_LENGTH_MM) / 1000;
  const perK = figure("copper", "tempco-20", "value").value;
  return conductor.ohmPerM20Max * lengthM * (1 + perK * (conductorC - 20));
}

function resistor(
  kind: "wire" | "joint" | "bond" | "contact",
  of: string,
  ends: readonly [string, string],
  ohm: number,
  controlledBy: readonly string[] = [],
): ElementDraft {
  const [from, to] = ends;
  return { kind, of, from, to, law: { kind: "ohm", ohm }, role: FIXED, controlledBy };
}

/** Wires of the loom, then fly leads (named by their pin). */
export function conductorElements(context: NetworkContext): readonly ElementDraft[] {
  const { conductors, conditions, wires, parts } = context;
  const element = (id: string, from: string, to: string): ElementDraft => {
    const conductor = conductors.get(id);
    if (conductor === undefined) throw new Error(`No conductor for ${id}`);
    return resistor("wire", id, [from, to], conductorOhm(conductor, conditions.conductorC));
  };
  const loom = [...wires]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map((wire) => element(wire.id, wire.from, wire.to));
  const tails = parts.flatMap((part) =>
    part.pins
      .filter((pin) => pin.flyLead !== undefined)
      .map((pin) => pinRef(part.id, pin.id))
      .map((ref) => element(ref, ref, insideName(ref))),
  );
  return [...loom, ...tails];
}

const JOINT_ROWS = {
  "crimped-splice": "joint-crimp",
  soldered: "joint-crimp",
  twisted: "joint-bullet",
  "multiway-bullet": "joint-bullet",
  "ring-stack": "ring",
  bus: "ring",
} as const satisfies Record<Job["joints"][number]["kind"], string>;

/** Ways of joints to their star, and mated cavities of connectors. */
export function joiningElements({ job, conditions }: NetworkContext): readonly ElementDraft[] {
  const { aged } = conditions;
  const joints = byId(job.joints.filter((joint) => joint.status !== "remove")).flatMap((joint) =>
    joint.ways.map((way) => {
      const ohm = contactOhm(JOINT_ROWS[joint.kind], joint.ohm, aged)!;
      const ref = pinRef(joint.id, way);
      return resistor("joint", ref, [ref, starName(joint.id)], ohm);
    }),
  );
  const connectors = byId(job.connectors.filter((one) => one.status !== "remove")).flatMap((one) =>
    connectorCavityPins(one).map(({ cavity, plug, socket }) => {
      const ohm = contactOhm("multi-pin", one.ohm, aged)!;
      return resistor("joint", pinRef(one.id, cavity), [plug, socket], ohm, [plug, socket]);
    }),
  );
  return [...joints, ...connectors];
}

const BOND_ROWS = {
  strap: "bond-strap",
  bolt: "bond-bolt",
  case: "bond-bolt",
  clamp: "bond-bolt",
  bearing: "bond-bearing",
  paint: "bond-paint",
  rubber: "bond-rubber",
} as const satisfies Record<Exclude<Job["bonds"][number]["kind"], "none">, string>;

/** Points of bodies to their hub, and bonds between bodies. A painted point, and a bond through paint or rubber, is open. */
export function bodyElements({ job, conditions }: NetworkContext): readonly ElementDraft[] {
  const { aged } = conditions;
  const points = byId(job.bodies).flatMap((body) =>
    body.points.map((point) => {
      const row = point.condition === "painted" ? "bond-paint" : "ring";
      const ref = pinRef(body.id, point.id);
      const ohm = contactOhm(row, point.ohm, aged) ?? OPEN_OHM;
      return resistor("bond", ref, [ref, pinRef(body.id, HUB)], ohm);
    }),
  );
  const bonds = byId(job.bonds).flatMap((bond) => {
    if (bond.kind === "none") return [];
    const stated = aged ? (bond.agedOhm ?? bond.newOhm) : bond.newOhm;
    const isStatedForAge = aged && bond.agedOhm !== undefined;
    const ohm = isStatedForAge
      ? bond.agedOhm.value
      : (contactOhm(BOND_ROWS[bond.kind], stated, aged) ?? OPEN_OHM);
    return [resistor("bond", bond.id, [bond.from, bond.to], ohm)];
  });
  return [...points, ...bonds];
}

/** Between a pin and its part, where some state will open the pin or make it worse. */
export function takenApartElements({ takenApart }: NetworkContext): readonly ElementDraft[] {
  return [...takenApart]
    .sort()
    .map((ref) => resistor("contact", ref, [ref, insideName(ref)], UNTOUCHED_OHM));
}

function byId<T extends { readonly id: string }>(items: readonly T[]): readonly T[] {
  return [...items].sort((a, b) => (a.id < b.id ? -1 : 1));
}
