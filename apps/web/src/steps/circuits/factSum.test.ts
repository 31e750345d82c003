import { describe, expect, it } from "vitest";
import { factSum } from "./factSum.ts";

describe("the sum of a figure", () => {
  it("puts the numbers into the equation and says what it is held against", () => {
    const sum = factSum("Wire 31 loses", {
      working: {
        name: "volts lost",
        equation: "U = I x R' x L",
        inputs: [
          { name: "I", value: 3.7, unit: "A", from: "state" },
          { name: "R'", value: 0.0343, unit: "ohm/m", from: "make" },
          { name: "L", value: 0.78, unit: "m", from: "route" },
        ],
        value: 0.099,
        unit: "V",
      },
      limit: { value: 0.5, unit: "V", whose: "yours" },
      note: "lengths measured",
    });
    expect(sum.equation.replace(/\s/g, " ")).toBe("3.7 A × 0.034 ohm/m × 0.78 m");
    expect(sum.usedRatio).toBeCloseTo(0.198, 9);
    expect(sum.note).toContain("yours");
    expect(sum.inputs.map(({ from }) => from)).toEqual(["state", "make", "route"]);
  });

  it("squares stay squares, and a figure without a limit uses none", () => {
    const sum = factSum("Wire 31 has", {
      working: {
        name: "copper",
        equation: "A = n x pi / 4 x d^2",
        inputs: [
          { name: "n", value: 16, unit: "", from: "make" },
          { name: "d", value: 0.2, unit: "mm", from: "make" },
        ],
        value: 0.5027,
        unit: "mm2",
      },
      limit: null,
      note: "",
    });
    expect(sum.equation).toMatch(/^16 × pi \/ 4 × .*²$/);
    expect(sum.usedRatio).toBeUndefined();
  });
});
