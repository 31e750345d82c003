import { type Finding, messageOf, remedyMessageOf } from "../messages/index.ts";
import { figure } from "../tables/index.ts";
import { bundlesInUse } from "./bundlesInUse.ts";
import { chargeFaults } from "./chargeFaults.ts";
import { coverageOf } from "./coverageOf.ts";
import { inUse } from "./inUse.ts";
import { inUseFindings } from "./inUseFindings.ts";
import { proofFinding } from "./proofFinding.ts";
import type { ProofOptions } from "./proofInput.ts";
import { chargingVolts, type ProofPlan } from "./proofPlan.ts";
import type { MergedFirst, ProofWork, SecondPart } from "./provePart.ts";
import type {
  ChargeFault,
  ProofVerdict,
  ProvedBundle,
  ProvedFuse,
  ProveResult,
} from "./proveResult.ts";
import { startingFindings } from "./startingFindings.ts";
import { strayRows } from "./strayRows.ts";
import { toleranceOf } from "./toleranceOf.ts";
import { truthFindings } from "./truthFindings.ts";
import { truthRows } from "./truthRows.ts";
import { wireFindings } from "./wireFindings.ts";
import { withRemedies } from "./wireRemedies.ts";

/** The parts put together: rows sorted by id, findings, verdict, and what was covered. */
export function provedResult(
  { plan, places }: ProofWork,
  first: MergedFirst,
  seconds: readonly SecondPart[],
  options: ProofOptions,
): ProveResult {
  const judged = seconds
    .flatMap(({ wires }) => wires.judged)
    .sort((a, b) => (a.survival.wire < b.survival.wire ? -1 : 1));
  const corners = seconds.flatMap((part) => part.corners).sort((a, b) => a.index - b.index);
  const stray = strayRows(plan, first.strays);
  const bundles = bundlesInUse(plan, first.tallies);
  const charge = chargeFaults(plan);
  const used = inUse(plan, first.tallies);
  const fuses = fuseRows(plan, first, seconds);
  const findings = [
    ...truthFindings(plan, first.states, first.tallies),
    ...stray.findings,
    ...(options.tryRemedies === false
      ? wireFindings(plan, judged)
      : withRemedies(plan, first.tallies, judged, wireFindings(plan, judged))),
    ...bundleFindings(plan, bundles),
    ...inUseFindings(plan, used),
    ...startingFindings(plan, first.tallies),
    ...fuseFindings(plan, fuses),
    ...chargeFindings(plan, charge),
  ];
  return {
    verdict: verdictOf(findings),
    findings: findings.map(spoken),
    coverage: coverageOf({ plan, places }, first, seconds, options.seed ?? 1),
    truth: truthRows(plan, first.states),
    stray: stray.rows,
    wires: seconds.flatMap(({ wires }) => wires.rows).sort((a, b) => (a.wire < b.wire ? -1 : 1)),
    fuses,
    bundles,
    inUse: used,
    charge,
    tolerance: toleranceOf(plan, first, { judged, corners }, options),
  };
}

function spoken(finding: Finding): ProveResult["findings"][number] {
  const remedies = finding.remedies.map((remedy) => {
    const message = remedyMessageOf(finding, remedy);
    return message === null ? remedy : { ...remedy, message };
  });
  return { ...finding, remedies, message: messageOf(finding) };
}

function verdictOf(findings: readonly Finding[]): ProofVerdict {
  const has = (severity: Finding["severity"]): boolean =>
    findings.some((one) => one.severity === severity);
  if (has("stop")) return "stop";
  if (has("not-proven")) return "not-proven";
  return has("mend") ? "mend" : "fit";
}

