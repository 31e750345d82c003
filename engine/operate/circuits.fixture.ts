import type { Job } from "../job/index.ts";
import { emptyJob, wire } from "../route/loom.fixture.ts";

type Part = Job["parts"][number];
type Wire = Job["wires"][number];

const pins = (...ids: readonly string[]) => ids.map((id) => ({ id }));

const BATTERY = {
  id: "BAT",
  name: "battery",
  kind: "battery",
  pins: pins("P", "N"),
  positivePin: "P",
  negativePin: "N",
  chemistry: "flooded",
  nominalV: 12,
  capacityAh: { value: 14, basis: "stated" },
  internalOhm: { value: 0.02, basis: "stated" },
} as Part;

const fuse = (id: string) =>
  ({
    id,
    name: "fuse",
    kind: "fuse",
    pins: pins("IN", "OUT"),
    ratingA: 15,
    marking: "continuous",
    type: "blade",
  }) as Part;

const switchOf = (id: string) =>
  ({
    id,
    name: "switch",
    kind: "switch",
    driven: "hand",
    pins: pins("1", "2"),
    positions: [
      { id: "OFF", joins: [] },
      { id: "ON", joins: [["1", "2"]] },
    ],
    rest: "OFF",
  }) as Part;

const lamp = (id: string, ratedW: number) =>
  ({
    id,
    name: "lamp",
    kind: "lamp",
    source: "filament",
    pins: pins("L", "E"),
    filaments: [{ pins: ["L", "E"], ratedV: 12, ratedW }],
  }) as Part;

const measured = (id: string, from: string, to: string): Wire => ({
  ...wire(id, from, to),
  lengthMm: { value: 900, basis: "measured" },
});

function circuit(n: number, ratedW: number): { readonly parts: Part[]; readonly wires: Wire[] } {
  const sides = ["a", "b"];
  return {
    parts: [
      fuse(`F${n}`),
      ...sides.flatMap((side) => [switchOf(`S${n}${side}`), lamp(`L${n}${side}`, ratedW)]),
    ],
    wires: [
      measured(`${n}F`, "BAT.P", `F${n}.IN`),
      ...sides.flatMap((side) => [
        measured(`${n}S${side}`, `F${n}.OUT`, `S${n}${side}.1`),
        measured(`${n}${side}`, `S${n}${side}.2`, `L${n}${side}.L`),
        measured(`${n}E${side}`, `L${n}${side}.E`, `FR.P${n}`),
      ]),
    ],
  };
}

/**
 * So many circuits that only the battery and the frame join: in each a fuse and two switches, each with a lamp of so many watts.
 * Ids tell what is what: F1, S1a, L1a, wires 1F, 1Sa, 1a, 1Ea; the earth lead common to all is E.
 */
export function circuits(ratedW: readonly number[]): Job {
  const each = ratedW.map((watts, k) => circuit(k + 1, watts));
  const points = [{ id: "P0" }, ...each.map((_, k) => ({ id: `P${k + 1}` }))];
  return emptyJob({
    parts: [BATTERY, ...each.flatMap(({ parts }) => parts)],
    wires: [measured("E", "BAT.N", "FR.P0"), ...each.flatMap(({ wires }) => wires)],
    bodies: [{ id: "FR", name: "frame", kind: "frame", points }],
  });
}
