import { loadsOf } from "../../job/index.ts";
import type { Finding } from "../../messages/index.ts";
import type { QuickSolution, QuickState } from "../../operate/index.ts";
import { figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { operateCommand, stateInWords, stateOf } from "../stateArguments.ts";

/** Bounds the breaks tried and the states each is tried in. */
const BREAK_COUNT_MAX = 16;
const STATE_COUNT_MAX = 16;

/** What one broken return does in one state. */
interface Symptom {
  readonly open: string;
  readonly state: QuickState;
  /** Loads that light though they are off, with their share of rated power. */
  readonly stray: readonly { readonly load: string; readonly shareRatio: number }[];
  readonly dimmed: readonly string[];
}

/**
 * Every return that several loads share is opened once: where its current then goes home through other loads, they light
 * though they are off. Told as what would be seen, with the break as the first thing to suspect.
 */
export const sharedReturns: Judge = (design) => {
  const lamps = lampsOf(design);
  const states = quietStates(design).map((state): Intact => {
    const solution = design.compiled.solve(state);
    return {
      state,
      before: sharesOf(design, lamps, solution),
      isBlindTo: blindTo(design, solution),
    };
  });
  const symptoms = breaks(design).flatMap(
    (open) => worstSymptom(design, { lamps, states }, open) ?? [],
  );
  return earths(design, symptoms).map((group) => symptomFinding(design, group));
};

/**
 * Symptoms by shared earth, the most shared wire first: the same loads light, or some of them, and some load's current passes on the way
 * home through the wires of both.
 */
function earths({ worst, compiled }: Design, symptoms: readonly Symptom[]): readonly Symptom[][] {
  const { elements } = compiled.jobNetwork;
  const ways = [...worst.loads.values()].map(
    ({ drop }) => new Set((drop?.back ?? []).map((k) => elements[k]!.of)),
  );
  const shareWay = (one: Symptom, other: Symptom): boolean =>
    ways.some((way) => way.has(one.open) && way.has(other.open));
  const groups: Symptom[][] = [];
  for (const symptom of symptoms) {
    const group = groups.find(([first]) => {
      const [more, less] = [strays(first!), strays(symptom)];
      const isSame = more.length === less.length && less.every((load) => more.includes(load));
      return isSame || (less.every((load) => more.includes(load)) && shareWay(first!, symptom));
    });
    if (group === undefined) groups.push([symptom]);
    else group.push(symptom);
  }
  return groups;
}

const strays = ({ stray }: Symptom): readonly string[] => stray.map(({ load }) => load);

/** Wires on the way home of two loads or more, the most shared first. */
function breaks({ worst, compiled }: Design): readonly string[] {
  const { elements } = compiled.jobNetwork;
  const users = new Map<string, number>();
  for (const { drop } of worst.loads.values()) {
    for (const k of drop?.back ?? []) {
      const { kind, of } = elements[k]!;
      if (kind === "wire" && !of.includes(".")) users.set(of, (users.get(of) ?? 0) + 1);
    }
  }
  return [...users]
    .filter(([, count]) => count > 1)
    .sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1))
    .slice(0, BREAK_COUNT_MAX)
    .map(([wire]) => wire);
}

/** For each load the state with least else switched on; lit through a break it is then plain to see. */
function quietStates({ worst }: Design): readonly QuickState[] {
  const states = new Map<string, QuickState>();
  for (const { quietState, load } of worst.loads.values()) {
    if (quietState === null || load.part.kind === "motor") continue;
    const { positions = {}, flash = "off" } = quietState;
    states.set(JSON.stringify([positions, flash]), {
      positions,
      flash,
      engine: { mode: "stopped" },
    });
  }
  return [...states.values()].slice(0, STATE_COUNT_MAX);
}

/** Filaments and light sources on the battery, with their places in the network. */
interface Lamps {
  readonly refs: readonly string[];
  readonly places: readonly number[];
  readonly ratedW: readonly number[];
}

