import type { Job } from "../job/index.ts";
import type { Law } from "../network/index.ts";
import type { Conductors } from "../route/index.ts";
import type { JobNetwork } from "./buildJobNetwork.ts";
import type { ElementDraft, JobElement } from "./jobElement.ts";
import { conductorOhm } from "./loomElements.ts";
import { type Conditions, networkContext } from "./networkContext.ts";
import { batteryElements } from "./supplyElements.ts";

/**
 * The network `buildJobNetwork` would make, from one of the same joins and parts: only what its wires are made of and the state of its
 * batteries differ.
 */
export function withCopper(
  base: JobNetwork,
  job: Job,
  conductors: Conductors,
  conditions: Conditions,
): JobNetwork {
  const context = networkContext(job, conductors, conditions, base.context.takenApart);
  const batteries = context.parts.flatMap((part) =>
    part.kind === "battery" ? batteryElements(context, part) : [],
  );
  const lawOf = ({ kind, of, law }: ElementDraft): Law => {
    if (kind === "wire")
      return { kind: "ohm", ohm: conductorOhm(conductors.get(of)!, conditions.conductorC) };
    return kind === "emf" ? batteries.find((one) => one.of === of)!.law : law;
  };
  const elements = base.elements.map((element): JobElement => {
    const { kind } = element;
    return kind === "wire" || kind === "emf" ? { ...element, law: lawOf(element) } : element;
  });
  const branches = base.network.branches.map((branch, k) => {
    const { law } = elements[k]!;
    return law === branch.law ? branch : { ...branch, law };
  });
  return { ...base, elements, network: { ...base.network, branches }, context };
}
