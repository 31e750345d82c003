import { describe, expect, it } from "vitest";
import { compileNetwork } from "./compileNetwork.ts";
import { CLOSED_OHM, OPEN_OHM } from "./feederNetwork.ts";
import type { Branch, Law, Network, RelayRule } from "./network.ts";
import { settleFrom, settleRelays } from "./settleRelays.ts";

const ohm = (value: number): Law => ({ kind: "ohm", ohm: value });
const OPEN = ohm(OPEN_OHM);

/**
 * Node 1 is the supply, 2 the coil feed behind `coilFeedOhm`; branch 3 is the relay's own contact, from 1 to 3.
 * Coil 90 Ω from 2 to 0, load 10 Ω from 3 to 0.
 */
function bench(emfV: number, coilFeedOhm: number, extra: Branch[] = []): Network {
  return {
    nodeCount: 5,
    leakOhm: 1e9,
    branches: [
      { id: "source", a: 1, b: 0, law: { kind: "emf", emfV, internalOhm: 0.01 } },
      { id: "coil feed", a: 1, b: 2, law: ohm(coilFeedOhm) },
      { id: "coil", a: 2, b: 0, law: ohm(90) },
      { id: "contact", a: 1, b: 3, law: OPEN },
      { id: "load", a: 3, b: 0, law: ohm(10) },
      { id: "spare", a: 3, b: 4, law: OPEN },
      ...extra,
    ],
  };
}

const rule: RelayRule = {
  id: "one",
  coilA: 2,
  coilB: 0,
  pullInV: 7.2,
  dropOutV: 2.4,
  closedWhenPulled: [3],
  closedWhenReleased: [],
  closedOhm: CLOSED_OHM,
  openOhm: OPEN_OHM,
  held: false,
};

describe("settleRelays", () => {
  it("pulls on full volts and feeds its load", () => {
    const { fromReleased, fromPulled, differ } = settleRelays(compileNetwork(bench(12, 0.1)), [
      rule,
    ]);
    expect(fromReleased.pulled).toEqual([true]);
    expect(fromReleased.roundCount).toBe(2);
    expect(fromPulled.roundCount).toBe(1);
    expect(differ).toBe(false);
    expect(fromReleased.solution.nodeV[3]).toBeCloseTo((12 * 10) / 10.014, 1);
    expect(fromReleased.coilV[0]).toBeGreaterThan(11.9);
  });

  it("drops below the drop-out volts, from both ends", () => {
    const { fromReleased, fromPulled, differ } = settleRelays(compileNetwork(bench(2.4, 0.1)), [
      rule,
    ]);
    expect(fromReleased.pulled).toEqual([false]);
    expect(fromPulled.pulled).toEqual([false]);
    expect(differ).toBe(false);
  });

  it("between the limits keeps what it was: the two settlements differ", () => {
    const compiled = compileNetwork(bench(5, 0.1));
    const { fromReleased, fromPulled, differ } = settleRelays(compiled, [rule]);
    expect([fromReleased.pulled, fromPulled.pulled]).toEqual([[false], [true]]);
    expect(differ).toBe(true);
    const held = settleRelays(compiled, [{ ...rule, held: true }]);
    expect(held.fromReleased.pulled).toEqual([true]);
    expect(held.differ).toBe(false);
  });

  it("holds itself in when its own contact feeds the coil, once pulled", () => {
    // The coil hangs on the contact; a push-button across it is open.
    const compiled = compileNetwork(
      bench(12, OPEN_OHM, [{ id: "hold", a: 3, b: 2, law: ohm(0.05) }]),
    );
    const { fromReleased, fromPulled, differ } = settleRelays(compiled, [rule]);
    expect(fromReleased.pulled).toEqual([false]);
    expect(fromPulled.pulled).toEqual([true]);
    expect(differ).toBe(true);
    const pressed = { branchIndex: 1, law: ohm(CLOSED_OHM) };
    const started = settleFrom(compiled, [rule], [false], { overrides: [pressed] });
    expect(started.pulled).toEqual([true]);
    expect(settleFrom(compiled, [rule], started.pulled).pulled).toEqual([true]);
  });

  it("does not care which way round the coil is", () => {
    const { fromReleased } = settleRelays(compileNetwork(bench(-12, 0.1)), [rule]);
    expect(fromReleased.pulled).toEqual([true]);
    expect(fromReleased.coilV[0]).toBeGreaterThan(11.9);
  });

  it("buzzes when it breaks its own feed, and names itself", () => {
    const buzzer: RelayRule = { ...rule, closedWhenPulled: [], closedWhenReleased: [1] };
    const still: RelayRule = { ...rule, id: "two", coilA: 1, closedWhenPulled: [5] };
    const settled = settleRelays(compileNetwork(bench(12, 0.1)), [buzzer, still]);
    for (const settlement of [settled.fromReleased, settled.fromPulled]) {
      expect(settlement.settled).toBe(false);
      expect(settlement.buzzing).toEqual(["one"]);
      expect(settlement.pulled[1]).toBe(true);
    }
  });

  it("buzzes when the load it switches pulls the volts under its drop-out", () => {
    const compiled = compileNetwork(bench(12, 0.1));
    const settlement = settleFrom(compiled, [rule], [false], {
      overrides: [
        { branchIndex: 0, law: { kind: "emf", emfV: 12, internalOhm: 2 } },
        { branchIndex: 4, law: ohm(0.3) },
      ],
    });
    // 12 · 0.3/2.3 = 1.57 V on the coil when pulled, under 2.4; 11.7 V when released.
    expect(settlement.buzzing).toEqual(["one"]);
  });

  it("drops a relay when a short takes the volts away", () => {
    const { fromPulled } = settleRelays(compileNetwork(bench(12, 0.1)), [rule], {
      shorts: [{ a: 1, b: 0, ohm: 0.001 }],
    });
    expect(fromPulled.pulled).toEqual([false]);
    expect(fromPulled.solution.shortA[0]).toBeCloseTo(12 / 0.011, 0);
  });

  it("follows a chain, one relay a round, and stops unsettled when the rounds allowed are too few", () => {
    const branches: Branch[] = [
      { id: "source", a: 1, b: 0, law: { kind: "emf", emfV: 12, internalOhm: 0.01 } },
    ];
    const relays: RelayRule[] = [];
    for (let k = 0; k < 10; k++) {
      // Coil of relay k on node k + 1; its contact feeds node k + 2.
      branches.push({ id: `coil ${k}`, a: k + 1, b: 0, law: ohm(90) });
      relays.push({ ...rule, id: `R${k}`, coilA: k + 1, closedWhenPulled: [branches.length] });
      branches.push({ id: `contact ${k}`, a: 1, b: k + 2, law: OPEN });
    }
    const compiled = compileNetwork({ nodeCount: 12, leakOhm: 1e9, branches });
    const all = settleRelays(compiled, relays).fromReleased;
    expect(all.pulled.every((pulled) => pulled)).toBe(true);
    expect(all.roundCount).toBe(11);
    const cut = settleRelays(compiled, relays, { maxRoundCount: 5 }).fromReleased;
    expect(cut.settled).toBe(false);
    expect(cut.buzzing).toEqual([]);
  });
});
