import { describe, expect, test } from "vitest";
import type { Operation } from "../../engine/job/index.ts";
import { checkJob } from "../../engine/judge/index.ts";
import { codesOf, machine, newWire, only } from "./jobs.ts";

/** The further hostile inputs of the acceptance scenarios that are readable jobs: every one is answered, none throws. */
describe("machines with something wrong", () => {
  test("a load with no earth", () => {
    const result = checkJob(machine("c", { op: "remove", list: "wires", id: "C70" }));
    const finding = only(result, "load-without-return", "POS:L-E");
    expect(finding.severity).toBe("mend");
    expect(finding.state).not.toBeNull();
  });

  test("a part with both pins on one net", () => {
    const edit = newWire("CX", ["HORN.1", "HORN.2"], {
      circuit: "horn",
      make: "thin-1.0",
      lengthMm: 50,
    });
    expect(codesOf(checkJob(machine("c", edit)))).toContain("load-bridged");
  });

  test("a joint with one wire", () => {
    const edits: Operation[] = [
      { op: "add", list: "joints", item: { id: "JX", kind: "crimped-splice", ways: ["1", "2"] } },
      newWire("CX", ["KEY.IG", "JX.1"], { circuit: "main", make: "thin-2.0", lengthMm: 100 }),
    ];
    expect(codesOf(checkJob(machine("c", ...edits)))).toContain("joint-one-wire");
  });

  /** 12 V and 0.24 W is 20 mA; the scenario quotes 0.32 A through the 4 W lamp and 10 to 20 mA through a diode lamp. */
  test("a diode lamp for the charge lamp of the big twin may not excite it", () => {
    const led: Operation[] = [
      { op: "set", list: "parts", id: "CHL", path: ["source"], value: "led" },
      { op: "set", list: "parts", id: "CHL", path: ["filaments", 0, "ratedW"], value: 0.24 },
    ];
    expect(codesOf(checkJob(machine("e")))).not.toContain("charge-lamp-may-not-excite");
    const finding = only(checkJob(machine("e", ...led)), "charge-lamp-may-not-excite");
    expect(finding.numbers.startA).toBeLessThan(0.03);
  });

  /** The scenario's coils: 6.86 A, 38 W in each, 9 Ah gone in 1.3 h, with two coils of 3.5 to 4 ohm; here 4.5 ohm and 14 Ah at 12.6 V. */
  test("the key left on with both points closed", () => {
    const finding = only(checkJob(machine("c")), "coils-left-on");
    const { coilW, currentA, flatH, coilCount } = finding.numbers as Record<string, number>;
    expect(coilCount).toBe(2);
    // Two coils of 4.5 ohm on 12.6 V less what the feed loses: at most 2.8 A and 35 W each.
    expect(currentA).toBeGreaterThan(4.5);
    expect(currentA).toBeLessThan(5.6);
    expect(coilW).toBeLessThan(35.3);
    expect(flatH).toBeCloseTo(14 / currentA!, 9);
  });

  test("a stop somebody accepted stays a stop, and the acceptance is refused", () => {
    const accepted: Operation = {
      op: "set",
      list: "job",
      path: ["decisions", "accepted"],
      value: [
        {
          id: "K1",
          code: "fuse-over-wire",
          subject: "F0",
          reason: "as found",
          by: "owner",
          date: "2026-01-10",
        },
        {
          id: "K2",
          code: "coils-left-on",
          subject: "CL1",
          also: ["CL2"],
          reason: "known",
          by: "owner",
          date: "2026-01-10",
        },
      ],
    };
    const before = checkJob(machine("c"));
    const result = checkJob(machine("c", accepted));
    expect(result.verdict).toBe("stop");
    expect(only(result, "fuse-over-wire").accepted).toBeNull();
    expect(only(result, "accept-refused").subject.id).toBe("K1");
    expect(only(result, "coils-left-on").accepted?.by).toBe("owner");
    expect(result.counts.advise).toBe(before.counts.advise - 1);
    expect(result.counts.stop).toBe(before.counts.stop);
  });

  test("a machine without battery, body or wire is answered", () => {
    const empty = machine("a");
    const bare = { ...empty, parts: [], wires: [], joints: [], bodies: [], bonds: [], states: [] };
    expect(checkJob(bare).verdict).toBe("fit");
  });
});
