import type { Link } from "../circuit/machineGraph.ts";

/** One thing on a current path of the whole diagram. */
export type DiagramStep =
  | { readonly kind: "wire"; readonly link: Link }
  /** A part or one function of it, by the pins it has above and below. */
  | {
      readonly kind: "part";
      readonly link: Link;
      readonly pinAbove: string;
      readonly pinBelow: string;
    }
  | { readonly kind: "cavity"; readonly link: Link; readonly pinAbove: string }
  /** The foot of a path at a body or at a joint of earths. */
  | { readonly kind: "earth"; readonly point: string; readonly by: Link }
  /** A terminal of something that has no function of its own there. */
  | { readonly kind: "terminal"; readonly point: string }
  /** The head of a path that begins at a place drawn elsewhere. */
  | { readonly kind: "head"; readonly point: string }
  | { readonly kind: "words"; readonly way: "to" | "from"; readonly what: string };

export interface DiagramSegment {
  readonly id: string;
  readonly from: string | null;
  readonly to: string | null;
  readonly steps: readonly DiagramStep[];
}

export interface DiagramNode {
  readonly id: string;
  /** The live post: its bus is the upper rail. */
  readonly isRail: boolean;
  /** Everything below it leads to earth without a load. */
  readonly isLow: boolean;
}
