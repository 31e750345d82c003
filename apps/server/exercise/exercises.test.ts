import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { type ApiBench, EDITOR, LEARNER, OWNER, onBothStorages } from "../api/apiBench.fixture.ts";

const text = readFileSync("demos/aldreth-single.json", "utf8");

async function withExercise(bench: ApiBench, faults: readonly unknown[]): Promise<string> {
  const { key } = (await bench.post("/jobs", { from: "text", text })).body;
  const exercise = { title: "It was dark", request: { set: { LSW: "H" } }, faults };
  const made = await bench.post(`/jobs/${key}/exercises`, exercise, EDITOR);
  expect(made.status).toBe(200);
  return made.body.id;
}

const isLit = (answer: { body: { lamps: { part: string; lit: boolean }[] } }, part: string) =>
  answer.body.lamps.some((lamp) => lamp.part === part && lamp.lit);
const volts = (red: string, black = "earth", set = {}) => ({
  probes: [red, black],
  mode: "volts",
  set,
});

onBothStorages((open) => {
  test("an open wire is found with the meter, and no answer to the learner names it", async () => {
    const bench = await open();
    const id = await withExercise(bench, [{ kind: "open", place: "A17" }]);
    const seen: string[] = [];
    const read = async (body: unknown) => {
      const answer = await bench.post(`/exercises/${id}/read`, body, LEARNER);
      expect(answer.status).toBe(200);
      seen.push(JSON.stringify(answer.body));
      return answer;
    };
    const list = await bench.get("/exercises", LEARNER);
    seen.push(JSON.stringify(list.body));
    expect(list.body.exercises).toMatchObject([{ id, title: "It was dark", limitMinutes: null }]);

    const dark = await read(volts("LSW.TL", "earth", { LSW: "H", DIP: "MAIN" }));
    expect(isLit(dark, "HEAD")).toBe(true);
    expect(isLit(dark, "REAR")).toBe(false);
    // Positive earth: the feed stands below the frame by nearly the whole battery.
    expect(dark.body.reading.value).toBeLessThan(-5);
    bench.time.nowMs += 5 * 60_000;
    const after = await read(volts("J4.1", "earth", { LSW: "H" }));
    expect(Math.abs(after.body.reading.value ?? 0)).toBeLessThan(0.1);
    expect(after.body.minutes).toBe(5);
    const across = await read({ ...volts("LSW.TL", "J4.1", { LSW: "OFF" }), mode: "ohms" });
    expect(across.body.reading.value ?? Number.POSITIVE_INFINITY).toBeGreaterThan(1);
    for (const answer of seen) expect(answer).not.toMatch(/A17|fault/);

    const wrong = await bench.post(
      `/exercises/${id}/guess`,
      { kind: "open", place: "A13" },
      LEARNER,
    );
    expect(wrong.body).toEqual({ isRight: false, isNear: false, minutes: 5 });
    bench.time.nowMs += 1000;
    const near = await bench.post(
      `/exercises/${id}/guess`,
      { kind: "open", place: "J4.1" },
      LEARNER,
    );
    expect(near.body).toMatchObject({ isRight: false, isNear: true });
    bench.time.nowMs += 1000;
    const right = await bench.post(
      `/exercises/${id}/guess`,
      { kind: "open", place: "A17" },
      LEARNER,
    );
    expect(right.body).toMatchObject({ isRight: true, minutes: 5 });
    for (const visitor of [LEARNER, EDITOR]) {
      expect((await bench.get(`/exercises/${id}/answer`, visitor)).status).toBe(403);
    }
    const answer = await bench.get(`/exercises/${id}/answer`, OWNER);
    expect(answer.body.faults).toEqual([{ kind: "open", place: "A17" }]);
    expect(answer.body.guesses.map(({ isRight }: { isRight: boolean }) => isRight)).toEqual([
      false,
      false,
      true,
    ]);
  });

  test("a short takes its fuse, and the meter is read on the machine as it then is", async () => {
    const bench = await open();
    const id = await withExercise(bench, [{ kind: "short", a: "LSW.TL", ohm: 0.001 }]);
    const read = await bench.post(
      `/exercises/${id}/read`,
      volts("F1.OUT", "earth", { LSW: "H" }),
      LEARNER,
    );
    expect(read.body.fusesGone).toEqual(["F1"]);
    expect(isLit(read, "HEAD")).toBe(false);
    const at = (mode: string, set: Record<string, string>) =>
      bench.post(`/exercises/${id}/read`, {
        probes: ["LSW.TL", "earth"],
        mode,
        set,
        pulled: ["F1", "F2"],
      });
    const cold = await at("ohms", { LSW: "OFF" });
    expect(cold.body.reading.value).toBeLessThan(0.01);
    expect(cold.body.fusesGone).toEqual([]);
  });

  test("a corroded joint dims the lamp behind it; two wires swapped light the wrong one", async () => {
    const bench = await open();
    const dim = await withExercise(bench, [{ kind: "corroded", place: "A16", ohm: 5 }]);
    const swap = await withExercise(bench, [{ kind: "swapped", wires: ["A19a", "A20a"] }]);
    const light = async (id: string, set: Record<string, string>) =>
      (await bench.post(`/exercises/${id}/read`, volts("PIL.L", "earth", set))).body.lamps;
    const pilot = (await light(dim, { LSW: "L" })).find(
      (lamp: { part: string }) => lamp.part === "PIL",
    );
    expect(pilot.relativeLight).toBeLessThan(0.9);
    const rear = (await light(swap, { LSW: "OFF", STP: "ON" })).filter(
      (lamp: { part: string }) => lamp.part === "REAR",
    );
    expect(rear.filter(({ lit }: { lit: boolean }) => lit)).toMatchObject([{ filament: "TAIL-E" }]);
  });

  test("a fault the job has no place for is refused; a wrong lead is refused without naming the fault", async () => {
    const bench = await open();
    const { key } = (await bench.post("/jobs", { from: "text", text })).body;
    const exercise = (faults: unknown) => ({ title: "t", request: {}, faults });
    const make = (faults: unknown) => bench.post(`/jobs/${key}/exercises`, exercise(faults));
    expect((await make([{ kind: "open", place: "A99" }])).body).toMatchObject({
      code: "exercise-misfit",
      refusals: [{ code: "state-unknown-place" }],
    });
    expect((await make([])).body.code).toBe("body-misfit");
    expect((await make([{ kind: "open", place: "../A1" }])).body.code).toBe("body-misfit");
    expect((await make([{ kind: "open", place: "=cmd()" }])).body.code).toBe("body-misfit");
    const isFault = {
      request: { open: ["A1"] },
      title: "t",
      faults: [{ kind: "open", place: "A17" }],
    };
    expect((await bench.post(`/jobs/${key}/exercises`, isFault)).body.code).toBe("body-misfit");
    const { id } = (await make([{ kind: "open", place: "A17" }])).body;
    const wrong = await bench.post(`/exercises/${id}/read`, volts("NO.PIN"), LEARNER);
    expect(wrong.body.code).toBe("reading-refused");
    expect(JSON.stringify(wrong.body)).not.toContain("A17");
    const learner = await bench.post(`/jobs/${key}/exercises`, exercise([]), LEARNER);
    expect(learner.status).toBe(403);
  });
});
