import type { MarkSubject } from "../drawing/index.ts";
import type { MachineGraph } from "./circuit/machineGraph.ts";

/** What a point of a machine is: its joint, its body, else a pin. */
export function pointSubject(
  { joints, bodies }: Pick<MachineGraph, "joints" | "bodies">,
  at: string,
): MarkSubject {
  if (joints.has(at)) return "joint";
  return bodies.has(at) || bodies.has(at.slice(0, at.indexOf("."))) ? "body" : "pin";
}
