import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type WireQuestion, wireAnswer } from "./wireAnswer.ts";

const answered = (text: string, question: WireQuestion = {}) => {
  const result = wireAnswer(text, question);
  if (!result.ok) throw new Error(result.refusals[0]?.message);
  return result.answer;
};

describe("reading", () => {
  // The acceptance scenario "wire naming", areas to 0.001 mm².
  test.each([
    ["32/0.20", 1.005],
    ["28/0.30", 1.979],
    ["65/0.30", 4.595],
    ["14/0.30", 0.99],
  ])("%s is %f mm²", (text, areaMm2) => {
    expect(Math.abs(answered(text).areaMm2! - areaMm2)).toBeLessThan(0.001);
  });

  test("a copper diameter gives a range and a question, never one area", () => {
    const answer = answered("copper 1.2 mm");
    expect(answer.areaMm2).toBeNull();
    expect(answer.areaRangeMm2![0]).toBeCloseTo(0.735, 3);
    expect(answer.areaRangeMm2![1]).toBeCloseTo(1.018, 3);
    expect(answer.ask).toMatch(/strands/);
    expect(answer.why.join()).toMatch(/areaMm2/);
  });

  test("what cannot be read is refused with what to do", () => {
    const result = wireAnswer("=1+1");
    expect(result.ok).toBe(false);
    if (!result.ok) expect(result.refusals[0]).toMatchObject({ pointer: "DESCRIPTION" });
  });
});

describe("6 V against 12 V: 24 W through the same wire", () => {
  // The acceptance scenario "6 V and 12 V": 4.0 A and 2.0 A; the drop doubles, its per cent grows fourfold.
  const at = (volts: number) =>
    answered("32/0.20 thin", { ampsA: 24 / volts, volts, lengthM: 2 }).drop!;

  test("drop doubles, per cent is fourfold", () => {
    expect(at(6).v / at(12).v).toBeCloseTo(2, 12);
    expect(at(6).percent! / at(12).percent!).toBeCloseTo(4, 12);
  });

  test("the limit in volts halves", () => {
    expect(at(6).limitV! / at(12).limitV!).toBeCloseTo(0.5, 12);
  });
});

describe("volt drop", () => {
  test("there and back is twice one way", () => {
    const asked = { ampsA: 5, lengthM: 1.5, volts: 12 };
    const there = answered("2 mm2 thin", { ...asked, oneWay: true }).drop!;
    const both = answered("2 mm2 thin", asked).drop!;
    expect(both.v / there.v).toBeCloseTo(2, 12);
    expect(there.lengthMm).toBe(1500);
  });

  // 1 m of 1 mm² thin wall at 16.5 A: at most 0.36 V/m hot at 66 °C (worked apart); cold it is 18.5 mΩ · 16.5 A = 0.305 V.
  test("one metre of 1 mm² at 16.5 A", () => {
    const { drop } = answered("32/0.20 thin", { ampsA: 16.5, lengthM: 1, oneWay: true });
    expect(drop?.v).toBeCloseTo(0.30525, 9);
    expect(drop).toMatchObject({ percent: null, limitV: null, ok: null });
  });

  test("a limit in volts or per cent decides", () => {
    const asked = { ampsA: 10, lengthM: 1, oneWay: true, volts: 12 };
    expect(answered("32/0.20 thin", { ...asked, drop: { limitV: 0.2 } }).drop?.ok).toBe(true);
    expect(answered("32/0.20 thin", { ...asked, drop: { limitPercent: 1 } }).drop?.ok).toBe(false);
  });

  test("law: the drop is in proportion to amps and metres", () => {
    const some = fc.double({ min: 0.1, max: 50, noNaN: true });
    fc.assert(
      fc.property(some, some, (ampsA, lengthM) => {
        const one = answered("28/0.30 thin", { ampsA, lengthM }).drop!.v;
        const more = answered("28/0.30 thin", { ampsA: 2 * ampsA, lengthM: lengthM / 4 }).drop!.v;
        expect(more / one).toBeCloseTo(0.5, 9);
      }),
      { numRuns: 20 },
    );
  });
});

describe("ratings", () => {
  test("an area that several makes hold gives all, and the lowest governs", () => {
    const answer = answered("1 mm2");
    const inPlace = answer.ratings.filter(({ kind }) => kind === "in this place");
    expect(new Set(inPlace.map(({ make }) => make)).size).toBeGreaterThan(1);
    expect(answer.governs?.currentA).toBe(Math.min(...inPlace.map(({ currentA }) => currentA)));
    expect(answer.ask).not.toBeNull();
  });

  test("old and new lists stand side by side: 8.75 and 16.5 A", () => {
    const lists = answered("1 mm2").ratings.filter(({ kind }) => kind === "list");
    expect(lists.map(({ currentA }) => currentA)).toEqual(expect.arrayContaining([8.75, 16.5]));
  });

  test("a bundle lowers what governs", () => {
    const alone = answered("28/0.30 thin", { ambientC: 60 }).governs!.currentA;
    const among = answered("28/0.30 thin", { ambientC: 60, bundle: 12 }).governs!.currentA;
    expect(among / alone).toBeLessThan(0.44);
  });
});

// British wiring-rules constant 115 for PVC: 1.005 mm² takes (115 x 1.005)² = 13 360 A²s.
test("what a short may let through", () => {
  expect(answered("32/0.20 thin").adiabaticA2s).toBeCloseTo((115 * 1.00531) ** 2, -1);
});

test("numbers that cannot be are refused, not worked with", () => {
  const wrong: WireQuestion[] = [
    { ampsA: -1 },
    { lengthM: Number.NaN },
    { volts: 0 },
    { bundle: 1.5 },
    { drop: { limitPercent: 3 } },
    { volts: 12, drop: { limitV: 0 } },
  ];
  for (const question of wrong) expect(wireAnswer("32/0.20 thin", question).ok).toBe(false);
});
