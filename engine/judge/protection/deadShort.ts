import type { WorkingStep } from "../../messages/index.ts";
import { DEAD_SHORT_OHM, EARTH, fuseOpensS, type QuickState } from "../../operate/index.ts";
import type { Guard } from "../../protect/index.ts";
import type { Conductor } from "../../route/index.ts";
import { figure } from "../../tables/index.ts";
import type { Design } from "../judge.ts";
import { operateCommand } from "../stateArguments.ts";

/** What a dead short at the far end of a wire draws, how long its copper stands that, and how long its fuse may take. */
export interface DeadShort {
  readonly numbers: Readonly<Record<string, number | null>>;
  readonly working: readonly WorkingStep[];
  readonly reproduce: readonly string[] | null;
}

const NONE: DeadShort = { numbers: {}, working: [], reproduce: null };

/**
 * The far end pressed to earth, in the positions the guard was found in or those in which the wire carries most:
 *
 *   t = (k · S / I)², from class temperature to the short-time end of the insulation
 */
export function deadShort(design: Design, wire: string, guard: Guard): DeadShort {
  const { compiled, conductors, job } = design;
  const conductor = conductors.get(wire)!;
  if (compiled.jobNetwork.earth === null || guard.via !== null) return NONE;
  const fed = design.worst.conductors.get(wire)?.state;
  const states = [stateOf(design, guard), ...(fed == null ? [] : [fed])];
  const place = compiled.elementOfConductor.get(wire);
  if (place === undefined || guard.sourceKind !== "battery") return NONE;
  const ends = [conductor.from, conductor.to.replace(/~$/, "")];
  const tries = states.flatMap((state) =>
    ends.map((pin) => {
      const short = [{ a: pin, b: EARTH, ohm: DEAD_SHORT_OHM }];
      const shorted: QuickState = { ...state, engine: { mode: "stopped" }, short };
      const solution = compiled.solve(shorted);
      return { shorted, currentA: Math.abs(solution.elementA[place]!), ok: solution.converged };
    }),
  );
  const worst = tries.reduce((most, one) => (one.currentA > most.currentA ? one : most));
  if (!worst.ok || worst.currentA <= (guard.sumA ?? 0)) return NONE;
  const stand = standS(conductor, worst.currentA);
  const fuse = job.parts.find(({ id }) => id === guard.cut[0]);
  const opensMaxS =
    fuse?.kind === "fuse" && guard.cut.length === 1 ? fuseOpensS(fuse, worst.currentA).maxS : null;
  return {
    numbers: { shortA: worst.currentA, standS: stand.timeS, opensMaxS },
    working: [stand.step],
    reproduce: operateCommand(job, worst.shorted),
  };
}

function stateOf({ job }: Design, { positions }: Guard): QuickState {
  const switches = new Set(job.parts.filter(({ kind }) => kind === "switch").map(({ id }) => id));
  const held = Object.keys(positions).filter((id) => positions[id] === "pulled");
  const relays = new Set(job.parts.filter(({ kind }) => kind === "relay").map(({ id }) => id));
  const set = Object.entries(positions).filter(([id, at]) => switches.has(id) && at !== "any");
  return {
    positions: Object.fromEntries(set),
    engine: { mode: "stopped" },
    flash: "on",
    held: held.filter((id) => relays.has(id)).sort(),
  };
}

/** Time to the short-time end temperature: right up to some seconds, on the safe side beyond. */
function standS(
  conductor: Pick<Conductor, "insulation" | "areaMm2">,
  currentA: number,
): { readonly timeS: number; readonly step: WorkingStep } {
  const row = conductor.insulation === "xlpe" ? "xlpe-90-250" : "pvc-70-160";
  const k = figure("kFactors", row, "value");
  const endC = figure("kFactors", row, "endC").value;
  const startC = figure("kFactors", row, "startC").value;
  const timeS = (k.value * conductor.areaMm2) ** 2 / currentA ** 2;
  return {
    timeS,
    step: {
      name: `time from ${startC} to ${endC} °C with a dead short at the far end`,
      equation: "t = (k S / I)^2",
      inputs: [
        { name: "k", value: k.value, unit: "A s0.5/mm2", from: `tables/kFactors ${row}` },
        { name: "S", value: conductor.areaMm2, unit: "mm2", from: "strands counted" },
        { name: "I", value: currentA, unit: "A", from: "the network with the short" },
      ],
      value: timeS,
      unit: "s",
    },
  };
}
