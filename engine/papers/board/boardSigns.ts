import {
  arcSteps,
  CAP_MM,
  LINE_MM,
  type Mark,
  measureTextMm,
  type PointMm,
  TEXT_STYLE,
  textMark,
} from "../../drawing/index.ts";
import type { Point } from "../../geometry/index.ts";
import { type BoardLayout, type BoardLimb, partOfLine } from "../../layout/index.ts";
import { readableDeg, toPoint, turned } from "./turned.ts";
import { vertexSubject } from "./vertexSubject.ts";

export const PEG_RADIUS_MM = 2.5;
const JOINT_HEIGHT_MM = 5;
/** Radius of the arc that shows the angle of a fork. */
export const FORK_ARC_MM = 24;

/** A frame across the loom where the machine holds it. */
export function clipMarks({ clips, limbs }: BoardLayout): Mark[] {
  const marks = clips.map(({ at, alongDeg }): Mark => {
    const halfMm = nearDiameter(limbs, at) / 2 + 2.2;
    const corners = [
      [-1.6, -halfMm],
      [1.6, -halfMm],
      [1.6, halfMm],
      [-1.6, halfMm],
    ] as const;
    return {
      kind: "polyline",
      closed: true,
      points: corners.map(([along, aside]) => turned(at, alongDeg, along, aside)),
      stroke: { widthMm: LINE_MM.detail, colour: "ink" },
    };
  });
  return [{ kind: "group", name: "clips", marks }];
}

function nearDiameter(limbs: readonly BoardLimb[], at: Point): number {
  for (const limb of limbs) {
    for (const { fromMm, toMm, diameterMm } of limb.pieces) {
      const line = partOfLine(limb.points, fromMm, toMm);
      const isOn = line.slice(1).some((b, i) => {
        const a = line[i]!;
        const along = Math.hypot(at.x - a.x, at.y - a.y) + Math.hypot(at.x - b.x, at.y - b.y);
        return along - Math.hypot(b.x - a.x, b.y - a.y) < 1e-6;
      });
      if (isOn) return diameterMm;
    }
  }
  return 0;
}

export const pegMarks = ({ pegs, nodes }: BoardLayout): Mark[] =>
  pegs.map(({ at, label, node }) => ({
    kind: "group",
    ...(node === null
      ? ({ id: `peg ${label}`, of: "peg" } as const)
      : vertexSubject(nodes.find(({ id }) => id === node)!)),
    name: "peg",
    marks: [
      {
        kind: "circle",
        centre: toPoint(at),
        radiusMm: PEG_RADIUS_MM,
        fill: "ground",
        stroke: { widthMm: node === null ? LINE_MM.detail : LINE_MM.frame, colour: "ink" },
      },
      { kind: "circle", centre: toPoint(at), radiusMm: 0.5, fill: "ink" },
    ],
  }));

/** How far a joint's box reaches along the loom to each side. */
export const jointHalfMm = (joint: string): number =>
  measureTextMm(joint, CAP_MM.text, 700) / 2 + 1.5;

/** A box along the loom with the joint's name, its middle where the joint's middle is. Joints at a station have none: the peg is their place. */
export const jointBoxes = ({ joints }: BoardLayout): Mark[] =>
  joints
    .filter(({ limb }) => limb !== null)
    .map(({ joint, at, alongDeg }) => {
      const halfMm = jointHalfMm(joint);
      const h = JOINT_HEIGHT_MM / 2;
      const readDeg = readableDeg(alongDeg);
      const base = turned(at, readDeg, 0, CAP_MM.text / 2);
      return {
        kind: "group",
        id: joint,
        of: "joint",
        name: "joint",
        marks: [
          {
            kind: "polyline",
            closed: true,
            points: [
              turned(at, alongDeg, -halfMm, -h),
              turned(at, alongDeg, halfMm, -h),
              turned(at, alongDeg, halfMm, h),
              turned(at, alongDeg, -halfMm, h),
            ],
            fill: "ground",
            stroke: { widthMm: LINE_MM.symbol, colour: "ink" },
          },
          {
            ...textMark(joint, base.xMm, base.yMm, TEXT_STYLE.strong, "middle"),
            turnDeg: readDeg,
          } as Mark,
        ],
      };
    });

/** The angle between neighbouring limbs of every fork, where it is less than straight. */
export function forkAngles({ nodes, limbs }: BoardLayout): {
  readonly marks: Mark[];
  readonly words: readonly { readonly at: PointMm; readonly text: string }[];
} {
  const words: { at: PointMm; text: string }[] = [];
  const marks = nodes.flatMap((node): Mark[] => {
    if (node.kind !== "breakout") return [];
    const around = limbs.flatMap(({ from, to, points }) => [
      ...(from === node.id ? [directionDeg(points[0]!, points[1]!)] : []),
      ...(to === node.id ? [directionDeg(points.at(-1)!, points.at(-2)!)] : []),
    ]);
    const sorted = around.map((one) => (one + 360) % 360).sort((a, b) => a - b);
    return sorted.flatMap((fromDeg, i): Mark[] => {
      const next = sorted[i + 1] ?? sorted[0]! + 360;
      const apart = next - fromDeg;
      if (apart > 170 || sorted.length < 3) return [];
      const radiusMm = FORK_ARC_MM;
      words.push({
        at: turned(node.at, (fromDeg + next) / 2, radiusMm + 5, 0),
        text: `${Math.round(apart)}°`,
      });
      return [
        {
          kind: "path",
          steps: arcSteps(toPoint(node.at), radiusMm, fromDeg, next),
          stroke: { widthMm: LINE_MM.leader, colour: "ink" },
        },
      ];
    });
  });
  return { marks, words };
}

const directionDeg = (a: Point, b: Point): number =>
  (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;
