import type { ReactNode } from "react";
import { choose, useBench } from "../../store/benchStore.ts";
import { BodySlip } from "./BodySlip.tsx";
import { CircuitPartSlip } from "./CircuitPartSlip.tsx";
import { useConnecting } from "./connecting.ts";
import { useLeading } from "./leading.ts";
import { ConnectorSlip, JointSlip } from "./MeetingSlip.tsx";
import { ownerOf, thingKinds } from "./thingKinds.ts";
import { WireSlip } from "./WireSlip.tsx";

type At = { readonly x: number; readonly y: number } | undefined;

/** The slip of what is chosen: a wire, a part, a joint, a connector or a body; of a terminal that of its owner. */
export function ThingSlip({ at }: { at: At }): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const chosen = useBench((bench) => bench.chosen);
  const isPulling = useConnecting((connecting) => connecting.isPulling);
  const isLeading = useLeading(({ wire }) => wire !== null);
  if (chosen === null || isPulling || isLeading) return null;
  const id = chosen.kind === "pin" ? ownerOf(chosen.id) : chosen.id;
  const kind = chosen.kind === "pin" ? thingKinds(job)(id) : chosen.kind;
  const same = { at, onClose: () => choose(null) };
  const wire = kind === "wire" ? job.wires.find((one) => one.id === id) : undefined;
  if (wire !== undefined) return <WireSlip key={id} wire={wire} {...same} />;
  const part = kind === "part" ? job.parts.find((one) => one.id === id) : undefined;
  if (part !== undefined) return <CircuitPartSlip key={id} part={part} {...same} />;
  const joint = kind === "joint" ? job.joints.find((one) => one.id === id) : undefined;
  if (joint !== undefined) return <JointSlip key={id} joint={joint} {...same} />;
  const plug = kind === "connector" ? job.connectors.find((one) => one.id === id) : undefined;
  if (plug !== undefined) return <ConnectorSlip key={id} connector={plug} {...same} />;
  const body = kind === "body" ? job.bodies.find((one) => one.id === ownerOr(id)) : undefined;
  return body && <BodySlip key={id} body={body} {...same} />;
}

const ownerOr = (id: string): string => (id.includes(".") ? ownerOf(id) : id);
