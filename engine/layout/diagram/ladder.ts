/** What one thing takes of its column: height, and reach to the left and right of the line. */
export interface LadderBox {
  readonly heightMm: number;
  readonly leftMm: number;
  readonly rightMm: number;
}

/** One thing in a current path. */
export interface LadderItem {
  /** Permanent id of what it shows; not unique: a part may stand in several columns. */
  readonly id: string;
  /** By which whoever made it knows it again. */
  readonly ref: number;
  /** Drawn out where there is room, like a wire. */
  readonly isElastic: boolean;
  /** Stands as low as it can: a load and what is below it. */
  readonly isLow: boolean;
  /** How it may be lettered, fullest first. */
  readonly boxes: readonly [LadderBox, ...LadderBox[]];
}

/** A point where paths part or meet: drawn as a level bus. */
export interface LadderNode {
  readonly id: string;
  /** Room above the bus for its name, at the left of the line. */
  readonly label: LadderBox;
  /** Added to the reach at the right for each way told in words. */
  readonly toldMm: number;
  /** Stands as low as what hangs on it allows. */
  readonly isLow: boolean;
}

/** A path between two nodes, or from its own head or to its own foot, which are items like any other. */
export interface LadderSegment {
  readonly id: string;
  readonly from: string | null;
  readonly to: string | null;
  readonly items: readonly LadderItem[];
  /** Wish for its place from left to right among those beside it. */
  readonly rank: number;
}

/** A network as current paths that run down: no ring leads back up. */
export interface Ladder {
  readonly nodes: readonly LadderNode[];
  readonly segments: readonly LadderSegment[];
}

export interface LadderPoint {
  readonly xMm: number;
  readonly yMm: number;
}

/** Where somebody has put things: `xMm` orders columns beside each other, `yMm` is how far below the upper rail at least. */
export type LadderPins = Readonly<Record<string, LadderPoint>>;

/** Items told in words where a path is not drawn through. */
export interface LadderWords {
  /** At the foot of a path: "to J3, column 12". */
  readonly to: (what: string) => LadderItem;
  /** At the head of a path that goes on from elsewhere. */
  readonly from: (what: string) => LadderItem;
}
