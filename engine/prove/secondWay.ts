import { idMaker } from "../job/index.ts";
import type { Remedy } from "../messages/index.ts";
import { newWire } from "./newParts.ts";
import type { ProofPlan } from "./proofPlan.ts";
import { STRAY_RATIO, type StrayLoad } from "./strayOf.ts";

/**
 * A second earth wire beside a wire that carries an earth: with the one open the other carries, and the machine does what it does whole,
 * but for the milliohms between them. So nothing strays in any state that does not stray whole; the worst state is solved with
 * the second wire in place to show it.
 *
 * @returns null where the place is no wire, or is not on the earth side.
 */
export function secondWay(
  { input, solver }: ProofPlan,
  { open, state, load }: StrayLoad,
): Remedy | null {
  const { job, conductors } = input;
  const { nets, jobNetwork, elementOfConductor } = solver.compiled;
  const wire = job.wires.find(({ id }) => id === open);
  const conductor = conductors.get(open ?? "");
  if (wire === undefined || conductor === undefined) return null;
  if (!nets.earthed.has(conductor.from) && !nets.earthed.has(conductor.to)) return null;
  const { law } = jobNetwork.elements[elementOfConductor.get(wire.id)!]!;
  if (law.kind !== "ohm") return null;
  const short = [{ a: wire.from, b: wire.to, ohm: law.ohm }];
  const beside = { ...state, short };
  const newRatio = Math.abs(solver.shares(beside, solver.solve(beside))[load]!);
  const moved = idMaker(job)("W");
  const { makeId, lengthMm } = conductor;
  const change = [newWire(moved, [wire.from, wire.to], wire, makeId, lengthMm ?? undefined)];
  const newNumbers = { newWire: moved, open, newSharePercent: 100 * newRatio };
  return { kind: "second-way", change, cures: newRatio <= STRAY_RATIO, newNumbers };
}
