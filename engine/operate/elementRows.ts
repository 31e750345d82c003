import type { Law, RelaySettlement } from "../network/index.ts";
import type { JobNetwork } from "./buildJobNetwork.ts";
import { letterOf, OPEN_OHM } from "./jobElement.ts";
import { nodeLabel } from "./jobNodes.ts";
import type { ElementRow } from "./operateResult.ts";
import type { NetworkState } from "./stateOverrides.ts";

/** Law of every element as it stood in the network solved. */
export function lawsAsSolved(
  { elements }: JobNetwork,
  { overrides, relays }: NetworkState,
  pulled: readonly boolean[],
): readonly Law[] {
  const laws: Law[] = elements.map(({ law }) => law);
  for (const { branchIndex, law } of overrides) laws[branchIndex] = law;
  relays.forEach(({ closedWhenPulled, closedWhenReleased, closedOhm, openOhm }, r) => {
    const closed: Law = { kind: "ohm", ohm: closedOhm };
    const open: Law = { kind: "ohm", ohm: openOhm };
    for (const k of closedWhenPulled) laws[k] = pulled[r] ? closed : open;
    for (const k of closedWhenReleased) laws[k] = pulled[r] ? open : closed;
  });
  return laws;
}

/** How a law is written in an answer. A filament that is open is a resistance like any other. */
export function lawRow(law: Law): Readonly<Record<string, unknown>> {
  const { kind, ...numbers } = law;
  return kind === "curve" ? { ...numbers, note: "straight lines, the last slopes go on" } : numbers;
}

/**
 * The network solved, element by element: Kirchhoff's law holds at every node over this list alone. Elements in order of
 * their number, then shorts, then the leak of each node.
 */
export function elementRows(
  jobNetwork: JobNetwork,
  state: NetworkState,
  { solution, pulled }: RelaySettlement,
): readonly ElementRow[] {
  const { nodeV, branchA, shortA } = solution;
  const laws = lawsAsSolved(jobNetwork, state, pulled);
  const row = (
    id: string,
    names: Pick<ElementRow, "kind" | "of">,
    [a, b]: readonly [number, number],
    law: Law,
    currentA: number,
  ): ElementRow => ({
    id,
    ...names,
    nodes: [nodeLabel(a), nodeLabel(b)],
    law: lawRow(law),
    currentA,
    powerW: (nodeV[a]! - nodeV[b]!) * currentA,
  });
  const own = jobNetwork.elements.map(({ id, kind, of, nodes }, k) =>
    row(deviceId(id, laws[k]!), { kind, of }, nodes, laws[k]!, branchA[k]!),
  );
  const shorts = state.shorts.map(({ a, b, ohm }, k) => {
    const names = jobNetwork.nodes.names;
    const id = `R${jobNetwork.elements.length + k + 1}`;
    const of = `${names[a]}=${names[b]}`;
    return row(id, { kind: "short", of }, [a, b], { kind: "ohm", ohm }, shortA[k]!);
  });
  const leaks = Array.from({ length: nodeV.length - 1 }, (_, k) => {
    const node = k + 1;
    const law: Law = { kind: "ohm", ohm: OPEN_OHM };
    const name = jobNetwork.nodes.names[node]!;
    return row(leakId(node), { kind: "leak", of: name }, [node, 0], law, nodeV[node]! / OPEN_OHM);
  });
  return [...own, ...shorts, ...leaks];
}

export const leakId = (node: number): string => `Rleak${node}`;

/** The number stays; the letter is that of the law it obeys in this state (an opened filament is a resistor). */
export const deviceId = (id: string, law: Law): string => `${letterOf(law)}${id.slice(1)}`;
