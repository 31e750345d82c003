import {
  CAP_MM,
  type Drawn,
  type MarkSubject,
  measureTextMm,
  TEXT_STYLE,
  textMark,
} from "../../drawing/index.ts";
import type { Point } from "../../geometry/index.ts";
import {
  alongLine,
  type BlockToPlace,
  type BoardLayout,
  type BoardNode,
  type BoardPeg,
} from "../../layout/index.ts";
import { printNumber } from "../../units/index.ts";
import type { PaperInput } from "../paperInput.ts";
import { numberOf } from "../wireRows.ts";
import { PEG_RADIUS_MM } from "./boardSigns.ts";
import { compass } from "./compass.ts";
import { diameterAt } from "./loomBody.ts";
import { nodeBlock } from "./nodeBlock.ts";
import { vertexSubject } from "./vertexSubject.ts";
import type { WireEnd, wireEndsOf } from "./wireEnds.ts";

/** Name of a place on the board: its station, else the part or earth point a wire goes to. */
export function nameOf({ job }: PaperInput, vertex: string): string {
  const station = job.stations.find(({ id }) => id === vertex);
  if (station !== undefined) return station.name;
  const part = job.parts.find(({ id }) => id === vertex);
  if (part !== undefined) return `${part.id} ${part.name}`;
  const [owner, pin] = vertex.split(".");
  const body = job.bodies.find(({ id }) => id === owner);
  return body === undefined ? vertex : `${body.name}, point ${pin}`;
}

/** Something to be written beside the loom. */
export interface BlockHere {
  readonly place: BlockToPlace;
  readonly drawn: Drawn;
  /** What it is written about. */
  readonly about: { readonly id: string; readonly of?: MarkSubject };
}

/** Everything written beside the loom: places with their wires, lettered pegs, joints, the compass. */
export function blocksOf(
  input: PaperInput,
  layout: BoardLayout,
  ends: ReturnType<typeof wireEndsOf>,
): readonly BlockHere[] {
  const pegOf = new Map(layout.pegs.map((peg) => [peg.node, peg]));
  const block = (
    about: BlockHere["about"],
    anchor: Point,
    towardsDeg: number,
    offMm: number,
    drawn: Drawn,
  ): BlockHere => ({
    place: {
      id: `${about.of} ${about.id}`,
      anchor,
      towardsDeg,
      offMm,
      widthMm: drawn.widthMm,
      heightMm: drawn.heightMm,
    },
    drawn,
    about,
  });
  const aside = (at: Point, extraMm: number): { towardsDeg: number; offMm: number } => {
    const { alongDeg, radiusMm } = lineAt(layout, at);
    return { towardsDeg: alongDeg - 90, offMm: Math.max(radiusMm, PEG_RADIUS_MM) + extraMm };
  };
  const nodes = layout.nodes.flatMap((node): BlockHere[] => {
    const peg = pegOf.get(node.id);
    if (peg === undefined) return [];
    const { radiusMm } = lineAt(layout, node.at);
    const drawn = nodeDrawn(input, node, peg, ends.at.get(node.id) ?? [], layout);
    return [
      block(vertexSubject(node), node.at, node.outwardDeg, Math.max(radiusMm, 4) + 2.5, drawn),
    ];
  });
  const pegs = layout.pegs
    .filter(({ node }) => node === null)
    .map((peg) => {
      const text = `${peg.label}  ${printNumber(peg.fromDatumMm, 0)}`;
      const { towardsDeg, offMm } = aside(peg.at, 2);
      return block({ id: `peg ${peg.label}`, of: "peg" }, peg.at, towardsDeg, offMm, oneLine(text));
    });
  const joints = layout.joints.map(({ joint, at, fromDatumMm }) => {
    const wires = (ends.on.get(joint) ?? []).map(numberOf).join(" ");
    const text = `${joint}  ${printNumber(fromDatumMm, 0)}: ${wires}`;
    const { towardsDeg, offMm } = aside(at, 3.5);
    return block({ id: joint, of: "joint" }, at, towardsDeg + 180, offMm, oneLine(text));
  });
  const datum = layout.nodes.find(({ fromDatumMm }) => fromDatumMm === 0)!;
  return [
    ...nodes,
    ...pegs,
    ...joints.filter((_, i) => layout.joints[i]!.limb !== null),
    ...(input.job.layout.side === undefined ? [] : [compassBlock(datum.at)]),
  ];
}

function compassBlock(datum: Point): BlockHere {
  const drawn = compass();
  const { widthMm, heightMm } = drawn;
  const place = { id: "compass", anchor: datum, towardsDeg: -90, offMm: 25, hasLeader: false };
  return { drawn, about: { id: "compass" }, place: { ...place, widthMm, heightMm } };
}

function nodeDrawn(
  input: PaperInput,
  node: BoardNode,
  peg: BoardPeg,
  ends: readonly WireEnd[],
  { joints }: BoardLayout,
): Drawn {
  const here = joints.filter(
    ({ limb, at }) => limb === null && at.x === node.at.x && at.y === node.at.y,
  );
  const mm =
    node.fromDatumMm === 0
      ? "datum, 0 mm"
      : `${printNumber(node.fromDatumMm, 0)} mm from the datum`;
  const meets = node.meets === null ? "" : `, meets ${nameOf(input, node.meets)}: loop opened here`;
  const jointText = here.length === 0 ? "" : `, joints ${here.map(({ joint }) => joint).join(" ")}`;
  const name = node.meets === null ? nameOf(input, node.id) : "loop end";
  return nodeBlock(
    input,
    { name: `${peg.label}  ${name}`, note: `${mm}${meets}${jointText}` },
    ends,
  );
}

function oneLine(text: string): Drawn {
  return {
    marks: [textMark(text, 0, CAP_MM.text + 0.4, TEXT_STYLE.strong)],
    widthMm: measureTextMm(text, CAP_MM.text, 700),
    heightMm: CAP_MM.text + 1.4,
  };
}

/** Direction and half thickness of the loom at a place on it. */
function lineAt(layout: BoardLayout, at: Point): { alongDeg: number; radiusMm: number } {
  let best = { alongDeg: 0, radiusMm: 0, distanceMm: Infinity };
  for (const limb of layout.limbs) {
    for (let mm = 0; mm <= limb.lengthMm; mm += 2) {
      const place = alongLine(limb.points, mm);
      const distanceMm = Math.hypot(place.at.x - at.x, place.at.y - at.y);
      if (distanceMm < best.distanceMm - 1e-6) {
        best = { alongDeg: place.alongDeg, radiusMm: diameterAt(limb, mm) / 2, distanceMm };
      }
    }
  }
  return best;
}
