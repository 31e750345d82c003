import type { Wire } from "../../job/index.ts";
import { figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { isSplice, jointsSeen } from "./jointsSeen.ts";

/**
 * Splices that only lengthen a wire: two wires of one make in one barrel. More than one of them between two disconnects is
 * patchwork; joints of many wires and changes of size are what splices are for.
 */
export const jointsInLine: Judge = (design) => {
  const limit = figure("loomRules", "joints-per-segment", "value");
  const inLine = jointsSeen(design).filter(
    ({ joint, wires }) =>
      isSplice(joint) && wires.length === 2 && isSameCopper(design, wires[0]!, wires[1]!),
  );
  const chains: { joints: string[]; wires: Set<string> }[] = [];
  for (const { joint, wires } of inLine) {
    const ids = wires.map(({ id }) => id);
    const met = chains.filter((chain) => ids.some((id) => chain.wires.has(id)));
    const merged = {
      joints: [...met.flatMap((chain) => chain.joints), joint.id].sort(),
      wires: new Set([...met.flatMap((chain) => [...chain.wires]), ...ids]),
    };
    for (const chain of met) chains.splice(chains.indexOf(chain), 1);
    chains.push(merged);
  }
  return chains
    .filter(({ joints }) => joints.length > limit.value)
    .map(({ joints, wires }) =>
      findingOf({
        code: "joints-in-line",
        severity: "advise",
        subject: { kind: "joint", id: joints[0]! },
        also: [...joints.slice(1), ...wires],
        numbers: { spliceCount: joints.length, wires: [...wires].sort().join(", ") },
        limit,
      }),
    );
};

function isSameCopper({ conductors }: Design, a: Wire, b: Wire): boolean {
  return a.id !== b.id && conductors.get(a.id)?.makeId === conductors.get(b.id)?.makeId;
}
