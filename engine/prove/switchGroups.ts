import type { ContactGraph } from "./contactGraph.ts";
import { elementStates, type Known, PARTED, QUESTION, RAIL, regionsOf } from "./regionsOf.ts";
import type { Assignment, StateSpace } from "./stateSpace.ts";

/** Nodes between the live side and earth that hang together, with everything that can change what happens among them. */
export interface Group {
  /** Positions that must hold for this group to be one. */
  readonly context: Assignment;
  /** Variables whose combinations have to be looked at, sorted. */
  readonly variables: readonly string[];
  readonly elements: ReadonlySet<number>;
  /** A generator works inside it, not on the live side. */
  readonly generates: boolean;
}

/** A group, or a choice of position with the groups under each. */
export type GroupTree =
  | { readonly kind: "group"; readonly group: Group }
  | {
      readonly kind: "split";
      readonly variable: string;
      readonly under: ReadonlyMap<string, readonly GroupTree[]>;
    };

export interface GroupQuestion {
  readonly graph: ContactGraph;
  readonly space: StateSpace;
  /** Relay positions in a state given by some positions, all else at rest; asked only of relays nothing else can move. */
  readonly pulled: (positions: Assignment) => readonly boolean[];
  readonly opened: ReadonlySet<number>;
  /** Whether generators give current; a piece that nothing feeds needs no looking at. */
  readonly running: boolean;
  /** Only pieces at one of these nodes are wanted. Absent: all. */
  readonly near?: readonly number[];
  /** Variables to split on first, in this order, where they occur. */
  readonly splitFirst?: readonly string[];
  /** Splits one inside the other at most. Absent: as many as make fewer combinations. */
  readonly mostSplits?: number;
  /** Whether positions can stand together at all. */
  readonly isPossible: (positions: Assignment) => boolean;
}

/** A group of more combinations is split by a position of one of its variables, if that makes fewer. */
const MOST_COMBINATIONS = 24;

/**
 * Parts a machine into groups that do not meet but at the live side and at earth.
 *
 * With some positions given, every node joined by copper to a live post or to earth is taken out; what is left falls into
 * pieces. A piece is moved by its own contacts, and by a relay's coil where that lies in another piece: those are one
 * piece then, unless the coil's piece has no variable left and the relay's position is known. A piece with too many
 * combinations is split on the position of a variable that makes the sum of combinations least.
 */
export function switchGroups(question: GroupQuestion): readonly GroupTree[] {
  const all = new Set(question.graph.a.keys());
  return treesIn(question, {}, all);
}

function treesIn(
  question: GroupQuestion,
  context: Assignment,
  within: ReadonlySet<number>,
): readonly GroupTree[] {
  return groupsIn(question, context, within).map((group): GroupTree => {
    const variable = splitVariable(question, group);
    if (variable === null) return { kind: "group", group };
    const under = new Map(
      positionsOf(question, variable).map((position) => {
        const positions = { ...context, [variable]: position };
        const isPossible = question.isPossible(positions);
        return [position, isPossible ? treesIn(question, positions, group.elements) : []];
      }),
    );
    return { kind: "split", variable, under };
  });
}

const positionsOf = ({ space }: GroupQuestion, id: string): readonly string[] =>
  space.variables.find((one) => one.id === id)!.positions;

const countOf = (question: GroupQuestion, { variables }: Group): number =>
  variables.reduce((product, id) => product * positionsOf(question, id).length, 1);

function splitVariable(question: GroupQuestion, group: Group): string | null {
  const whole = countOf(question, group);
  if (whole <= MOST_COMBINATIONS || group.variables.length < 2) return null;
  if (Object.keys(group.context).length >= (question.mostSplits ?? whole)) return null;
  const first = question.splitFirst?.find((id) => group.variables.includes(id));
  if (first !== undefined) return first;
  let best: { id: string; count: number } | null = null;
  for (const id of group.variables) {
    let count = 0;
    for (const position of positionsOf(question, id)) {
      const context = { ...group.context, [id]: position };
      if (!question.isPossible(context)) continue;
      for (const part of groupsIn(question, context, group.elements))
        count += countOf(question, part);
    }
    if (best === null || count < best.count) best = { id, count };
  }
  return best !== null && best.count < whole ? best.id : null;
}

/**
 * Relays from all released: one that something may feed is settled by a solve where nothing open can move its coil, and left
 * open otherwise; that may feed further coils, so the round is made again until nothing changes. It only ever goes one
 * way (released, settled, open), so it ends.
 */
function settledKnown(question: GroupQuestion, positions: Assignment): Known {
  const { graph, opened } = question;
  const relays = new Map<number, boolean | null>();
  const known = { positions, relays, opened };
  for (;;) {
    const pieces = piecesOf(question, known);
    let changed = false;
    graph.relayCoils.forEach((coil, k) => {
      if (relays.get(k) === null) return;
      const isOpen = coil.some((node) => (pieces.variablesAt(node)?.size ?? 0) > 0);
      if (isOpen) relays.set(k, null);
      else if (!relays.has(k) && coil.some((node) => pieces.isFed(node))) {
        const isPulled = question.pulled(positions)[k]!;
        relays.set(k, isPulled);
      } else return;
      changed = true;
    });
    if (!changed) return known;
  }
}

