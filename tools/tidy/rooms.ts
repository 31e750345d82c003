/** The rooms of the engine in order. A room may import only rooms that stand before it. ARCHITECTURE.md repeats this list; a test compares them. */
export const ROOMS = [
  "units",
  "messages",
  "tables",
  "job",
  "network",
  "heat",
  "geometry",
  "route",
  "operate",
  "size",
  "protect",
  "supply",
  "prove",
  "diagnose",
  "judge",
  "layout",
  "drawing",
  "papers",
] as const;

/** Rooms that have never heard of the trade: they may import nothing of the engine but each other's neighbours named here. */
export const PURE_ROOMS: Readonly<Record<string, readonly string[]>> = {
  units: [],
  network: [],
  geometry: [],
};
