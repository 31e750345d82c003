import {
  type AreaMm,
  area,
  CAP_MM,
  LINE_MM,
  type Mark,
  measureTextMm,
  type PointMm,
  point,
  TEXT_STYLE,
  textMark,
} from "../../drawing/index.ts";
import type { Point } from "../../geometry/index.ts";
import { placeBlocks } from "../../layout/index.ts";
import type { Tile, Tiling } from "../tiles/tiling.ts";
import type { BoardDrawing } from "./boardDrawing.ts";

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
    ...(small.isLarge ? pegDots(drawing, tiling, small) : []),
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
  if (isLarge) {
    const words = textMark(name, box.xMm + 1.2, box.yMm + 4, TEXT_STYLE.strong);
    return [edge, { ...words, onGround: true }];
  }
  return [edge];
}

/** Numbered pegs, each figure where it covers no name of a sheet and no other figure. */
function pegDots(drawing: BoardDrawing, tiling: Tiling, small: Small): Mark[] {
  const pegs = drawing.layout.pegs.filter(({ node }) => node !== null);
  const centres = pegs.map(({ at }) => placed(drawing, small, at));
  const { room, scaleRatio } = small;
  const names = tiling.tiles.map(({ window }) => ({
    x: room.xMm + window.xMm * scaleRatio + 0.8,
    y: room.yMm + window.yMm * scaleRatio + 0.8,
    width: 8,
    height: 4.4,
  }));
  const far = 500;
  const outside = [
    { x: room.xMm - far, y: room.yMm - far, width: 3 * far, height: far },
    { x: room.xMm - far, y: room.yMm + room.heightMm, width: 3 * far, height: far },
  ];
  const labels = placeBlocks(
    pegs.map(({ label }, i) => ({
      id: label,
      anchor: { x: centres[i]!.xMm, y: centres[i]!.yMm },
      towardsDeg: -45,
      offMm: 1.2,
      hasLeader: false,
      widthMm: measureTextMm(label, CAP_MM.text, 400),
      heightMm: 1.5 * CAP_MM.text,
    })),
    { lines: [], rectangles: [...names, ...outside] },
    { leftMm: room.xMm, rightMm: room.xMm + room.widthMm },
  );
  return pegs.flatMap((_, i): Mark[] => {
    const { x, y, id } = labels[i]!;
    const words = textMark(id, x, y + 1.15 * CAP_MM.text, TEXT_STYLE.text);
    return [
      {
        kind: "circle",
        centre: centres[i]!,
        radiusMm: 0.9,
        fill: "ground",
        stroke: { widthMm: LINE_MM.detail, colour: "ink" },
      },
      { ...words, onGround: true },
    ];
  });
}
