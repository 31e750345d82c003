import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { PartOf } from "../job.ts";
import {
  addPosition,
  contactGroups,
  removePosition,
  renamePosition,
  toggleContact,
} from "./contactTable.ts";
import { after, demoJob } from "./demoJobs.fixture.ts";

const PINS = ["1", "2", "3", "4", "5"];

const switchOf = (joins: readonly (readonly [string, string])[]): PartOf<"switch"> => ({
  id: "SW",
  name: "switch",
  kind: "switch",
  driven: "hand",
  pins: PINS.map((id) => ({ id })),
  rest: "OFF",
  positions: [
    { id: "OFF", joins: [] },
    { id: "ON", joins },
  ],
});

function toggled(joins: readonly (readonly [string, string])[], a: string, b: string) {
  const operation = toggleContact(switchOf(joins), { position: "ON", a, b });
  if (operation.op !== "set") throw new Error("not a field set");
  const rows = operation.value as PartOf<"switch">["positions"];
  expect(rows[0]).toEqual({ id: "OFF", joins: [] });
  return rows[1]!.joins;
}

const pair = fc
  .tuple(fc.constantFrom(...PINS), fc.constantFrom(...PINS))
  .filter(([a, b]) => a !== b);

describe("contact table by meter", () => {
  it("joins what was apart with everything already joined to it, and parts only the pin named", () => {
    fc.assert(
      fc.property(fc.array(pair, { maxLength: 6 }), pair, (joins, [a, b]) => {
        const before = contactGroups(PINS, joins);
        const now = contactGroups(PINS, toggled(joins, a, b));
        const groupOf = (groups: readonly (readonly string[])[], pin: string) =>
          groups.find((group) => group.includes(pin)) ?? [pin];
        const others = (groups: readonly (readonly string[])[]) =>
          groups.filter((group) => !group.includes(a) && !group.includes(b));
        expect(others(now)).toEqual(others(before));
        if (groupOf(before, a).includes(b)) {
          expect(groupOf(now, b)).toEqual([b]);
          expect(groupOf(now, a)).toEqual(groupOf(before, a).filter((pin) => pin !== b));
        } else {
          const both = [...groupOf(before, a), ...groupOf(before, b)];
          expect(groupOf(now, a)).toEqual(PINS.filter((pin) => both.includes(pin)));
        }
      }),
    );
  });

  it("needs one pair fewer than a group has pins", () => {
    fc.assert(
      fc.property(fc.array(pair, { maxLength: 6 }), pair, (joins, [a, b]) => {
        const made = toggled(joins, a, b);
        const groups = contactGroups(PINS, made);
        expect(made.length).toBe(groups.reduce((sum, { length }) => sum + length - 1, 0));
      }),
    );
  });

  it("adds, names and takes away positions of a switch on a machine", () => {
    const job = demoJob("minazuru-four");
    const sw = (of: typeof job) => of.parts.find(({ id }) => id === "CLS") as PartOf<"switch">;
    const added = after(job, addPosition(sw(job), "HALF", "half pulled"));
    expect(sw(added).positions.at(-1)).toEqual({ id: "HALF", name: "half pulled", joins: [] });
    const named = after(added, renamePosition(sw(added), "HALF", "held"));
    expect(sw(named).positions.at(-1)?.name).toBe("held");
    expect(sw(after(named, removePosition(sw(named), "HALF"))).positions).toHaveLength(2);
  });
});
