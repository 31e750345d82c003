import { figure, wires as makes } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
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
        numbers: { wires: wires.length === 0 ? "no wire" : `one wire, ${wires[0]!.id},` },
        limit: null,
      }),
    );

/** Copper in one barrel beyond what a hand tool closes, as barrels are sold: by nominal sizes. Fuller joints are told of by their wires. */
export const jointCopper: Judge = (design) => {
  const limit = figure("preInsulated", "yellow-wide", "wireToMm2");
  const wiresMost = figure("workmanshipRules", "splice-wires", "value").value;
  const full = jointsSeen(design)
    .filter(({ joint, wires }) => joint.kind === "crimped-splice" && wires.length <= wiresMost)
    .map(({ joint, wires }) => {
      const areas = wires.map(({ id }) => nominalMm2(design, id));
      return { joint, wires, areas, copperMm2: areas.reduce((sum, area) => sum + area, 0) };
    })
    .filter(({ copperMm2 }) => copperMm2 > limit.value)
    .sort((a, b) => b.copperMm2 - a.copperMm2 || (a.joint.id < b.joint.id ? -1 : 1));
  const [first, ...others] = full;
  if (first === undefined) return [];
  const { joint, wires, areas, copperMm2 } = first;
  return [
    findingOf({
      code: "joint-copper",
      severity: "advise",
      subject: { kind: "joint", id: joint.id },
      also: others.map((one) => one.joint.id),
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
    }),
  ];
};

/** Size as it is sold, else the copper counted. */
function nominalMm2({ conductors }: Design, wire: string): number {
  const conductor = conductors.get(wire);
  if (conductor === undefined) return 0;
  return makes.find(({ id }) => id === conductor.makeId)?.nominalMm2 ?? conductor.areaMm2;
}

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
