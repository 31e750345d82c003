import { presentParts } from "../../job/index.ts";
import { figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Judge } from "../judge.ts";

/**
 * What one country's inspection asks of the lamps and horn of a machine of this year. A reminder, never a verdict: laws differ by
 * country and change, and the year of first use is not always the year of make.
 */
export const roadReminder: Judge = ({ job }) => {
  const { year, kind } = job.machine;
  const hasLamp = presentParts(job).some((part) => part.kind === "lamp");
  if (year === undefined || kind !== "motorcycle" || !hasLamp) return [];
  const from = (row: string) => figure("roadDates", row, "value");
  const both = from("stop-lamp-both");
  const rules = [
    year < from("headlamp").value ? "no headlamp is asked for" : "a headlamp is asked for",
    stopRule(year, from("stop-lamp").value, both.value),
    hornRule(year, from("bulb-horn").value),
  ];
  return [
    findingOf({
      code: "road-reminder",
      severity: "advise",
      subject: { kind: "job", id: job.id },
      numbers: { year: String(year), rules: rules.join("; ") },
      limit: null,
      figures: [from("headlamp"), from("stop-lamp"), both, from("bulb-horn")],
    }),
  ];
};

function stopRule(year: number, from: number, bothFrom: number): string {
  if (year < from) return "no stop lamp is asked for";
  if (year < bothFrom) return "one brake control must light the stop lamp";
  const since = year === bothFrom ? " if first used from 1 April on" : "";
  return `both brake controls must light the stop lamp${since}`;
}

function hornRule(year: number, last: number): string {
  if (year < last) return "a bulb horn will do";
  return year === last
    ? "a bulb horn will do if first used before 1 August"
    : "a bulb horn will not do";
}
