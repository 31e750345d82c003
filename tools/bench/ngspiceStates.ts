import { spawnSync } from "node:child_process";
import { CLOSED_OHM, type FeederNetwork, OPEN_OHM } from "../../engine/network/feederNetwork.ts";
import {
  type BranchOverride,
  compileNetwork,
  floatingNodes,
  settleRelays,
} from "../../engine/network/index.ts";
import { ngspiceText } from "./ngspiceText.ts";

/**
 * Solves the same states in one ngspice process: an operating point, a few resistors altered, the next one. Relays are put
 * where ours settled, so that the simulator is spared that loop. Start-up is inside the time, spread over all states.
 */
export function ngspiceStatesPerSecond(
  made: FeederNetwork,
  states: readonly (readonly BranchOverride[])[],
): { statesPerSecond: number; worstV: number } {
  const compiled = compileNetwork(made.network);
  const settled = states.map(
    (overrides) => settleRelays(compiled, made.relays, { overrides }).fromReleased,
  );
  const control = alterations(
    made,
    states,
    settled.map(({ pulled }) => pulled),
  );
  const text = ngspiceText(made.network, [], []).replace("op\nprint all", control.join("\n"));
  const timed = 'TIMEFORMAT="processor %U %S"; time ngspice -b';
  const run = spawnSync("bash", ["-c", timed], {
    input: text,
    encoding: "utf8",
    maxBuffer: 1 << 30,
  });
  if (run.error) throw new Error(`ngspice could not be run: ${run.error.message}`);
  const [, user, system] = /^processor (\S+) (\S+)$/m.exec(run.stderr) ?? [];
  const seconds = Number(user) + Number(system);
  const points = readPoints(run.stdout);
  if (points.length !== states.length)
    throw new Error(`${points.length} operating points of ${states.length}`);
  let worstV = 0;
  settled.forEach(({ solution }, k) => {
    const floating = new Set(floatingNodes(compiled, solution));
    for (const [node, v] of points[k]!) {
      if (!floating.has(node)) worstV = Math.max(worstV, Math.abs(v - solution.nodeV[node]!));
    }
  });
  return { statesPerSecond: states.length / seconds, worstV };
}

/** Commands from state to state: only what changes is altered. */
function alterations(
  made: FeederNetwork,
  states: readonly (readonly BranchOverride[])[],
  pulled: readonly (readonly boolean[])[],
): string[] {
  const stands = new Map<number, number>();
  return states.flatMap((overrides, k) => {
    const open = new Set(overrides.map(({ branchIndex }) => branchIndex));
    const wanted = made.contacts.map(
      (branch) => [branch, open.has(branch) ? OPEN_OHM : CLOSED_OHM] as const,
    );
    const relays = made.relays.map(
      (relay, r) =>
        [relay.closedWhenPulled[0]!, pulled[k]![r] ? relay.closedOhm : relay.openOhm] as const,
    );
    const changed = [...wanted, ...relays].filter(([branch, ohm]) => stands.get(branch) !== ohm);
    for (const [branch, ohm] of changed) stands.set(branch, ohm);
    return [...changed.map(([branch, ohm]) => `alter R${branch}=${ohm}`), "op", "print all"];
  });
}

/** One map of node volts for each operating point printed; n1 opens a new one. */
function readPoints(output: string): Map<number, number>[] {
  const points: Map<number, number>[] = [];
  for (const [, node, value] of output.matchAll(/^n(\d+) = (\S+)/gm)) {
    const last = points[points.length - 1];
    if (last === undefined || last.has(Number(node))) points.push(new Map());
    points[points.length - 1]!.set(Number(node), Number(value));
  }
  return points;
}
