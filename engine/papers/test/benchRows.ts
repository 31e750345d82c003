import { conductorOhm } from "../../operate/index.ts";
import { figure, figureOrNull } from "../../tables/index.ts";
import { printNumber, printQuantity } from "../../units/index.ts";
import type { PaperInput } from "../paperInput.ts";
import { pinReader } from "../pinText.ts";
import { numberOf, wiresInOrder } from "../wireRows.ts";
import type { TestRow } from "./testRow.ts";

/** A figure of tables/tests. */
export const test = (id: string) => figure("tests", id, "value");

const WORKING_C = 20;

/** Wire by wire: from end to end, and to no other. Expected is the copper alone, at 20 °C; the limit is the table's allowance for ends and meter leads. */
export function continuityRows(input: PaperInput): readonly TestRow[] {
  const pins = pinReader(input.job);
  const ratio = test("04-resistance-factor").value;
  const addOhm = test("05-resistance-add").value;
  return wiresInOrder(input).map(({ wire }): TestRow => {
    const conductor = input.design.conductors.get(wire.id)!;
    const ohm = conductor.lengthMm === null ? null : conductorOhm(conductor, WORKING_C);
    return {
      section: "continuity",
      group: "",
      what: numberOf(wire),
      note: `${pins(wire.from).short} to ${pins(wire.to).short}`,
      expected: ohm === null ? "not measured" : printQuantity(ohm, "ohm"),
      limit: ohm === null ? "" : `most ${printNumber(ohm * ratio + addOhm, 2)}\u00a0Ω`,
      isRead: true,
      expectedValue: ohm,
      unit: "ohm",
      most: ohm === null ? undefined : ohm * ratio + addOhm,
    };
  });
}

const look = (section: string, what: string, note = ""): TestRow => ({
  section,
  group: "",
  what,
  note,
  expected: "",
  limit: "",
  isRead: false,
  expectedValue: null,
  unit: "",
});

/** Before anything is measured: battery off, and what the eye finds. */
export function lookRows({ job }: PaperInput): readonly TestRow[] {
  const post = job.supply.earthPolarity === "positive" ? "positive (+)" : "negative (\u2212)";
  return [
    look(
      "before",
      "Battery off",
      `earthed post first; on this machine the ${post} one. Refitted last`,
    ),
    look("before", "Every crimp, strip, brush, strand, seal and mark looked at"),
    look("before", "Every wire tugged by hand at both ends"),
  ];
}

/** Bare loom, nothing connected to it. */
export function insulationRows(): readonly TestRow[] {
  const least = test("06-insulation");
  const [from, to] = [test("07-insulation-volts-least"), test("08-insulation-volts-most")];
  const meter = test("09-insulation-meter");
  return [
    {
      ...look(
        "insulation",
        "Every wire to all others and to the frame",
        `insulation meter, ${printNumber(from.value, 0)} to ${printNumber(to.value, 0)} V, bare loom, nothing connected, a minute at most`,
      ),
      limit: `least ${printNumber(least.value, 0)}\u00a0MΩ`,
      isRead: true,
      unit: "Mohm",
      least: least.value,
    },
    {
      ...look("insulation", "With a multimeter only", "the same, on its highest range"),
      limit: `over-range at ${printNumber(meter.value, 0)}\u00a0MΩ`,
      isRead: true,
    },
  ];
}

/** First power through a lamp, then a small fuse, one circuit at a time. */
export function firstPowerRows({ job, check }: PaperInput): readonly TestRow[] {
  const volts = job.supply.nominalV;
  const row = volts === 12 ? "10-series-lamp-12" : volts === 6 ? "11-series-lamp-6" : null;
  const shortA = row === null ? null : figureOrNull("tests", row, "value");
  const passes =
    shortA === null
      ? ""
      : `; into a dead short it passes ${printQuantity(shortA.value, "A")} at most`;
  const first = test("12-first-fuse");
  return [
    look(
      "first power",
      `A ${volts} V 21 W lamp in the live battery lead, everything off: dark`,
      `full brightness is a short: stop and look${passes}. Not with electronic ignition live, not for starting`,
    ),
    look("first power", "Key on, one switch after the other: dim glow, never full brightness"),
    ...check.fuses.map((fuse) =>
      look(
        "first power",
        `${fuse.fuse} alone in place, ${printQuantity(Math.min(first.value, fuse.ratingA), "A")} for the trial: its circuits work`,
        fuse.ratingA > first.value
          ? `then its own ${printNumber(fuse.ratingA, 1).replace(/\.0$/, "")} A`
          : "",
      ),
    ),
  ];
}

/** With everything fitted. */
export function roadRows(): readonly TestRow[] {
  return [
    look("last", "Every branch moved, bars lock to lock with everything on: nothing flickers"),
    look("last", "Every lamp, horn, brake lamp from both levers, engine stop, starter interlock"),
    look(
      "last",
      "After 20 minutes: no fuse holder, plug, regulator lead or headlamp plug hot to the touch",
    ),
  ];
}
