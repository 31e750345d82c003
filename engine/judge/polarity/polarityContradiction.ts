import { batteriesOf, type Job, type Part, presentParts } from "../../job/index.ts";
import type { Finding } from "../../messages/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Judge } from "../judge.ts";

/**
 * The job says which post is joined to the frame, and its wires show which one is. Where they differ, one of the two facts
 * is wrong, and nobody but the person can say which.
 */
export const polarityContradiction: Judge = ({ job, compiled }) => {
  const { elements, nodes } = compiled.jobNetwork;
  const near = new Map<number, number[]>();
  const join = (a: number, b: number): void => {
    near.set(a, [...(near.get(a) ?? []), b]);
  };
  for (const { kind, nodes: ends } of elements) {
    if (kind !== "wire" && kind !== "joint" && kind !== "bond") continue;
    join(ends[0], ends[1]);
    join(ends[1], ends[0]);
  }
  const hubs = new Set(job.bodies.map(({ id }) => nodes.indexOf.get(`${id}.hub`)));
  const onBody = (pin: string): string | null => {
    const start = nodes.indexOf.get(pin);
    if (start === undefined) return null;
    const seen = new Set([start]);
    for (const node of seen) {
      if (hubs.has(node)) return nodes.names[node]!.replace(/\.hub$/, "");
      for (const next of near.get(node) ?? []) seen.add(next);
    }
    return null;
  };
  return batteriesOf(job).flatMap(({ battery, earthedPost, livePost }): readonly Finding[] => {
    const body = onBody(livePost);
    if (body === null) return [];
    const joinedTwice = onBody(earthedPost) !== null;
    const wire = job.wires.find(
      ({ from, to }) => (from === livePost || to === livePost) && [from, to].some(isOf(body)),
    );
    const risk = partsAtRisk(job);
    return [
      findingOf({
        code: joinedTwice ? "battery-shorted" : "earth-polarity-contradiction",
        severity: "stop",
        subject: { kind: "part", id: battery.id },
        also: [...(wire ? [wire.id] : []), ...risk],
        numbers: {
          declared: job.supply.earthPolarity,
          joined: job.supply.earthPolarity === "positive" ? "negative" : "positive",
          post: livePost,
          earthedPost,
          bodyName: job.bodies.find(({ id }) => id === body)?.name ?? body,
          wire: wire?.id ?? null,
          atRisk: risk.length === 0 ? null : risk.join(", "),
        },
        reproduce: ["check", "JOB"],
      }),
    ];
  });
};

const isOf =
  (body: string) =>
  (pin: string): boolean =>
    pin.startsWith(`${body}.`);

/** Parts that do not live with the other earth: destroyed, dark or read backwards. */
export function partsAtRisk(job: Job): readonly string[] {
  return presentParts(job)
    .filter(caresForPolarity)
    .map((part) => part.id)
    .sort();
}

function caresForPolarity(part: Part): boolean {
  if (part.polarity !== undefined) return part.polarity !== "either";
  switch (part.kind) {
    case "lamp":
      return part.source === "led";
    case "diode":
    case "rectifier":
    case "capacitor":
    case "regulator":
    case "module":
      return true;
    case "meter":
      return part.measures === "amps";
    case "generator":
      return part.type === "dynamo" || part.type === "alternator-excited";
    case "flasher":
      return part.technology === "electronic";
    default:
      return false;
  }
}