function fuseRows(
  { input, solver }: ProofPlan,
  { tallies }: MergedFirst,
  seconds: readonly SecondPart[],
): readonly ProvedFuse[] {
  const { elements } = solver.compiled.jobNetwork;
  const elementOf = new Map(
    elements.flatMap(({ kind, of }, k) => (kind === "fuse" ? [[of, k] as const] : [])),
  );
  const ids = [
    ...new Set(seconds.flatMap(({ screened }) => Object.keys(screened.firstToOpen))),
  ].sort();
  return ids.map((fuse) => ({
    fuse,
    lastingA: tallies.lastingA[elementOf.get(fuse)!] ?? 0,
    firstToOpenCount: seconds.reduce(
      (sum, { screened }) => sum + (screened.firstToOpen[fuse] ?? 0),
      0,
    ),
    overlapsWith: [
      ...new Set(seconds.flatMap(({ screened }) => screened.overlaps[fuse] ?? [])),
    ].sort(),
    dies: input.protection.dies.get(fuse) ?? [],
  }));
}

function bundleFindings(plan: ProofPlan, bundles: readonly ProvedBundle[]): readonly Finding[] {
  return bundles
    .filter(({ conductorC, limitC }) => conductorC === null || conductorC > limitC)
    .map(({ hottestWire, conductorC, limitC, stretch, state }) => {
      const { insulation } = plan.input.conductors.get(hottestWire)!;
      const base = figure("insulations", insulation, "adiabaticEndC");
      return proofFinding(plan, {
        code: "proof-bundle-hot",
        // Where the air alone is too hot for the insulation the wire's place is at fault, not its load.
        severity: ambientOf(plan, stretch) >= limitC ? "mend" : "stop",
        subject: { kind: "wire", id: hottestWire },
        numbers: { conductorC: conductorC ?? base.value, stretch },
        limit: { ...base, value: limitC },
        state,
      });
    });
}

const ambientOf = ({ input }: ProofPlan, id: string): number =>
  input.routed.stretches.find((stretch) => stretch.id === id)?.ambientC ?? 0;

/** Engine and lights lost together: a choice somebody has to confirm. */
function fuseFindings(plan: ProofPlan, fuses: readonly ProvedFuse[]): readonly Finding[] {
  const { job } = plan.input;
  const kindOf = new Map(job.parts.map((part) => [part.id, part.kind]));
  return fuses.flatMap(({ fuse, dies }) => {
    const parts = dies.map((ref) => kindOf.get(ref.split(":")[0]!));
    const engine = parts.some((kind) => kind === "coil" || kind === "module");
    const lights = parts.some((kind) => kind === "lamp");
    if (!engine || !lights) return [];
    return [
      proofFinding(plan, {
        code: "proof-engine-and-lights",
        severity: "advise",
        subject: { kind: "fuse", id: fuse },
        numbers: { dies: dies.join(", ") },
      }),
    ];
  });
}

/** Loads stand a tenth more than the regulator holds; without one, than a charged battery's usual volts over nominal. Our own bounds. */
const OVER_SET_RATIO = 1.1;
const CHARGING_RATIO = 1.2;

function chargeFindings(plan: ProofPlan, faults: readonly ChargeFault[]): readonly Finding[] {
  const { job } = plan.input;
  const limitV =
    OVER_SET_RATIO * (chargingVolts(plan.input) ?? CHARGING_RATIO * job.supply.nominalV);
  return faults.flatMap(({ fault, largestV, solved, reproduce }): Finding[] => {
    const subject = { kind: "supply", id: plan.input.job.id } as const;
    if (!solved) {
      const numbers = { fault };
      return [
        proofFinding(plan, {
          code: "proof-charge-not-solved",
          severity: "advise",
          subject,
          numbers,
          reproduce,
        }),
      ];
    }
    if (largestV === null || largestV <= limitV) return [];
    return [
      proofFinding(plan, {
        code: "proof-charge-over-volts",
        severity: "mend",
        subject,
        numbers: { fault, largestV },
        limit: {
          value: limitV,
          unit: "V",
          table: "job",
          row: job.id,
          source: "job",
          place: "set volts of the regulator",
          confidence: "own",
        },
        reproduce,
      }),
    ];
  });
}
