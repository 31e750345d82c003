import { type FlyLead, type Part, pinRef } from "../job/index.ts";
import type { Guard } from "../protect/index.ts";
import { cutLengthsOf } from "../route/index.ts";
import type { CheckWireRow, FeedRow } from "./checkResult.ts";
import type { Design } from "./judge.ts";
import { commandWriter } from "./stateArguments.ts";

/** One row for every wire and fly lead, by id. */
export function wireRowsOf(design: Design): readonly CheckWireRow[] {
  const { job, routed, conductors, worst, ratings, protection, sizing, compiled } = design;
  const cuts = cutLengthsOf(job, routed);
  const wireOf = new Map(job.wires.map((wire) => [wire.id, wire]));
  const leadOf = flyLeadsOf(job.parts);
  const commandOf = commandWriter(job);
  return [...conductors.values()].map((one): CheckWireRow => {
    const wire = wireOf.get(one.id);
    const lead = leadOf.get(one.id);
    const rating = ratings.get(one.id)!;
    const most = worst.conductors.get(one.id);
    const starting = worst.crankingConductors.get(one.id);
    const unknown = (most?.currentA ?? 0) > 0 ? null : notComputed(compiled.nets.nets, one);
    const reasons = [one.lengthMm === null ? "length not known" : null, unknown].filter(Boolean);
    const colour = wire?.colour ?? lead?.lead.colour ?? null;
    return {
      wire: one.id,
      kind: one.kind,
      circuit: one.circuit,
      loom: wire?.loom ?? null,
      status: wire?.status ?? lead?.part.status ?? "keep",
      from: one.from,
      to: one.to,
      colour: colour && { main: colour.main, tracer: colour.tracer ?? null },
      makeId: one.makeId,
      areaMm2: one.areaMm2,
      strandCount: one.strandCount,
      strandDiameterMm: one.strandDiameterMm,
      wall: one.wall,
      insulation: one.insulation,
      odMm: one.odMm,
      pathMm: one.lengthMm,
      cutMm: cuts.get(one.id) ?? null,
      lengthBasis: routed.wires.get(one.id)?.basis ?? lead?.lead.lengthMm.basis ?? null,
      ohmPerM: one.ohmPerM20Max,
      worstA: unknown === null ? (most?.currentA ?? 0) : null,
      worstState: most?.state ? commandOf(most.state, most.batteryV) : [],
      ...(starting?.state && {
        crankingA: starting.currentA,
        crankingState: commandOf(starting.state, starting.batteryV),
      }),
      ratingA: rating.currentA,
      ratingBasis: rating.governedBy === "table" ? `table: ${rating.tableBasis}` : "heat model",
      ambientC: rating.place.ambientC,
      bundleCount: rating.place.bundle.wireCount,
      loadedCount: rating.place.bundle.loadedCount,
      feeds: (protection.guards.get(one.id) ?? []).map(feedRow),
      sizedBy: one.sizedBy,
      governedBy: sizing.sizing.get(one.id)?.governedBy ?? "person",
      ...(reasons.length > 0 && { why: reasons.join("; ") }),
    };
  });
}

/** Why no current is known of a wire on an alternating net that no state could be solved for; null: it is known. */
function notComputed(
  nets: Design["compiled"]["nets"]["nets"],
  { from, to }: { readonly from: string; readonly to: string },
): string | null {
  const net = nets.find(({ nodes }) => nodes.has(from) || nodes.has(to));
  if (net === undefined) return null;
  const isPulse = net.use === "ignition" || net.use === "pickup";
  return isPulse
    ? `pulses of ${net.generator} (${net.use}) are not computed`
    : `what ${net.generator} (${net.use}) gives is not known at two speeds`;
}

const feedRow = (guard: Guard): FeedRow => ({
  source: guard.source,
  cut: guard.cut,
  sumA: guard.sumA,
  unfusedMm: guard.unfusedMm,
  paths: guard.pathCount,
});

function flyLeadsOf(parts: readonly Part[]) {
  const leads = new Map<string, { readonly part: Part; readonly lead: FlyLead }>();
  for (const part of parts) {
    for (const { id, flyLead } of part.pins) {
      if (flyLead !== undefined) leads.set(pinRef(part.id, id), { part, lead: flyLead });
    }
  }
  return leads;
}