function lampsOf({ compiled, job }: Design): Lamps {
  const placeOf = new Map(
    compiled.jobNetwork.elements.flatMap(({ of, kind }, k) =>
      kind === "contact" ? [] : [[of, k] as const],
    ),
  );
  const lamps = loadsOf(job).filter(({ kind, ac, ref }) => {
    return kind === "filament" && !ac && placeOf.has(ref);
  });
  return {
    refs: lamps.map(({ ref }) => ref),
    places: lamps.map(({ ref }) => placeOf.get(ref)!),
    ratedW: lamps.map(({ ratedW }) => ratedW ?? Number.POSITIVE_INFINITY),
  };
}

/** Less than this in a wire is the leak of open contacts, A. */
const LEAK_A = 1e-6;

/**
 * Answers whether a break changes nothing: where every relay rests released nothing was pulled on the way there, so a wire that
 * carries nothing carried nothing at any time, and volts and currents stand as they are without it.
 */
function blindTo(
  { compiled }: Design,
  { converged, pulled, elementA }: QuickSolution,
): (wire: string) => boolean {
  const isStill = converged && !pulled.includes(true);
  return (wire) => {
    const place = compiled.elementOfConductor.get(wire);
    return isStill && place !== undefined && Math.abs(elementA[place]!) < LEAK_A;
  };
}

/** Share of its rated power each lamp gets. */
function sharesOf(
  { compiled }: Design,
  lamps: Lamps,
  { nodeV, elementA }: QuickSolution,
): readonly number[] {
  const { elements } = compiled.jobNetwork;
  return lamps.places.map((k, i) => {
    const [a, b] = elements[k]!.nodes;
    return ((nodeV[a]! - nodeV[b]!) * elementA[k]!) / lamps.ratedW[i]!;
  });
}

/** The state in which a break lights most that is off; null where it never does. */
function worstSymptom(
  design: Design,
  { lamps, states }: { readonly lamps: Lamps; readonly states: readonly Intact[] },
  open: string,
): Symptom | null {
  const lit = figure("lampLaws", "lit-share", "value").value;
  let worst: Symptom | null = null;
  for (const { state, before, isBlindTo } of states) {
    if (isBlindTo(open)) continue;
    const after = sharesOf(design, lamps, design.compiled.solve({ ...state, open: [open] }));
    const stray = lamps.refs.flatMap((load, i) =>
      after[i]! >= lit && before[i]! < lit ? [{ load, shareRatio: after[i]! }] : [],
    );
    if (stray.length === 0 || !tellsMore(stray, worst?.stray ?? [])) continue;
    const dimmed = lamps.refs.filter((_, i) => before[i]! >= lit && after[i]! < lit);
    worst = { open, state, stray, dimmed };
  }
  return worst;
}

/** Shares nearer than this are one: the first stands. */
const ALIKE_RATIO = 1e-9;

/** More loads that light tell more; of as many, the one that lights brightest. */
function tellsMore(stray: Symptom["stray"], than: Symptom["stray"]): boolean {
  const brightest = (list: Symptom["stray"]): number =>
    Math.max(0, ...list.map(({ shareRatio }) => shareRatio));
  if (stray.length !== than.length) return stray.length > than.length;
  return brightest(stray) > brightest(than) + ALIKE_RATIO;
}

/** A state with nothing broken. */
interface Intact {
  readonly state: QuickState;
  readonly before: readonly number[];
  readonly isBlindTo: (wire: string) => boolean;
}

function symptomFinding({ job }: Design, group: readonly Symptom[]): Finding {
  const { open, state, stray, dimmed } = group[0]!;
  const broken = { ...state, open: [open] };
  const list = stray.map(({ load, shareRatio }) => `${load} at ${(100 * shareRatio).toFixed(0)} %`);
  return findingOf({
    code: "shared-earth-lights-others",
    severity: "advise",
    subject: { kind: "wire", id: open },
    also: group.slice(1).map((one) => one.open),
    state: stateOf(job, state),
    numbers: {
      positions: stateInWords(job, state),
      stray: list.join(", "),
      strayCount: stray.length,
      dimmed: dimmed.length === 0 ? null : dimmed.join(", "),
      others:
        group.length > 1
          ? group
              .slice(1)
              .map((one) => one.open)
              .join(", ")
          : null,
    },
    reproduce: operateCommand(job, broken),
  });
}
