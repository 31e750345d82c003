import { type OperateSolution, operateJob } from "../operate/index.ts";
import type { SupplyModel } from "./supplyModel.ts";

/** A lighting coil in one state: watts asked and watts had. */
export interface CoilBalance {
  readonly generator: string;
  readonly state: string;
  /** Rated watts of the coil; null: not stated. */
  readonly coilW: number | null;
  /** Rated watts of the lamps that are on. */
  readonly askedW: number;
  readonly rows: readonly {
    readonly speedRpm: number;
    /** Across the brightest lamp, rms. */
    readonly v: number;
    readonly takenW: number;
    /** Light of the lamp that has least, over its rated light. */
    readonly relativeLight: number;
  }[];
}

const SPEEDS = [1500, 3000, 5000] as const;

/** Every lighting coil over every state that lights it, in rms. Empty where the machine has none. */
export function lightingCoils({
  job,
  conductors,
  compiled,
  states,
}: SupplyModel): readonly CoilBalance[] {
  return compiled.nets.nets
    .filter(({ use }) => use === "lighting")
    .flatMap(({ generator }) =>
      states.flatMap((state): CoilBalance[] => {
        const solved = SPEEDS.flatMap((speedRpm) => {
          const operated = operateJob(job, conductors, {
            set: state.positions,
            engine: { mode: "running", speedRpm },
          });
          return operated.ok ? [{ speedRpm, solution: operated.solution }] : [];
        });
        const fastest = solved.at(-1);
        if (fastest === undefined) return [];
        const on = lit(fastest.solution);
        if (on.length === 0) return [];
        const names = new Set(on.map(({ part, filament }) => `${part}:${filament}`));
        return [
          {
            generator,
            state: state.id,
            coilW: coilWatts(job, generator),
            askedW: on.reduce((sumW, { ratedW }) => sumW + ratedW, 0),
            rows: solved.map(({ speedRpm, solution }) => {
              const rows = solution.lamps.filter((row) => names.has(`${row.part}:${row.filament}`));
              return {
                speedRpm,
                v: Math.max(...rows.map((row) => Math.abs(row.v))),
                takenW: rows.reduce((sumW, { powerW }) => sumW + powerW, 0),
                relativeLight: Math.min(...rows.map((row) => row.relativeLight)),
              };
            }),
          },
        ];
      }),
    );
}

const lit = ({ lamps }: OperateSolution) =>
  lamps.filter((row) => row.kind === "ac" && row.why === undefined && row.lit);

function coilWatts(job: SupplyModel["job"], generator: string): number | null {
  const part = job.parts.find(({ id }) => id === generator);
  if (part?.kind !== "generator") return null;
  return part.windings.find(({ use }) => use === "lighting")?.ratedW ?? null;
}
