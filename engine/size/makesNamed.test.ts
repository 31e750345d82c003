import { describe, expect, it } from "vitest";
import { makesNamed } from "./makesNamed.ts";

describe("makes a name can mean", () => {
  it("names the stranding's own makes, all of those strands", () => {
    const { makes, readAs } = makesNamed("32/0.20");
    expect(readAs).toContain("32");
    expect(makes.map(({ id }) => id)).toContain("thin-1.0");
    expect(makes.every(({ name }) => name.includes("32/0.20") || name.includes("1.0"))).toBe(true);
  });

  it("says why and what to type where it is no name of a wire", () => {
    const { makes, refusal } = makesNamed("banana");
    expect(makes).toEqual([]);
    expect(refusal).toMatch(/no name of a wire/);
  });
});
