import type { OperateRequest, SetFault } from "@copperwright/engine";
import { type ServerAnswer, server } from "../../../server/serverApi.ts";
import { useBench } from "../../../store/benchStore.ts";
import { clearFaults, useTry } from "../tryStore.ts";
import { type Guessed, type HuntRead, useHunt } from "./huntStore.ts";

/** An exercise as anybody may see it. */
export interface Exercise {
  readonly id: string;
  readonly key: string;
  readonly title: string;
  readonly request: Pick<OperateRequest, "set" | "engine">;
  readonly limitMinutes: number | null;
  readonly madeBy: string;
  readonly madeAt: string;
}

export type Guess =
  | { readonly kind: "open" | "corroded"; readonly place: string }
  | { readonly kind: "short"; readonly a: string; readonly b: string }
  | { readonly kind: "swapped"; readonly wires: readonly [string, string] };

const AWAY = "Exercises need the bench's server, and it cannot be reached.";

const trouble = <T>(answer: Exclude<ServerAnswer<T>, { kind: "ok" }>): string =>
  answer.kind === "away"
    ? AWAY
    : [answer.refusal.message, answer.refusal.refusals?.[0]?.message].filter(Boolean).join(" ");

/** Those of one job; a sentence where the server cannot be asked. */
export async function listExercises(key: string): Promise<readonly Exercise[] | string> {
  const answer = await server<{ exercises: readonly Exercise[] }>("GET", "/exercises");
  if (answer.kind !== "ok") return trouble(answer);
  return answer.value.exercises.filter((one) => one.key === key);
}

/** Gives what is set on the bench to the server and clears the bench. @returns null when done, else why not. */
export async function hideFault(
  key: string,
  title: string,
  limitMinutes: number,
): Promise<string | null> {
  const { faults, set, engine, battery, aged } = useTry.getState();
  const { document } = useBench.getState();
  if ((document?.pending.length ?? 0) > 0) {
    return "The server has not yet saved the last change of this job. Try again in a moment.";
  }
  const body = {
    title,
    limitMinutes,
    request: { set, engine, battery, aged },
    faults: faults as readonly SetFault[],
  };
  const answer = await server<{ id: string }>("POST", `/jobs/${key}/exercises`, body);
  if (answer.kind !== "ok") return trouble(answer);
  clearFaults();
  return null;
}

/** Puts the machine as the rider brought it; what is broken stays with the server. */
export async function beginHunt(exercise: Exercise): Promise<void> {
  const { set = {}, engine = { mode: "stopped" } } = exercise.request;
  useTry.setState({ set, engine, faults: [], atS: null, red: null, black: null, mode: "volts" });
  useHunt.setState({ exercise, read: null, trouble: null, guesses: [], pulled: [] });
}

/** Asks what is to be seen now. An older answer never overwrites a newer one. */
export async function readHunt(ground: string): Promise<void> {
  const { exercise } = useHunt.getState();
  if (exercise === null) return;
  const { set, engine, mode, red, black } = useTry.getState();
  const mine = ++asked;
  const probes = red !== null && black !== null ? [red, black] : [ground, ground];
  const { pulled } = useHunt.getState();
  const body = { set, engine, flash: "on", pulled, probes, mode };
  const answer = await server<HuntRead>("POST", `/exercises/${exercise.id}/read`, body);
  if (mine !== asked || useHunt.getState().exercise !== exercise) return;
  if (answer.kind === "ok") {
    const gone = [...new Set([...pulled, ...answer.value.fusesGone])];
    useHunt.setState({ read: answer.value, trouble: null, pulled: gone });
  }
  if (answer.kind !== "ok") useHunt.setState({ trouble: trouble(answer) });
}

/** A new fuse in place of one that went; if the fault is still there it goes again. */
export async function fitFuse(fuse: string, ground: string): Promise<void> {
  useHunt.setState(({ pulled }) => ({ pulled: pulled.filter((one) => one !== fuse) }));
  await readHunt(ground);
}

let asked = 0;

export async function sendGuess(guess: Guess, words: string): Promise<void> {
  const { exercise } = useHunt.getState();
  if (exercise === null) return;
  const answer = await server<Omit<Guessed, "words">>(
    "POST",
    `/exercises/${exercise.id}/guess`,
    guess,
  );
  if (answer.kind !== "ok") useHunt.setState({ trouble: trouble(answer) });
  else {
    useHunt.setState(({ guesses }) => ({ guesses: [...guesses, { ...answer.value, words }] }));
  }
}
