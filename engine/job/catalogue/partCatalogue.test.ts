import { describe, expect, it } from "vitest";
import { after, demoJob, smallDemos as demoJobs } from "../edit/demoJobs.fixture.ts";
import type { Job, Valued } from "../job.ts";
import { stillUnknown } from "../survey/stillUnknown.ts";
import { addFromCatalogue, foundTemplates, partCatalogue } from "./partCatalogue.ts";

/** Numbers nobody would write into a template. */
const odd = (i: number): Valued => ({ value: 7.31 + i, basis: "measured" });

const answersOf = (asks: readonly { readonly id: string }[]): Record<string, Valued> =>
  Object.fromEntries(asks.map(({ id }, i) => [id, odd(i)]));

function numbersIn(value: unknown): readonly number[] {
  if (typeof value === "number") return [value];
  if (typeof value !== "object" || value === null) return [];
  return Object.values(value).flatMap(numbersIn);
}

describe("catalogue of generic parts", () => {
  it("puts every part on a machine of either earth, with all figures and with the needed ones alone", () => {
    for (const [, job] of demoJobs) {
      for (const { id: template, asks } of partCatalogue) {
        for (const asked of [asks, asks.filter(({ isNeeded }) => isNeeded)]) {
          const made = addFromCatalogue(job, {
            template,
            ...(job.stations[0] === undefined ? {} : { station: job.stations[0].id }),
            answers: answersOf(asked),
          });
          if (!made.ok) throw new Error(`${template}: ${made.missing.join()}`);
          const part = after(job, made.operation).parts.find(({ id }) => id === made.id)!;
          const own = [job.supply.nominalV, ...asked.map((_, i) => odd(i).value)];
          expect(numbersIn(part).filter((number) => !own.includes(number))).toEqual([]);
          for (const { id } of asked) {
            const { value } = answersOf(asked)[id]!;
            expect(numbersIn(part), `${template} ${id}`).toContain(value);
          }
        }
      }
    }
  });

  it("says what is missing and adds nothing", () => {
    const [, job] = demoJobs[0]!;
    const made = addFromCatalogue(job, { template: "headlamp", answers: { firstW: odd(0) } });
    expect(made).toEqual({ ok: false, missing: ["dip beam"] });
    expect(addFromCatalogue(job, { template: "nothing", answers: {} }).ok).toBe(false);
  });

  it("leaves a load nobody measured on the list of what is unknown", () => {
    const job = demoJob("aldreth-single");
    const made = addFromCatalogue(job, { template: "horn", answers: {} });
    if (!made.ok) throw new Error("not made");
    const found = stillUnknown(after(job, made.operation)).filter(
      ({ subject }) => subject.id === made.id,
    );
    expect(found.map(({ group }) => group).sort()).toEqual(["loads", "places"]);
  });

  it("has the more positive pin of a one-way light first for either earth", () => {
    const [, job] = demoJobs[0]!;
    const firstPin = (earthPolarity: "positive" | "negative"): string => {
      const asked: Job = { ...job, supply: { ...job.supply, earthPolarity } };
      const choice = { template: "warning-led", answers: { powerW: odd(0) } };
      const made = addFromCatalogue(asked, choice);
      if (!made.ok || made.operation.op !== "add") throw new Error("not made");
      return Reflect.get(made.operation.item as object, "filaments")[0].pins[0];
    };
    expect([firstPin("negative"), firstPin("positive")]).toEqual(["L", "E"]);
  });

  it("finds by name, by group and by other words, and names no template twice", () => {
    const ids = (words: string) => foundTemplates(words).map(({ id }) => id);
    expect(ids("turn switch")).toEqual(["turn"]);
    expect(ids("brake")[0]).toBe("brake");
    expect(ids("stop light")).toContain("brake");
    expect(ids("zzz")).toEqual([]);
    expect(new Set(ids("")).size).toBe(partCatalogue.length);
  });
});
