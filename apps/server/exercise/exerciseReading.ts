import { meterReading, type Refusal } from "@copperwright/engine";
import { type ExerciseMachine, operateMachine } from "./exerciseMachine.ts";
import type { ExerciseRead } from "./exerciseSchemas.ts";

export type ExerciseReadingAnswer =
  | { readonly ok: true; readonly answer: ReturnType<typeof seenAndHeard> & { reading: unknown } }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** What a person at the machine would see, hear and read on the meter, and nothing else of what was reckoned. */
export function exerciseReading(
  machine: ExerciseMachine,
  { probes, mode, pulled = [], ...standing }: ExerciseRead,
): ExerciseReadingAnswer {
  const isFuse = (id: string) =>
    machine.job.parts.some((one) => one.id === id && one.kind === "fuse");
  const operated = operateMachine(machine, standingOf(standing), pulled.filter(isFuse));
  if (!operated.ok) return operated;
  const [red, black] = probes;
  const { job, request } = operated;
  const metered = meterReading(job, machine.conductors, request, { red, black, mode });
  if (!metered.ok) return metered;
  return { ok: true, answer: { ...seenAndHeard(operated), reading: metered.reading } };
}

function seenAndHeard({
  solution,
  fusesGone,
}: Extract<ReturnType<typeof operateMachine>, { ok: true }>) {
  const { lamps, loads, relays } = solution;
  return {
    lamps: lamps.map(({ part, filament, lit, relativeLight }) => ({
      part,
      filament,
      lit,
      relativeLight,
    })),
    loads: loads.map(({ part, element, works }) => ({ part, element, works })),
    relays: relays.map(({ part, pulled, buzzing }) => ({ part, pulled, buzzing })),
    fusesGone,
  };
}

type Standing = Omit<ExerciseRead, "probes" | "mode" | "pulled">;

/** Fields that were sent; an absent one leaves the exercise's own standing as it is. */
export function standingOf({ set, engine, flash }: Standing) {
  const { mode, speedRpm } = engine ?? {};
  return {
    ...(set === undefined ? {} : { set }),
    ...(mode === undefined
      ? {}
      : { engine: { mode, ...(speedRpm === undefined ? {} : { speedRpm }) } }),
    ...(flash === undefined ? {} : { flash }),
  };
}
