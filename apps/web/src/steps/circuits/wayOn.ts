import type { Neighbour } from "@copperwright/engine/scenes";

/**
 * The next thing along the wiring. Up and down go on in their direction, to what one did not just come from where there is a choice; sideways goes through
 * what lies beside, and of a part through its further wires.
 */
export function wayOn(
  neighbours: readonly Neighbour[],
  way: "feed" | "return" | "before" | "after",
  cameFrom: string | null,
): Neighbour | null {
  if (way === "feed" || way === "return") {
    const along = neighbours.filter((one) => one.way === way);
    return along.find(({ id }) => id !== cameFrom) ?? along[0] ?? null;
  }
  const beside = neighbours.filter((one) => one.way === "beside");
  const list = beside.length > 0 ? beside : neighbours;
  return (way === "after" ? list[0] : list.at(-1)) ?? null;
}
