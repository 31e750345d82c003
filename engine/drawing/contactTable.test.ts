import { expect, it } from "vitest";
import { contactTable } from "./contactTable.ts";
import { struckTexts, textOverlaps } from "./drawingFaults.fixture.ts";
import { plainMarks } from "./expandMark.ts";
import { palettes } from "./palette.ts";
import { sampleContactTable } from "./sampleDrawings.fixture.ts";
import type { CircleMark, LineMark } from "./scene.ts";

const plain = (input = sampleContactTable) => plainMarks(contactTable(input).marks, palettes.print);
const circles = (input = sampleContactTable) =>
  plain(input).filter((mark) => mark.kind === "circle") as CircleMark[];

it("has one mark for each pin in each position: dots where joined, open rings where not", () => {
  const all = circles();
  expect(all).toHaveLength(4 * 4);
  // off 0, ride 3, park 2, test 4
  expect(all.filter(({ fill }) => fill === "ink")).toHaveLength(9);
  expect(all.filter(({ stroke, fill }) => stroke && !fill)).toHaveLength(7);
});

it("gives sets whose lines would lie on each other a lane each", () => {
  const joins = plain().filter(
    (mark) => mark.kind === "line" && mark.stroke.widthMm === 0.5,
  ) as LineMark[];
  expect(joins).toHaveLength(4);
  const [bat, ign] = joins.slice(-2);
  expect(bat!.from.yMm).not.toBeCloseTo(ign!.from.yMm, 1);
});

it("puts two sets side by side on one lane", () => {
  const table = contactTable({
    pins: ["1", "2", "3", "4"],
    positions: [
      {
        name: "both",
        joins: [
          ["1", "2"],
          ["3", "4"],
        ],
      },
    ],
  });
  const single = contactTable({
    pins: ["1", "2", "3", "4"],
    positions: [{ name: "both", joins: [] }],
  });
  expect(table.heightMm).toBe(single.heightMm);
});

it("joins what is joined through a third pin", () => {
  const chained = circles({
    pins: ["a", "b", "c"],
    positions: [
      {
        name: "on",
        joins: [
          ["a", "b"],
          ["c", "b"],
        ],
      },
    ],
  });
  expect(chained.filter(({ fill }) => fill === "ink")).toHaveLength(3);
});

it("has legible names, however long, and refuses a pin it does not list", () => {
  const { marks } = contactTable({
    pins: ["BATTERY-FEED", "X", "LIGHTS AND TAIL"],
    positions: [
      { name: "a very long name of a position", isRest: true, joins: [["X", "BATTERY-FEED"]] },
    ],
  });
  expect(textOverlaps(marks)).toEqual([]);
  expect(struckTexts(marks)).toEqual([]);
  expect(() =>
    contactTable({ pins: ["a"], positions: [{ name: "on", joins: [["a", "z"]] }] }),
  ).toThrow("z");
});
