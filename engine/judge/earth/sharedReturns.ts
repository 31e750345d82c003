import { loadsOf } from "../../job/index.ts";
import type { Finding } from "../../messages/index.ts";
import type { QuickState } from "../../operate/index.ts";
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
  const states = quietStates(design);
  const symptoms = breaks(design).flatMap((open) => worstSymptom(design, open, states) ?? []);
  const groups = new Map<string, Symptom[]>();
  for (const symptom of symptoms) {
    const key = symptom.stray.map(({ load }) => load).join(" ");
    groups.set(key, [...(groups.get(key) ?? []), symptom]);
  }
  return [...groups.values()].map((group) => symptomFinding(design, group));
};

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

function worstSymptom(
  design: Design,
  open: string,
  states: readonly QuickState[],
): readonly Symptom[] | null {
  const found = states
    .map((state): Symptom => {
      const before = shares(design, state);
      const after = shares(design, { ...state, open: [open] });
      const lit = figure("lampLaws", "lit-share", "value").value;
      const stray = [...after]
        .filter(([load, share]) => share >= lit && before.get(load)! < lit)
        .map(([load, shareRatio]) => ({ load, shareRatio }));
      const dimmed = [...before]
        .filter(([load, share]) => share >= lit && after.get(load)! < lit)
        .map(([load]) => load);
      return { open, state, stray, dimmed };
    })
    .filter(({ stray }) => stray.length > 0)
    .sort((a, b) => b.stray.length - a.stray.length);
  return found[0] === undefined ? null : [found[0]];
}

/** Share of its rated power each filament and light source gets. */
function shares({ compiled, job }: Design, state: QuickState): ReadonlyMap<string, number> {
  const { elements } = compiled.jobNetwork;
  const { nodeV, elementA } = compiled.solve(state);
  const lamps = new Map(
    loadsOf(job)
      .filter(({ kind, ac }) => kind === "filament" && !ac)
      .map((load) => [load.ref, load.ratedW ?? Infinity]),
  );
  return new Map(
    elements.flatMap(({ of, kind, nodes: [a, b] }, k): (readonly [string, number])[] => {
      const ratedW = lamps.get(of);
      if (ratedW === undefined || kind === "contact") return [];
      return [[of, ((nodeV[a]! - nodeV[b]!) * elementA[k]!) / ratedW]];
    }),
  );
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
