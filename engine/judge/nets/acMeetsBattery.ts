import { loadsOf, presentParts } from "../../job/index.ts";
import type { Finding } from "../../messages/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";

/** Alternating nets that some position of the switches joins to the battery, and the watts each lighting coil is asked for. */
export const acMeetsBattery: Judge = (design) => {
  const { compiled } = design;
  return compiled.nets.nets.flatMap((net): readonly Finding[] => {
    const watts = wattsOf(design, net);
    const isKill = net.use === "ignition" || net.use === "pickup";
    if (net.meetsDcThrough !== null) {
      if (isKill && isGuardedByKill(design, net.nodes)) return [];
      const wires = wiresAlong(design, net.meetsDcThrough);
      return [
        findingOf({
          code: "ac-meets-battery",
          severity: "stop",
          subject: { kind: "part", id: net.generator },
          also: [...wires, ...damaged(design, net.generator)],
          numbers: {
            use: net.use,
            way: net.meetsDcThrough.filter((node) => !node.includes("~")).join(" - "),
            wires: wires.join(", "),
            damaged: damaged(design, net.generator).join(", "),
            onLoadW: watts?.onLoadW ?? null,
            sourceW: watts?.sourceW ?? null,
          },
        }),
      ];
    }
    if (watts === null || watts.onLoadW <= watts.sourceW) return [];
    return [
      findingOf({
        code: "ac-overloaded",
        severity: "mend",
        subject: { kind: "part", id: net.generator },
        also: watts.loads,
        numbers: { onLoadW: watts.onLoadW, sourceW: watts.sourceW },
      }),
    ];
  });
};

type Net = Design["compiled"]["nets"]["nets"][number];

/** Rated watts of what hangs on a net, each part with its largest filament, against the coil's. Null where neither is known. */
function wattsOf({ job }: Design, net: Net) {
  const generator = presentParts(job).find(({ id }) => id === net.generator);
  if (generator?.kind !== "generator") return null;
  const winding = generator.windings.find(({ use }) => use === net.use);
  const sourceW = winding?.ratedW ?? (net.use === "lighting" ? generator.ratedW : undefined);
  const on = loadsOf(job).filter(({ ac }) => ac);
  if (sourceW === undefined || on.length === 0 || net.use !== "lighting") return null;
  const largest = new Map<string, number>();
  for (const { part, ratedW } of on) {
    largest.set(part.id, Math.max(largest.get(part.id) ?? 0, ratedW ?? 0));
  }
  const onLoadW = [...largest.values()].reduce((sum, one) => sum + one, 0);
  return { sourceW, onLoadW, loads: on.map(({ ref }) => ref) };
}

/** A kill pin on the net has a finding of its own. */
const isGuardedByKill = ({ job }: Design, nodes: ReadonlySet<string>): boolean =>
  job.parts.some((part) =>
    part.pins.some(({ id, role }) => role === "kill" && nodes.has(`${part.id}.${id}`)),
  );

function wiresAlong({ job }: Design, nodes: readonly string[]): readonly string[] {
  const onWay = new Set(nodes);
  return job.wires
    .filter(({ from, to }) => onWay.has(from) && onWay.has(to))
    .map(({ id }) => id)
    .sort();
}

function damaged({ job }: Design, generator: string): readonly string[] {
  return presentParts(job)
    .filter(
      (part) =>
        part.kind === "battery" ||
        part.kind === "rectifier" ||
        (part.kind === "regulator" && (part.generator ?? generator) === generator),
    )
    .map(({ id }) => id)
    .sort();
}
