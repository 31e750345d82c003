import type { OperateRequest, SetFault } from "@copperwright/engine";
import { type Refused, refused } from "../api/refuse.ts";
import { storedJob } from "../api/storedJob.ts";
import type { Storage } from "../storage/index.ts";
import { type ExerciseMachine, exerciseMachine } from "./exerciseMachine.ts";

/** Machines kept laid out, for a class of learners who ask often; an exercise never changes once it is made. */
const KEPT_COUNT = 8;

type Found = ({ readonly ok: true } & ExerciseMachine) | Refused;

/** Finds the machine of an exercise; null for an id that can be none. */
export function machineStore(storage: Storage): (id: string | null) => Promise<Found> {
  const kept = new Map<string, Found>();
  return async (id) => {
    const known = id === null ? undefined : kept.get(id);
    if (known !== undefined) return known;
    const exercise = id === null ? null : await storage.exercise(id);
    if (id === null || exercise === null) return refused("no-such-exercise", {});
    const stored = await storedJob(storage, exercise.job_key, exercise.revision);
    if (!stored.ok) return stored;
    const request = JSON.parse(exercise.request) as OperateRequest;
    const faults = JSON.parse(exercise.faults) as readonly SetFault[];
    const found: Found = { ok: true, ...exerciseMachine(stored.job, request, faults) };
    kept.set(id, found);
    const [oldest] = kept.keys();
    if (kept.size > KEPT_COUNT && oldest !== undefined) kept.delete(oldest);
    return found;
  };
}
