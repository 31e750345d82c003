import type { MarkSubject } from "../../drawing/index.ts";
import type { BoardNode } from "../../layout/index.ts";

/** What the id of a place on a board is the id of: a station, else the part or the earth point a wire goes to. */
export function vertexSubject({ id, station }: Pick<BoardNode, "id" | "station">): {
  readonly id: string;
  readonly of: MarkSubject;
} {
  if (station !== null) return { id: station, of: "station" };
  return { id, of: id.includes(".") ? "body" : "part" };
}
