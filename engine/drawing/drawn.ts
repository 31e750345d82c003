import type { Mark } from "./scene.ts";

/** A finished drawing from its own top left corner, and how much paper it takes. */
export interface Drawn {
  readonly marks: readonly Mark[];
  readonly widthMm: number;
  readonly heightMm: number;
}
