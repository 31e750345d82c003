import type { Finding } from "../messages/index.ts";
import type { CurrentTallies } from "./currentTallies.ts";
import { proofFinding } from "./proofFinding.ts";
import type { ProofPlan } from "./proofPlan.ts";
import { EARTHED, elementStates, RAIL, regionsOf } from "./regionsOf.ts";
import type { Assignment } from "./stateSpace.ts";
import type { TruthState } from "./truthOf.ts";

/** A contact that never carried this much is dead, A. */
const DEAD_BELOW_A = 1e-4;

/** What the states themselves show: loads that do the wrong thing, shorts by switches, relays, dead positions. */
export function truthFindings(
  plan: ProofPlan,
  states: readonly TruthState[],
  tallies: CurrentTallies,
): readonly Finding[] {
  return [
    ...wrongLoads(plan, states),
    ...unsureLoads(plan, states),
    ...switchShorts(plan, states),
    ...relayFindings(plan, states),
    ...deadPositions(plan, tallies),
    ...states
      .filter(({ converged }) => !converged)
      .slice(0, 1)
      .map(({ stateIndex }) =>
        proofFinding(plan, {
          code: "proof-not-converged",
          severity: "not-proven",
          subject: { kind: "job", id: plan.input.job.id },
          state: plan.states[stateIndex]!.light,
        }),
      ),
  ];
}

function wrongLoads(plan: ProofPlan, states: readonly TruthState[]): readonly Finding[] {
  const found = new Map<string, Finding>();
  for (const { wrong } of states) {
    for (const { load, lit, shareRatio, state } of wrong) {
      const { ref } = plan.solver.loads[load]!.load;
      const code = lit ? "proof-load-lit-when-off" : "proof-load-dead-when-on";
      const key = `${code} ${ref}`;
      if (found.has(key)) continue;
      const subject = { kind: "load", id: ref } as const;
      const numbers = { sharePercent: 100 * shareRatio };
      found.set(key, proofFinding(plan, { code, severity: "mend", subject, numbers, state }));
    }
  }
  return [...found.values()];
}

function unsureLoads(plan: ProofPlan, states: readonly TruthState[]): readonly Finding[] {
  const found = new Map<string, Finding>();
  for (const { unsure, stateIndex } of states) {
    for (const load of unsure) {
      const { ref } = plan.solver.loads[load]!.load;
      if (found.has(ref)) continue;
      const subject = { kind: "load", id: ref } as const;
      const state = plan.states[stateIndex]!.heavy;
      found.set(
        ref,
        proofFinding(plan, { code: "proof-not-settled", severity: "not-proven", subject, state }),
      );
    }
  }
  return [...found.values()];
}

/** A combination that joins a live post to earth by contacts, fuses and wires alone. */
function switchShorts(plan: ProofPlan, states: readonly TruthState[]): readonly Finding[] {
  const { graph } = plan.solver;
  for (const { stateIndex, pulled } of states) {
    const state = plan.states[stateIndex]!;
    const positions: Assignment = {
      ...state.light.positions,
      "@flash": state.light.flash ?? "off",
    };
    const relays = new Map(pulled.map((isPulled, k) => [k, isPulled]));
    const region = regionsOf(graph, elementStates(graph, { positions, relays, opened: new Set() }));
    if (!graph.live.some((node) => (region[node]! & EARTHED) !== 0)) continue;
    const at = graph.a.findIndex(
      (a, k) =>
        graph.joining[k]!.kind === "variable" &&
        region[a]! === (RAIL | EARTHED) &&
        region[graph.b[k]!]! === (RAIL | EARTHED),
    );
    const part = plan.solver.compiled.jobNetwork.elements[Math.max(0, at)]!.of.split(":")[0]!;
    return [
      proofFinding(plan, {
        code: "proof-feed-shorted-by-switch",
        severity: "stop",
        subject: { kind: "part", id: part },
        state: state.light,
      }),
    ];
  }
  return [];
}

function relayFindings(plan: ProofPlan, states: readonly TruthState[]): readonly Finding[] {
  return plan.solver.compiled.jobNetwork.relays.flatMap(({ id }, k): Finding[] => {
    const subject = { kind: "part", id } as const;
    const stateOf = (state: TruthState | undefined) =>
      state === undefined ? null : plan.states[state.stateIndex]!.light;
    const buzzes = stateOf(states.find(({ buzzing }) => buzzing.includes(id)));
    const remembers = stateOf(states.find(({ heldDiffers }) => heldDiffers.includes(id)));
    const pulls = states.some(({ pulled }) => pulled[k]);
    return [
      ...(buzzes === null
        ? []
        : [
            proofFinding(plan, {
              code: "proof-relay-buzzes",
              severity: "mend",
              subject,
              state: buzzes,
            }),
          ]),
      ...(pulls || buzzes !== null
        ? []
        : [proofFinding(plan, { code: "proof-relay-never-pulls", severity: "mend", subject })]),
      ...(remembers === null
        ? []
        : [
            proofFinding(plan, {
              code: "proof-relay-remembers",
              severity: "advise",
              subject,
              state: remembers,
            }),
          ]),
    ];
  });
}

/** Positions that join pins, none of which ever carries anything. A contact closed in several positions speaks for all of them. */
function deadPositions(
  { input, solver, ...plan }: ProofPlan,
  tallies: CurrentTallies,
): readonly Finding[] {
  const { elements } = solver.compiled.jobNetwork;
  const carriesA = new Map<string, number>();
  elements.forEach(({ role }, k) => {
    if (role.role !== "switch") return;
    for (const position of role.closedIn) {
      const key = `${role.part} ${position}`;
      const mostA = Math.max(tallies.lastingA[k]!, tallies.startingA[k]!);
      carriesA.set(key, Math.max(carriesA.get(key) ?? 0, mostA));
    }
  });
  const alternating = new Set(solver.compiled.nets.nets.flatMap(({ nodes }) => [...nodes]));
  // A kill line only ever goes to earth: what it carries then lies inside the ignition.
  const isKill = (part: string, position: string): boolean =>
    elements.some(
      ({ role, from, to }) =>
        role.role === "switch" &&
        role.part === part &&
        role.closedIn.includes(position) &&
        (solver.compiled.nets.earthed.has(from) || solver.compiled.nets.earthed.has(to)),
    );
  const isAlternating = (part: string): boolean =>
    elements.some(
      ({ role, from, to }) =>
        role.role === "switch" &&
        role.part === part &&
        (alternating.has(from) || alternating.has(to)),
    );
  return [...carriesA].flatMap(([key, mostA]) => {
    const [part, position] = key.split(" ") as [string, string];
    if (mostA > DEAD_BELOW_A || isAlternating(part) || isKill(part, position)) return [];
    return [
      proofFinding(
        { input, solver, ...plan },
        {
          code: "proof-switch-position-dead",
          severity: "advise",
          subject: { kind: "part", id: part },
          numbers: { position },
        },
      ),
    ];
  });
}
