export type BlockKind = "source" | "battery" | "fuse" | "switch" | "load";

/** What feeds what, for somebody who does not read circuit diagrams. */
export interface BlockDiagramInput {
  readonly blocks: readonly {
    /** Permanent id in the job, or of the group a block stands for. */
    readonly id: string;
    readonly kind: BlockKind;
    readonly name: string;
    /** Watts, amps, rating: "21 W, 1.6 A". Empty: none. */
    readonly note: string;
  }[];
  /** From feed to fed. A pair given twice is one line. */
  readonly links: readonly {
    readonly from: string;
    readonly to: string;
    /** On the live pole at all times, key out or in: drawn bold. */
    readonly alwaysLive: boolean;
  }[];
}
