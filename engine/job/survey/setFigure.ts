import type { Operation } from "../edit/operation.ts";
import type { Basis } from "../job.ts";
import type { PartFigure } from "./partFigures.ts";

/** One figure of a part entered with where it comes from; a field that keeps a bare number keeps no basis. */
export function setFigure(
  part: string,
  { path, isPlain }: Pick<PartFigure, "path" | "isPlain">,
  value: number,
  basis: Basis,
): Operation {
  return { op: "set", list: "parts", id: part, path, value: isPlain ? value : { value, basis } };
}