function groupsIn(
  question: GroupQuestion,
  context: Assignment,
  within: ReadonlySet<number>,
): readonly Group[] {
  const { graph } = question;
  const known = settledKnown(question, context);
  const pieces = piecesOf(question, known);
  const byPiece = new Map<number, { variables: Set<string>; elements: Set<number> }>();
  const wanted = question.near && new Set(question.near.map((node) => pieces.ofNode(node)));
  for (const k of within) {
    const piece = pieces.ofElement(k);
    if (wanted !== undefined && (piece < 0 || !wanted.has(piece))) continue;
    const made = byPiece.get(piece) ?? { variables: new Set(), elements: new Set() };
    byPiece.set(piece, made);
    made.elements.add(k);
  }
  return [...byPiece].map(([piece, { elements }]) => ({
    context,
    variables: [...(pieces.variablesOf(piece) ?? [])].sort(),
    elements,
    generates: piece >= 0 && graph.sources.some((k) => elements.has(k)),
  }));
}

interface Pieces {
  /** −1: between live side and earth, in no piece. */
  readonly ofElement: (k: number) => number;
  readonly ofNode: (node: number) => number;
  readonly variablesOf: (piece: number) => ReadonlySet<string> | undefined;
  /** Undefined for a node of the live side or of earth. */
  readonly variablesAt: (node: number) => ReadonlySet<string> | undefined;
  readonly isFed: (node: number) => boolean;
}

/** Pieces left when live side and earth are taken out, numbered by one of their nodes; contacts of one's own beside. */
function piecesOf({ graph, running }: GroupQuestion, known: Known): Pieces {
  const states = elementStates(graph, known);
  const region = regionsOf(graph, states);
  const root = united(graph, known, states, region);
  const isFree = (node: number): boolean => region[node] === 0;
  const freeEnd = (k: number): number =>
    isFree(graph.a[k]!) ? graph.a[k]! : isFree(graph.b[k]!) ? graph.b[k]! : -1;
  const piece = (k: number): number => {
    const end = freeEnd(k);
    if (end >= 0) return root(end);
    const crosses = region[graph.a[k]!] !== region[graph.b[k]!];
    // A contact straight from the live side to earth is a piece of its own.
    const isOwn = graph.joining[k]!.kind === "variable" && states[k] === QUESTION && crosses;
    return isOwn ? graph.nodeCount + k : -1;
  };
  const variables = new Map<number, Set<string>>();
  const fed = new Set<number>();
  for (let k = 0; k < states.length; k++) {
    if (states[k] === PARTED) continue;
    if (((region[graph.a[k]!]! | region[graph.b[k]!]!) & RAIL) !== 0) fed.add(piece(k));
    const joining = graph.joining[k]!;
    if (joining.kind !== "variable" || states[k] !== QUESTION) continue;
    const of = piece(k);
    if (of >= 0) variables.set(of, (variables.get(of) ?? new Set()).add(joining.id));
  }
  if (running) for (const k of graph.sources) if (states[k] !== PARTED) fed.add(piece(k));
  const of = (at: number) => (fed.has(at) ? variables.get(at) : undefined);
  return {
    ofElement: piece,
    ofNode: (node) => (isFree(node) ? root(node) : -1),
    variablesOf: of,
    variablesAt: (node) => (isFree(node) ? (of(root(node)) ?? new Set()) : undefined),
    isFed: (node) => (isFree(node) ? fed.has(root(node)) : (region[node]! & RAIL) !== 0),
  };
}

/** Joins the nodes of each piece; answers the node that stands for a node's piece. */
function united(
  graph: ContactGraph,
  known: Known,
  states: Uint8Array,
  region: Uint8Array,
): (node: number) => number {
  const parent = new Int32Array(graph.nodeCount);
  for (let node = 0; node < parent.length; node++) parent[node] = node;
  const root = (node: number): number => {
    let at = node;
    while (parent[at] !== at) {
      parent[at] = parent[parent[at]!]!;
      at = parent[at]!;
    }
    return at;
  };
  for (let k = 0; k < states.length; k++) {
    if (states[k] === PARTED) continue;
    const [a, b] = [graph.a[k]!, graph.b[k]!];
    if (region[a] === 0 && region[b] === 0) parent[root(a)] = root(b);
    const joining = graph.joining[k]!;
    if (joining.kind !== "relay" || known.relays.get(joining.index) !== null) continue;
    const coil = graph.relayCoils[joining.index]!.find((node) => region[node] === 0) ?? -1;
    const end = region[a] === 0 ? a : region[b] === 0 ? b : -1;
    if (coil >= 0 && end >= 0) parent[root(coil)] = root(end);
  }
  return root;
}

/** The groups of a tree with the positions under which they are ones. */
export function groupsOfTrees(trees: readonly GroupTree[]): readonly Group[] {
  return trees.flatMap((tree) =>
    tree.kind === "group" ? [tree.group] : [...tree.under.values()].flatMap(groupsOfTrees),
  );
}

/** Variables a tree was split on, outermost first. */
export function splitVariables(trees: readonly GroupTree[]): readonly string[] {
  const found = new Set<string>();
  let level = trees;
  while (level.length > 0) {
    const splits = level.flatMap((tree) => (tree.kind === "split" ? [tree] : []));
    for (const { variable } of splits) found.add(variable);
    level = splits.flatMap(({ under }) => [...under.values()].flat());
  }
  return [...found];
}
