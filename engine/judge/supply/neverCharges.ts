import { restPositions } from "../../operate/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Judge } from "../judge.ts";

/** Under this a battery is taken as neither gaining nor losing, A. */
const LEAST_SHORT_A = 0.1;

/**
 * A named state of riding in which the battery gives current however fast the engine turns. Machines whose output is not known at two speeds
 * are not asked; states that hold a button pressed are not ridden in.
 */
export const neverCharges: Judge = ({ job, compiled }) => {
  const speeds = job.parts.flatMap((part) =>
    part.kind === "generator"
      ? part.windings
          .filter(({ use }) => use !== "lighting")
          .flatMap(({ points }) => (points ?? []).map(({ speedRpm }) => speedRpm))
      : [],
  );
  const emf = compiled.jobNetwork.elements.findIndex(({ kind }) => kind === "emf");
  if (speeds.length === 0 || emf < 0) return [];
  const speedRpm = Math.max(...speeds);
  const buttons = job.parts.flatMap((part) =>
    part.kind === "switch" && part.momentary === true ? [part.id] : [],
  );
  const short = job.states
    .filter(({ engine, positions }) => {
      const isPressed = buttons.some((id) => positions[id] !== undefined);
      return engine?.mode === "running" && !isPressed;
    })
    .map((named) => {
      const positions = { ...restPositions(job, "running"), ...named.positions };
      const solution = compiled.solve({ positions, engine: { mode: "running", speedRpm } });
      const shortA = solution.converged ? -solution.elementA[emf]! : 0;
      return { named, solution, shortA };
    })
    .filter(({ shortA, solution }) => {
      return shortA > LEAST_SHORT_A && solution.supplies.rows.some(({ why }) => why === null);
    })
    .sort((a, b) => b.shortA - a.shortA);
  const [worst] = short;
  if (worst === undefined) return [];
  const source = worst.solution.supplies.rows.find(({ why }) => why === null)!;
  return [
    findingOf({
      code: "never-charges",
      severity: "mend",
      subject: { kind: "part", id: source.part },
      numbers: {
        stateName: worst.named.name,
        shortA: worst.shortA,
        speedRpm,
        givenA: source.currentA,
      },
    }),
  ];
};
