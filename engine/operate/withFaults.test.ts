import { describe, expect, test } from "vitest";
import { benchConductors, benchJob } from "./benchForTests.ts";
import { operateJob } from "./operateJob.ts";
import { type SetFault, withFaults } from "./withFaults.ts";

const job = benchJob({ colours: { scheme: "none", letters: "iec" } });
const conductors = benchConductors(job);

function solved(faults: readonly SetFault[], set: Record<string, string>) {
  const faulted = withFaults(job, { set }, faults);
  if (!faulted.ok) throw new Error(faulted.refusals[0]?.message);
  const answer = operateJob(faulted.job, conductors, faulted.request);
  if (!answer.ok) throw new Error(answer.refusals[0]?.message);
  return answer.solution;
}
const litOf = (faults: readonly SetFault[], set: Record<string, string>) =>
  solved(faults, set)
    .lamps.filter(({ lit }) => lit)
    .map(({ part, filament }) => `${part}:${filament}`);

describe("faults set on the bench", () => {
  const toTail = job.wires.find(({ to }) => to === "REAR.TAIL");
  const toStop = job.wires.find(({ to }) => to === "REAR.STOP");

  test("no faults: the request as it was, the job itself", () => {
    const answer = withFaults(job, { aged: true }, []);
    expect(answer.ok && answer.job).toBe(job);
    expect(answer.ok && answer.request.aged).toBe(true);
  });

  test("tail and brake wires swapped at the lamp: the switch for one lights the other", () => {
    expect(toTail && toStop).toBeTruthy();
    const swap: SetFault = { kind: "swapped", wires: [toTail!.id, toStop!.id] };
    const right = litOf([], { TSW: "ON" });
    expect(right).toContain("REAR:TAIL-E");
    expect(right).not.toContain("REAR:STOP-E");
    const wrong = litOf([swap], { TSW: "ON" });
    expect(wrong).toContain("REAR:STOP-E");
    expect(wrong).not.toContain("REAR:TAIL-E");
    expect(litOf([swap, swap], { TSW: "ON" })).toEqual(right);
  });

  test("two resistances at one place add; a swap with a wire that is not there is refused", () => {
    const place = toTail!.id;
    const twice = solved(
      [
        { kind: "corroded", place, ohm: 2 },
        { kind: "corroded", place, ohm: 3 },
      ],
      {},
    );
    expect(twice.state.extraOhm[place]).toBe(5);
    expect(withFaults(job, {}, [{ kind: "swapped", wires: [place, "none"] }]).ok).toBe(false);
  });
});
