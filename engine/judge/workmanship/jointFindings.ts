import { type Figure, figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Judge } from "../judge.ts";
import { isSplice, type JointSeen, jointsSeen } from "./jointsSeen.ts";

const idOf = ({ joint }: JointSeen): string => joint.id;

/** A splice along a run that bends with the steering or the suspension breaks there. */
export const jointInFlex: Judge = (design) =>
  jointsSeen(design)
    .filter(({ along }) => along?.run.flex === true)
    .map((seen) =>
      findingOf({
        code: "joint-in-flex",
        severity: "mend",
        subject: { kind: "joint", id: seen.joint.id },
        numbers: { run: seen.along!.run.id, offsetMm: seen.along!.offsetMm },
        limit: figure("loomRules", "joint-in-flex", "value"),
      }),
    );

/** More wires than one barrel closes on. */
export const jointWays: Judge = (design) => {
  const limit = figure("workmanshipRules", "splice-wires", "value");
  const full = jointsSeen(design)
    .filter(({ joint, wires }) => isSplice(joint) && wires.length > limit.value)
    .sort((a, b) => b.wires.length - a.wires.length || (idOf(a) < idOf(b) ? -1 : 1));
  const [first, ...others] = full;
  if (first === undefined) return [];
  const toBus = full.map(({ joint }) => ({
    op: "set",
    list: "joints",
    id: joint.id,
    path: ["kind"],
    value: "bus",
  }));
  return [
    findingOf({
      code: "joint-ways",
      severity: "mend",
      subject: { kind: "joint", id: first.joint.id },
      also: others.map(idOf),
      numbers: {
        wireCount: first.wires.length,
        others:
          others.length === 0
            ? null
            : others.map(({ joint, wires }) => `${joint.id} (${wires.length})`).join(", "),
      },
      limit,
      remedies: [{ kind: "bus", change: toBus, cures: true, newNumbers: {} }],
    }),
  ];
};

/** A joint that joins nothing. */
export const jointOneWire: Judge = (design) =>
  jointsSeen(design)
    .filter(({ wires, bondCount }) => wires.length + bondCount <= 1)
    .map(({ joint, wires }) =>
      findingOf({
        code: "joint-one-wire",
        severity: wires.length === 0 ? "advise" : "mend",
        subject: { kind: "joint", id: joint.id },
        also: wires.map(({ id }) => id),
        numbers: { wires: wires.length === 0 ? "no wire" : `one wire, ${wires[0]!.id}` },
        limit: null,
      }),
    );

/** Copper in one barrel beyond what a hand tool closes. */
export const jointCopper: Judge = (design) => {
  const limit: Figure = figure("preInsulated", "yellow-wide", "wireToMm2");
  return jointsSeen(design)
    .filter(({ joint }) => joint.kind === "crimped-splice")
    .flatMap(({ joint, wires }) => {
      const areas = wires.map(({ id }) => design.conductors.get(id)?.areaMm2 ?? 0);
      const copperMm2 = areas.reduce((sum, area) => sum + area, 0);
      if (copperMm2 <= limit.value) return [];
      return findingOf({
        code: "joint-copper",
        severity: "advise",
        subject: { kind: "joint", id: joint.id },
        also: wires.map(({ id }) => id),
        numbers: { copperMm2, thinnestMm2: Math.min(...areas), wireCount: wires.length },
        limit,
        working: [
          {
            name: "copper in the barrel",
            equation: "A = sum of A_i",
            inputs: wires.map(({ id }, i) => ({
              name: "A_i",
              value: areas[i]!,
              unit: "mm2",
              from: `wires/${id}`,
            })),
            value: copperMm2,
            unit: "mm2",
          },
        ],
      });
    });
};

/** Splices of which only a station is stated: nothing about their place can be checked. */
export const jointPlaceUnstated: Judge = (design) => {
  const [first, ...others] = jointsSeen(design).filter(
    ({ joint, along, wires }) =>
      isSplice(joint) && along === null && joint.station !== undefined && wires.length > 1,
  );
  if (first === undefined) return [];
  return [
    findingOf({
      code: "joint-place-unstated",
      severity: "advise",
      subject: { kind: "joint", id: first.joint.id },
      also: others.map(idOf),
      numbers: { spliceCount: others.length + 1 },
      limit: figure("loomRules", "joint-spacing", "value"),
    }),
  ];
};
