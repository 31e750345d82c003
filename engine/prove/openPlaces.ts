import { pinRef } from "../job/index.ts";
import type { CompiledJob } from "../operate/index.ts";

/** Places in series: whichever of them parts, the same thing happens. */
export interface OpenPlace {
  /** What `operate --open` is told: a wire of the series if there is one, else a pin. */
  readonly name: string;
  /** Every place of the series, sorted. */
  readonly names: readonly string[];
  readonly elements: ReadonlySet<number>;
  /** Nodes the series begins and ends at. */
  readonly ends: readonly [number, number];
}

/**
 * Every wire, fly lead, joint way, connector cavity, earth point and bond that can part, those in series taken together: a node where
 * two of them and nothing else meet only hands the current on.
 */
export function openPlaces({ job, jobNetwork }: CompiledJob): readonly OpenPlace[] {
  const { elements, nodes } = jobNetwork;
  const canOpen = elements.map(
    ({ kind, law }) =>
      (kind === "wire" || kind === "joint" || kind === "bond") &&
      law.kind === "ohm" &&
      law.ohm < 1e6,
  );
  const at: number[][] = nodes.names.map(() => []);
  elements.forEach(({ nodes: [a, b] }, k) => {
    at[a]!.push(k);
    if (b !== a) at[b]!.push(k);
  });
  const parent = elements.map((_, k) => k);
  const root = (k: number): number => (parent[k] === k ? k : root(parent[k]!));
  const isOnPost = (node: number): boolean => node === 0 || nodes.names[node] === jobNetwork.earth;
  at.forEach((list, node) => {
    const [one, other] = list;
    if (list.length !== 2 || isOnPost(node) || !canOpen[one!] || !canOpen[other!]) return;
    parent[root(one!)] = root(other!);
  });
  const series = new Map<number, number[]>();
  elements.forEach((_, k) => {
    if (canOpen[k]) series.set(root(k), [...(series.get(root(k)) ?? []), k]);
  });
  const flyLeads = new Set(
    job.parts.flatMap((part) =>
      part.pins.flatMap((pin) => (pin.flyLead ? [pinRef(part.id, pin.id)] : [])),
    ),
  );
  return [...series.values()].map((list) => placeOf(list, jobNetwork, at, flyLeads));
}

function placeOf(
  list: readonly number[],
  { elements }: CompiledJob["jobNetwork"],
  at: readonly (readonly number[])[],
  flyLeads: ReadonlySet<string>,
): OpenPlace {
  const inSeries = new Set(list);
  const names = list.map((k) => openName(elements[k]!)).sort();
  const ends = list
    .flatMap((k) => [...elements[k]!.nodes])
    .filter((node) => at[node]!.filter((k) => inSeries.has(k)).length < 2);
  const wires = list.filter((k) => elements[k]!.kind === "wire" && !flyLeads.has(elements[k]!.of));
  const first = wires.map((k) => elements[k]!.of).sort()[0] ?? names[0]!;
  const node = elements[list[0]!]!.nodes;
  return { name: first, names, elements: inSeries, ends: [ends[0] ?? node[0], ends[1] ?? node[1]] };
}

/** A cavity is opened by its plug half, everything else by its own name. */
function openName({
  of,
  kind,
  controlledBy,
}: CompiledJob["jobNetwork"]["elements"][number]): string {
  return kind === "joint" && controlledBy !== undefined && controlledBy.length > 0
    ? controlledBy[0]!
    : of;
}
