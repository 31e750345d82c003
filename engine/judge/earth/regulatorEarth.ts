import { pinRef, presentParts } from "../../job/index.ts";
import type { Finding } from "../../messages/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";

/** A regulator or zener measures against its earth: loads on the same wire shift it, and a fault there cooks it. */
export const regulatorEarth: Judge = ({ job, wiresAt, worst, compiled }: Design) => {
  const { elements } = compiled.jobNetwork;
  const users = new Map<string, string[]>();
  for (const { load, drop } of worst.loads.values()) {
    if (load.part.kind === "regulator") continue;
    for (const k of drop?.back ?? []) {
      const { kind, of } = elements[k]!;
      if (kind === "wire") users.set(of, [...(users.get(of) ?? []), load.ref]);
    }
  }
  const positiveEarth = job.supply.earthPolarity === "positive";
  return presentParts(job).flatMap((part): readonly Finding[] => {
    if (part.kind !== "regulator" || part.type === "ac-shunt") return [];
    const pin = positiveEarth ? part.positivePin : part.negativePin;
    if (pin === undefined) return [];
    const shared = ownWay(pinRef(part.id, pin), wiresAt, job)
      .filter((wire) => users.has(wire))
      .sort((a, b) => users.get(b)!.length - users.get(a)!.length);
    const first = shared[0];
    if (first === undefined) return [];
    return [
      findingOf({
        code: "regulator-earth-shared",
        severity: "advise",
        subject: { kind: "part", id: part.id },
        also: shared,
        numbers: {
          wire: first,
          loadCount: users.get(first)!.length,
          loads: users.get(first)!.join(", "),
        },
      }),
    ];
  });
};

/** Wires on the way from the regulator's earth pin, through joints and cavities, up to a body or the battery. */
function ownWay(start: string, wiresAt: Design["wiresAt"], job: Design["job"]): readonly string[] {
  const joints = new Map(job.joints.map((joint) => [joint.id, joint]));
  const connectors = new Set(job.connectors.map(({ id }) => id));
  const way: string[] = [];
  const seen = new Set<string>();
  const queue = [start];
  for (const pin of queue) {
    if (seen.has(pin)) continue;
    seen.add(pin);
    const owner = pin.slice(0, pin.indexOf("."));
    const name = pin.slice(owner.length + 1);
    if (connectors.has(owner)) {
      queue.push(`${owner}.${name.slice(0, -1)}${name.endsWith("p") ? "s" : "p"}`);
    }
    const isJoint = joints.has(owner);
    // A joint is where a shared earth begins: the widest wire away from it is the shared one.
    if (isJoint) {
      for (const id of joints.get(owner)!.ways) queue.push(`${owner}.${id}`);
    }
    if (pin !== start && !isJoint && !connectors.has(owner)) continue;
    for (const wire of wiresAt.get(pin) ?? []) {
      way.push(wire.id);
      queue.push(wire.from === pin ? wire.to : wire.from);
    }
  }
  return way;
}
