import { batteryOf, pinRef, presentParts } from "../../job/index.ts";
import type { Finding } from "../../messages/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { carrying, reachOver, wayBack } from "../reachOver.ts";

/**
 * A kill line may meet earth and nothing else: battery volts on it destroy a magneto's winding or an ignition box. On a
 * battery-fed ignition it is the other way about: the kill switch must open the feed.
 */
export const killLine: Judge = (design) => {
  const { job } = design;
  const kills = presentParts(job).flatMap((part) =>
    part.pins.filter(({ role }) => role === "kill").map(({ id }) => pinRef(part.id, id)),
  );
  if (kills.length === 0) return [];
  const { ignition } = job.supply;
  if (ignition === "battery-coil") {
    return [
      findingOf({
        code: "kill-earths-battery-ignition",
        severity: "mend",
        subject: { kind: "pin", id: kills[0]! },
        also: kills.slice(1),
      }),
    ];
  }
  return metByBattery(design, kills);
};

function metByBattery(design: Design, kills: readonly string[]): readonly Finding[] {
  const { job, compiled } = design;
  const live = batteryOf(job)?.livePost;
  if (live === undefined) return [];
  const earthed = new Set([...compiled.nets.earthed, batteryOf(job)!.earthedPost]);
  const reached = reachOver(design, [live], carrying(job), earthed);
  const met = kills.filter((pin) => reached.has(pin) && !earthed.has(pin));
  const first = met[0];
  if (first === undefined) return [];
  const way = wayBack(reached, first);
  const onWay = new Set(way);
  const wires = job.wires
    .filter(({ from, to }) => onWay.has(from) && onWay.has(to))
    .map(({ id }) => id);
  return [
    findingOf({
      code: "kill-meets-battery",
      severity: "stop",
      subject: { kind: "pin", id: first },
      also: [...met.slice(1), ...wires],
      numbers: {
        ignition: job.supply.ignition,
        livePost: live,
        way: way.filter((node) => !node.includes("~")).join(" - "),
      },
    }),
  ];
}
