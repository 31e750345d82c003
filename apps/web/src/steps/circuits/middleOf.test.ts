import { expect, it } from "vitest";
import { middleOf } from "./middleOf.ts";

const at = (xMm: number, yMm: number) => ({ xMm, yMm });

it("lies half way along the longest piece, round its corners", () => {
  const wires = [
    { id: "W", points: [at(0, 0), at(0, 4)] },
    { id: "W", points: [at(10, 0), at(10, 10), at(16, 10)] },
    { id: "V", points: [at(0, 0), at(0, 400)] },
  ];
  expect(middleOf(wires, "W")).toEqual({ at: at(10, 8), from: at(10, 0), to: at(16, 10) });
  expect(middleOf(wires, "X")).toBeNull();
});
