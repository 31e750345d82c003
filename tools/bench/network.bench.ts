import { lusolve, slu, sparse } from "mathjs";
import { LuDecomposition, Matrix } from "ml-matrix";
import {
  feederNetwork,
  MEASURED_SHAPE,
  OPEN_OHM,
  seeded,
} from "../../engine/network/feederNetwork.ts";
import {
  type BranchOverride,
  compileNetwork,
  planScreen,
  screenFaults,
  settleInPlace,
  settleRelays,
  solveInPlace,
  solveNetwork,
} from "../../engine/network/index.ts";
import { ngspiceStatesPerSecond } from "./ngspiceStates.ts";

interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly target?: number;
}

const OPEN = { kind: "ohm", ohm: OPEN_OHM } as const;
const made = feederNetwork(MEASURED_SHAPE);
const compiled = compileNetwork(made.network);
const nodeCount = made.network.nodeCount;

/** Every contact open or closed by the toss of a coin. */
function randomStates(count: number, seed: number): BranchOverride[][] {
  const random = seeded(seed);
  return Array.from({ length: count }, () =>
    made.contacts.filter(() => random() < 0.5).map((branchIndex) => ({ branchIndex, law: OPEN })),
  );
}

/** Processor time of this process so far, s: unlike a clock it does not count what others on the machine do. */
function processorS(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

/** Calls a second of processor time: the best of a few rounds, the first of them warming up. `call` returns how many it did. */
function perSecond(call: () => number, rounds = 6, roundS = 0.4): number {
  let best = 0;
  for (let round = 0; round < rounds; round++) {
    const from = processorS();
    let done = 0;
    while (processorS() - from < roundS) done += call();
    best = Math.max(best, done / (processorS() - from));
  }
  return best;
}

function states(): Figure[] {
  const all = randomStates(4096, 7);
  const released = made.relays.map(() => false);
  let unsolved = 0;
  let largestResidualA = 0;
  const once = (): number => {
    for (const overrides of all) {
      const status = settleInPlace(compiled, made.relays, released, { overrides });
      if (!status.converged || !status.settled) unsolved++;
      largestResidualA = Math.max(largestResidualA, status.kclResidualA);
    }
    return all.length;
  };
  const twice = (): number => {
    for (const overrides of all.slice(0, 512)) settleRelays(compiled, made.relays, { overrides });
    return 512;
  };
  return [
    {
      name: "random switch states, full Newton, relays from released",
      value: perSecond(once),
      unit: "1/s",
      target: 60_000,
    },
    {
      name: "the same settled from both ends, solutions copied out",
      value: perSecond(twice),
      unit: "1/s",
    },
    { name: "states not converged or not settled", value: unsolved, unit: "" },
    { name: "largest residual left, all states", value: largestResidualA, unit: "A" },
  ];
}

function shorts(): Figure[] {
  const all = randomStates(64, 9).map((overrides) => ({
    overrides,
    initialV: solveNetwork(compiled, { overrides }).nodeV,
  }));
  const places = Array.from({ length: nodeCount - 1 }, (_, k) => [{ a: k + 1, b: 0, ohm: 0.01 }]);
  let unsolved = 0;
  const value = perSecond(() => {
    for (const { overrides, initialV } of all) {
      for (const shorts of places) {
        if (!solveInPlace(compiled, { overrides, initialV, shorts }).converged) unsolved++;
      }
    }
    return all.length * (nodeCount - 1);
  });
  return [
    {
      name: "shorts of 10 mΩ to the reference, full Newton, warm",
      value,
      unit: "1/s",
      target: 100_000,
    },
    { name: "shorts not converged", value: unsolved, unit: "" },
  ];
}

function screened(): Figure[] {
  const random = seeded(3);
  const pairs = Array.from({ length: nodeCount - 1 }, (_, k) => [k + 1, 0] as const);
  const across = pairs.flatMap(([a]) =>
    [0, 1].map(() => [a, Math.floor(random() * nodeCount)] as const),
  );
  const shortOhm = [0.001, 0.01, 0.1, 1];
  const monitoredBranches = [0, 1, 2, 3, 4, 5, 6];
  const rate = (request: Parameters<typeof planScreen>[1]): number => {
    const screen = planScreen(compiled, request);
    return perSecond(() => {
      solveInPlace(compiled);
      screenFaults(screen);
      return screen.faultA.length;
    });
  };
  return [
    {
      name: "screened, one resistance, to the reference, 7 branches watched, state solved anew",
      value: rate({ pairs, shortOhm: [0.01], monitoredBranches }),
      unit: "1/s",
      target: 3_000_000,
    },
    {
      name: "screened, four resistances, also across, 7 branches watched, state solved anew",
      value: rate({
        pairs: [...pairs, ...across].sort((one, two) => one[0] - two[0]),
        shortOhm,
        monitoredBranches,
      }),
      unit: "1/s",
      target: 3_000_000,
    },
  ];
}

/** The matrix of the network with every filament as the resistance it settles at, and the currents of its sources. */
function denseSystem(): { rows: number[][]; currentA: number[] } {
  const solution = solveNetwork(compiled);
  const size = nodeCount - 1;
  const rows = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const add = (row: number, column: number, g: number): void => {
    if (row > 0 && column > 0) rows[row - 1]![column - 1]! += g;
  };
  const currentA = new Array<number>(size).fill(0);
  made.network.branches.forEach(({ a, b, law }, k) => {
    const v = solution.nodeV[a]! - solution.nodeV[b]!;
    const g = law.kind === "filament" ? solution.branchA[k]! / v : solution.branchSlopeS[k]!;
    add(a, a, g);
    add(b, b, g);
    add(a, b, -g);
    add(b, a, -g);
    if (law.kind !== "emf") return;
    if (a > 0) currentA[a - 1]! += g * law.emfV;
    if (b > 0) currentA[b - 1]! -= g * law.emfV;
  });
  for (let node = 1; node < nodeCount; node++) add(node, node, 1e-9);
  return { rows, currentA };
}

/** The library is only worth timing if it solves the same system to the same volts. */
function checkSame(volts: readonly (readonly number[])[]): void {
  const { nodeV } = solveNetwork(compiled);
  const worstV = Math.max(...volts.map(([v], k) => Math.abs(v! - nodeV[k + 1]!)));
  if (!(worstV < 1e-6)) throw new Error(`The library's volts differ by ${worstV} V`);
}

/** One linear system of this size factored and solved by general libraries, beside a whole nonlinear state of ours. */
function libraries(statesPerSecond: number): Figure[] {
  const { rows, currentA } = denseSystem();
  const sparseRows = sparse(rows);
  const column = currentA.map((iA) => [iA]);
  const dense = new Matrix(rows);
  const right = Matrix.columnVector(currentA);
  // Order 1 (minimum degree of A + A') and no exchange of rows off the diagonal: the fastest it offers for this matrix.
  checkSame(lusolve(slu(sparseRows, 1, 0), column).valueOf() as number[][]);
  const sparseRate = perSecond(() => {
    lusolve(slu(sparseRows, 1, 0), column);
    return 1;
  }, 3);
  const denseRate = perSecond(() => {
    new LuDecomposition(dense).solve(right);
    return 1;
  }, 3);
  return [
    { name: "mathjs sparse LU, one linear system", value: sparseRate, unit: "1/s" },
    { name: "ml-matrix dense LU, one linear system", value: denseRate, unit: "1/s" },
    {
      name: "ours (whole nonlinear state) / mathjs (one linear system)",
      value: statesPerSecond / sparseRate,
      unit: "×",
    },
    {
      name: "ours (whole nonlinear state) / ml-matrix (one linear system)",
      value: statesPerSecond / denseRate,
      unit: "×",
    },
  ];
}

export async function run(): Promise<Figure[]> {
  const ours = states();
  const simulator = ngspiceStatesPerSecond(made, randomStates(400, 11));
  const statesPerSecond = ours[0]!.value;
  return [
    { name: "nodes", value: nodeCount, unit: "" },
    { name: "branches", value: made.network.branches.length, unit: "" },
    ...ours,
    ...shorts(),
    ...screened(),
    ...libraries(statesPerSecond),
    {
      name: "ngspice, one process, 400 states altered one into the next",
      value: simulator.statesPerSecond,
      unit: "1/s",
    },
    { name: "ours / ngspice", value: statesPerSecond / simulator.statesPerSecond, unit: "×" },
    {
      name: "largest difference from ngspice over those states",
      value: simulator.worstV,
      unit: "V",
    },
  ];
}
