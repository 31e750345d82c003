import { type ColourToken, LINE_MM, type Mark, type PointMm, point } from "../../drawing/index.ts";
import type { Point } from "../../geometry/index.ts";
import { alongLine, type BoardLayout, type BoardLimb, partOfLine } from "../../layout/index.ts";
import { toPoint, turned } from "./turned.ts";

/** A piece of loom: line, run it is of, thickness. */
interface BodyPiece {
  readonly run: string;
  readonly line: readonly Point[];
  readonly diameterMm: number;
}

const bodyMark = (
  { run, line, diameterMm }: BodyPiece,
  growMm: number,
  colour: ColourToken,
): Mark => ({
  kind: "group",
  id: run,
  of: "run",
  marks: [
    {
      kind: "polyline",
      points: line.map(toPoint),
      stroke: { widthMm: diameterMm + growMm, colour },
    },
  ],
});

/** The loom as thick as it is: outline, covering tinted, bare parts white; then its centre line, which is what is measured. */
export function loomBody({ limbs, nodes, coverings }: BoardLayout): Mark[] {
  const edgeMm = 2 * LINE_MM.symbol;
  const pieces = limbs.flatMap((limb) =>
    limb.pieces.map(({ run, fromMm, toMm, diameterMm }) => ({
      run,
      line: partOfLine(limb.points, fromMm, toMm),
      diameterMm,
    })),
  );
  const knots = nodes.flatMap((node) => {
    const around = limbs.filter(({ from, to }) => from === node.id || to === node.id);
    if (node.kind !== "breakout") return [];
    const diameterMm = Math.max(...around.map(thicknessAt(node.id)));
    return [{ centre: toPoint(node.at), diameterMm }];
  });
  const covered = coverings.map(({ limb, fromMm, toMm }) => {
    const own = limbs.find(({ id }) => id === limb)!;
    return own.pieces
      .filter((piece) => piece.toMm > fromMm && piece.fromMm < toMm)
      .map((piece) => ({
        run: piece.run,
        line: partOfLine(own.points, Math.max(fromMm, piece.fromMm), Math.min(toMm, piece.toMm)),
        diameterMm: piece.diameterMm,
      }));
  });
  const body: Mark[] = [
    ...pieces.map((piece) => bodyMark(piece, edgeMm, "ink")),
    ...knots.map(({ centre, diameterMm }): Mark => disc(centre, (diameterMm + edgeMm) / 2, "ink")),
    ...pieces.map((piece) => bodyMark(piece, 0, "ground")),
    ...knots.map(({ centre, diameterMm }): Mark => disc(centre, diameterMm / 2, "ground")),
    ...covered.flat().map((piece) => bodyMark(piece, 0, "pale")),
  ];
  return [{ kind: "group", name: "loom", marks: body }];
}

const disc = (centre: PointMm, radiusMm: number, fill: ColourToken): Mark => ({
  kind: "circle",
  centre,
  radiusMm,
  fill,
});

const thicknessAt =
  (vertex: string) =>
  ({ from, pieces }: BoardLimb): number =>
    (from === vertex ? pieces[0]! : pieces.at(-1)!).diameterMm;

export const diameterAt = ({ pieces }: BoardLimb, mm: number): number =>
  pieces.find(({ fromMm, toMm }) => mm >= fromMm && mm <= toMm)?.diameterMm ?? 0;

/** Dash and dot along the middle of every limb. */
export const centreLines = ({ limbs }: BoardLayout): Mark[] =>
  limbs.map(({ id, points }) => ({
    kind: "group",
    id,
    name: "centre line",
    marks: [
      {
        kind: "polyline",
        points: points.map(toPoint),
        stroke: { widthMm: LINE_MM.leader, colour: "ink", dashMm: [6, 1.5, 0.8, 1.5] },
      },
    ],
  }));

/** Two bars across the loom where its covering starts and stops. */
export function coveringBars({ limbs, coverings }: BoardLayout): Mark[] {
  const marks = coverings.flatMap(({ limb, fromMm, toMm }) => {
    const own = limbs.find(({ id }) => id === limb)!;
    return [fromMm, toMm].flatMap((mm) => {
      const reachMm = diameterAt(own, mm) / 2 + 2;
      return [across(own.points, mm, reachMm, LINE_MM.frame)];
    });
  });
  return [{ kind: "group", name: "covering", marks }];
}

function across(points: readonly Point[], mm: number, reachMm: number, widthMm: number): Mark {
  const { at, alongDeg } = alongLine(points, mm);
  const turn = (alongDeg * Math.PI) / 180;
  const [dx, dy] = [-Math.sin(turn) * reachMm, Math.cos(turn) * reachMm];
  return {
    kind: "line",
    from: point(at.x + dx, at.y + dy),
    to: point(at.x - dx, at.y - dy),
    stroke: { widthMm, colour: "ink" },
  };
}

/** A fold the machine does not have: a broken line beside it on both sides. */
export const foldMarks = ({ limbs }: BoardLayout): Mark[] =>
  limbs.flatMap((limb) =>
    limb.folds.map(
      ({ fromMm, toMm }): Mark => ({
        kind: "group",
        name: "fold",
        marks: [-1, 1].map((side) => ({
          kind: "polyline",
          points: partOfLine(limb.points, fromMm, toMm).map((_, i, all) => {
            const mm = fromMm + ((toMm - fromMm) * i) / (all.length - 1);
            const { at, alongDeg } = alongLine(limb.points, mm);
            return turned(at, alongDeg, 0, side * (diameterAt(limb, mm) / 2 + 2.5));
          }),
          stroke: { widthMm: LINE_MM.symbol, colour: "copper", dashMm: [3, 2] },
        })),
      }),
    ),
  );
