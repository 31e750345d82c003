import {
  type AreaMm,
  area,
  CAP_MM,
  LINE_MM,
  type Mark,
  marksWithin,
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
  /** Place of the board that lies in the corner of the room. */
  readonly corner: PointMm;
  readonly scaleRatio: number;
  /** Large enough for names and pegs. */
  readonly isLarge: boolean;
  /** Name of the sheet the picture stands on. */
  readonly here: string;
}

/** The whole board small, with the sheets laid over it. */
export function tileMap(drawing: BoardDrawing, tiling: Tiling, room: AreaMm, here = ""): Mark[] {
  const windows = tiling.tiles.map(({ window }) => window);
  const corner = point(
    Math.min(...windows.map(({ xMm }) => xMm)),
    Math.min(...windows.map(({ yMm }) => yMm)),
  );
  const wholeWidthMm = Math.max(...windows.map(({ xMm, widthMm }) => xMm + widthMm)) - corner.xMm;
  const wholeHeightMm =
    Math.max(...windows.map(({ yMm, heightMm }) => yMm + heightMm)) - corner.yMm;
  const scaleRatio = Math.min(room.widthMm / wholeWidthMm, room.heightMm / wholeHeightMm);
  const small: Small = { room, corner, scaleRatio, isLarge: room.heightMm > 60, here };
  const limbs = limbLines(drawing, small);
  const edges = tiling.tiles.map((tile) => sheetEdge(tile, small));
  if (!small.isLarge) return [...limbs, ...edges];
  const centres = numberedPegs(drawing).map(({ at }) => placed(drawing, small, at));
  const loom = [...limbs, ...centres.map(pegDot)];
  const names = tiling.tiles.map((tile) => nameBox(tile, small, loom));
  return [
    ...limbs,
    ...edges,
    ...tiling.tiles.map((tile, i) => nameMark(tile, names[i]!)),
    ...pegDots(drawing, names, small),
  ];
}

/** A place of the board's own drawing on the small picture. */
const onPicture = ({ room, corner, scaleRatio }: Small, { xMm, yMm }: PointMm): PointMm =>
  point(room.xMm + (xMm - corner.xMm) * scaleRatio, room.yMm + (yMm - corner.yMm) * scaleRatio);

const placed = ({ shiftMm }: BoardDrawing, small: Small, at: Point): PointMm =>
  onPicture(small, point(at.x + shiftMm.xMm, at.y + shiftMm.yMm));

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

const windowBox = ({ window }: Tile, small: Small): AreaMm => {
  const { xMm, yMm } = onPicture(small, window);
  const { scaleRatio } = small;
  return area(xMm, yMm, window.widthMm * scaleRatio, window.heightMm * scaleRatio);
};

function sheetEdge(tile: Tile, small: Small): Mark {
  const isHere = tile.name === small.here;
  return {
    kind: "rect",
    area: windowBox(tile, small),
    stroke: { widthMm: isHere ? LINE_MM.frame : LINE_MM.leader, colour: "ink" },
  };
}

const NAME = { widthMm: 7, heightMm: 3.6 } as const;

/** Where a sheet's name stands: the first of its corners with nothing of the loom in it. */
function nameBox(tile: Tile, small: Small, loom: readonly Mark[]): AreaMm {
  const { xMm, yMm, widthMm, heightMm } = windowBox(tile, small);
  const [left, right] = [xMm + 1.2, xMm + widthMm - NAME.widthMm - 1.2];
  const [top, bottom] = [yMm + 1.2, yMm + heightMm - NAME.heightMm - 1.2];
  const corners = [
    [left, top],
    [right, top],
    [left, bottom],
    [right, bottom],
  ].map(([x, y]) => area(x!, y!, NAME.widthMm, NAME.heightMm));
  return corners.find((box) => marksWithin(loom, box).length === 0) ?? corners[0]!;
}

const nameMark = ({ name }: Tile, { xMm, yMm, heightMm }: AreaMm): Mark => ({
  ...textMark(name, xMm, yMm + (heightMm + CAP_MM.text) / 2, TEXT_STYLE.strong),
  onGround: true,
});

/** Numbered pegs, each figure where it covers no name of a sheet and no other figure. */
function pegDots(drawing: BoardDrawing, nameBoxes: readonly AreaMm[], small: Small): Mark[] {
  const pegs = numberedPegs(drawing);
  const centres = pegs.map(({ at }) => placed(drawing, small, at));
  const { room } = small;
  const names = nameBoxes.map(({ xMm, yMm, widthMm, heightMm }) => ({
    x: xMm,
    y: yMm,
    width: widthMm,
    height: heightMm,
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
    return [pegDot(centres[i]!), { ...words, onGround: true }];
  });
}

const numberedPegs = ({ layout }: BoardDrawing) => layout.pegs.filter(({ node }) => node !== null);

const pegDot = (centre: PointMm): Mark => ({
  kind: "circle",
  centre,
  radiusMm: 0.9,
  fill: "ground",
  stroke: { widthMm: LINE_MM.detail, colour: "ink" },
});
