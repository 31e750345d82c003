import type { Neighbour } from "@copperwright/engine/scenes";
import { describe, expect, it } from "vitest";
import { wayOn } from "./wayOn.ts";

const at = (id: string, way: Neighbour["way"]): Neighbour => ({
  kind: "wire",
  id,
  pin: `X.${id}`,
  name: id,
  way,
});

describe("along the current by arrows", () => {
  const list = [
    at("A", "feed"),
    at("B", "feed"),
    at("C", "beside"),
    at("D", "beside"),
    at("E", "return"),
  ];

  it("goes on in the direction of the key, not back to where one came from", () => {
    expect(wayOn(list, "feed", null)?.id).toBe("A");
    expect(wayOn(list, "feed", "A")?.id).toBe("B");
    expect(wayOn(list, "return", "E")?.id).toBe("E");
    expect(wayOn([at("A", "feed")], "return", null)).toBeNull();
  });

  it("goes sideways through what lies beside, else through everything there is", () => {
    expect(wayOn(list, "after", null)?.id).toBe("C");
    expect(wayOn(list, "before", null)?.id).toBe("D");
    expect(wayOn([at("A", "feed"), at("E", "return")], "before", null)?.id).toBe("E");
    expect(wayOn([], "after", null)).toBeNull();
  });
});
