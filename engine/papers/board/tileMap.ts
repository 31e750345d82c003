import {
  type AreaMm,
  area,
  LINE_MM,
  type Mark,
  type PointMm,
  point,
  TEXT_STYLE,
  textMark,
} from "../../drawing/index.ts";
import type { Point } from "../../geometry/index.ts";
import type { BoardDrawing } from "./boardDrawing.ts";
import type { Tile, Tiling } from "./boardTiles.ts";

/** How a board's millimetres become those of a small picture of it. */
interface Small {
  readonly room: AreaMm;
  readonly scaleRatio: number;
  /** Large enough for names and pegs. */
  readonly isLarge: boolean;
  /** Name of the sheet the picture stands on. */
  readonly here: string;
}

/** The whole board small, with the sheets laid over it. */
export function tileMap(drawing: BoardDrawing, tiling: Tiling, room: AreaMm, here = ""): Mark[] {
  const wholeWidthMm = Math.max(...tiling.tiles.map(({ window }) => window.xMm + window.widthMm));
  const wholeHeightMm = Math.max(...tiling.tiles.map(({ window }) => window.yMm + window.heightMm));
  const scaleRatio = Math.min(room.widthMm / wholeWidthMm, room.heightMm / wholeHeightMm);
  const small: Small = { room, scaleRatio, isLarge: room.heightMm > 60, here };
  return [
    ...limbLines(drawing, small),
    ...tiling.tiles.flatMap((tile) => sheetMarks(tile, small)),
    ...(small.isLarge ? pegDots(drawing, small) : []),
  ];
}

const placed = ({ shiftMm }: BoardDrawing, { room, scaleRatio }: Small, at: Point): PointMm =>
  point(room.xMm + (at.x + shiftMm.xMm) * scaleRatio, room.yMm + (at.y + shiftMm.yMm) * scaleRatio);

const limbLines = (drawing: BoardDrawing, small: Small): Mark[] =>
  drawing.layout.limbs.map(({ points, pieces }) => {
    const diameterMm = Math.max(...pieces.map((piece) => piece.diameterMm));
    const leastMm = small.isLarge ? LINE_MM.frame : LINE_MM.detail;
    return {
      kind: "polyline",
      points: points.map((at) => placed(drawing, small, at)),
      stroke: {
        widthMm: Math.max(leastMm, diameterMm * small.scaleRatio),
        colour: "ink2",
        cap: "round",
      },
    };
  });

function sheetMarks({ name, window }: Tile, { room, scaleRatio, isLarge, here }: Small): Mark[] {
  const box = area(
    room.xMm + window.xMm * scaleRatio,
    room.yMm + window.yMm * scaleRatio,
    window.widthMm * scaleRatio,
    window.heightMm * scaleRatio,
  );
  const isHere = name === here;
  const edge: Mark = {
    kind: "rect",
    area: box,
    stroke: { widthMm: isHere ? LINE_MM.frame : LINE_MM.leader, colour: "ink" },
  };
  if (isLarge) return [edge, textMark(name, box.xMm + 1.2, box.yMm + 4, TEXT_STYLE.strong)];
  return [edge];
}

const pegDots = (drawing: BoardDrawing, small: Small): Mark[] =>
  drawing.layout.pegs
    .filter(({ node }) => node !== null)
    .flatMap(({ at, label }): Mark[] => {
      const centre = placed(drawing, small, at);
      const words = textMark(label, centre.xMm + 1.6, centre.yMm - 1.2, TEXT_STYLE.text);
      return [
        {
          kind: "circle",
          centre,
          radiusMm: 0.9,
          fill: "ground",
          stroke: { widthMm: LINE_MM.detail, colour: "ink" },
        },
        { ...words, onGround: true },
      ];
    });
