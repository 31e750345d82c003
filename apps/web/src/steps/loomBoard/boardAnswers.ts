import { boardScenes } from "@copperwright/engine/scenes";
import { type Picture, pictureOf } from "../../drawing/picture.ts";
import type { Held } from "../../engine/held.ts";
import type { PaperChoice } from "../papers/papersAnswers.ts";

export interface BoardPoint {
  readonly xMm: number;
  readonly yMm: number;
}

/** A place of the board that can be taken hold of, in the drawing's own millimetres. */
export interface BoardHold extends BoardPoint {
  readonly station: string;
  readonly name: string;
  readonly isEnd: boolean;
}

export interface BoardView {
  readonly picture: Picture;
  readonly holds: readonly BoardHold[];
  /** The drawing's place minus this is a place of `job.layout.board`. */
  readonly shift: BoardPoint;
  readonly tiles: readonly {
    readonly name: string;
    readonly xMm: number;
    readonly yMm: number;
    readonly widthMm: number;
    readonly heightMm: number;
  }[];
  readonly widthMm: number;
  readonly heightMm: number;
  readonly foldCount: number;
  readonly crossingCount: number;
  readonly tightCount: number;
  readonly overWidthMm: number;
  readonly unmeasuredCount: number;
}

export const boardAnswers = {
  boardLooms: (
    held: Held,
  ): readonly { readonly id: string; readonly name: string; readonly wires: number }[] =>
    held.job.looms.map(({ id, name }) => ({
      id,
      name,
      wires: held.job.wires.filter(({ loom }) => loom === id).length,
    })),

  boardView(held: Held, { loom, choice }: { loom: string; choice: PaperChoice }): BoardView | null {
    const board = boardScenes(held.scenes(), loom, { paper: choice.paper, ...choice.board });
    if (board === null) return null;
    const { scene, layout, shiftMm, tiling } = board;
    const names = new Map(held.job.stations.map(({ id, name }) => [id, name]));
    return {
      picture: pictureOf(scene),
      holds: layout.nodes.flatMap(({ station, at, kind }) =>
        station === null
          ? []
          : [
              {
                station,
                name: names.get(station) ?? station,
                isEnd: kind === "end",
                xMm: at.x + shiftMm.xMm,
                yMm: at.y + shiftMm.yMm,
              },
            ],
      ),
      shift: shiftMm,
      tiles: tiling.tiles.map(({ name, window }) => ({ name, ...window })),
      widthMm: layout.widthMm,
      heightMm: layout.heightMm,
      foldCount: layout.limbs.reduce((count, { folds }) => count + folds.length, 0),
      crossingCount: layout.faults.crossingCount,
      tightCount: layout.faults.tightCount,
      overWidthMm: layout.faults.overWidthMm,
      unmeasuredCount: layout.unmeasured.length,
    };
  },
};
