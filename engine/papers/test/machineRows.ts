import { batteryOf, type Job } from "../../job/index.ts";
import { printQuantity } from "../../units/index.ts";
import type { PaperInput } from "../paperInput.ts";
import { requestOf, solutionOf } from "../solvedStates.ts";
import { test } from "./benchRows.ts";
import { positionsText } from "./stateRows.ts";
import type { TestRow } from "./testRow.ts";

/** Where the charge is looked at: a fast tick-over, the speed makers state charging volts at, and a cruise. */
const CHARGE_SPEEDS_RPM = [1500, 2500, 4000] as const;

const volts = (v: number): string => printQuantity(v, "V");

/** Share of the table's volts that holds on this machine: they are stated for 12 V. */
const shareOf = ({ supply }: Job): number =>
  supply.nominalV === 6 ? test("22-drop-six-volt").value : supply.nominalV / 12;

/** Charging: battery volts and current by speed, in each running state the job names. */
export function chargeRows(input: PaperInput): readonly TestRow[] {
  const { job, design } = input;
  if (!job.parts.some(({ kind }) => kind === "generator") || batteryOf(job) === null) return [];
  const running = input.states.filter(({ state }) => state.engine?.mode === "running");
  return running.flatMap(({ state }) =>
    CHARGE_SPEEDS_RPM.flatMap((speedRpm): readonly TestRow[] => {
      const engine = { mode: "running", speedRpm } as const;
      const solution = solutionOf(job, design.conductors, requestOf({ ...state, engine }));
      const battery = solution?.batteries[0];
      if (battery === undefined) return [];
      const { currentA, terminalV } = battery;
      return [
        {
          section: "charging",
          group: `${state.name}: ${positionsText(job, { ...state, engine: undefined }).replace(", engine stopped", "")}`,
          what: `${printQuantity(speedRpm, "rpm")}: volts at the battery`,
          note: `computed ${printQuantity(Math.abs(currentA), "A")} ${currentA < 0 ? "into" : "out of"} the battery`,
          expected: volts(terminalV),
          limit: speedRpm === 2500 ? chargeLimit(job) : "",
          isRead: true,
          expectedValue: terminalV,
          unit: "V",
          ...(speedRpm === 2500 ? chargeBand(job) : {}),
        },
      ];
    }),
  );
}

function chargeLimit(job: Job): string {
  const battery = batteryOf(job)?.battery;
  const regulator = job.parts.find((part) => part.kind === "regulator" && part.type !== "ac-shunt");
  if (regulator?.kind !== "regulator") return "no regulator";
  if (job.supply.nominalV !== 12) return `regulator set to ${volts(regulator.setV.value)}`;
  const isLithium = battery?.chemistry === "lifepo4";
  const most = isLithium ? test("30-lithium-most") : test("28-charge-high");
  return `${volts(test("27-charge-low").value)} to ${volts(most.value)}${isLithium ? "" : `, ${volts(test("29-charge-tolerance").value)} either way`}`;
}

/** The same limit as figures; none where the table's do not hold on this machine. */
function chargeBand(job: Job): Pick<TestRow, "least" | "most"> {
  const regulator = job.parts.find((part) => part.kind === "regulator" && part.type !== "ac-shunt");
  if (regulator === undefined || job.supply.nominalV !== 12) return {};
  const isLithium = batteryOf(job)?.battery.chemistry === "lifepo4";
  if (isLithium) return { least: test("27-charge-low").value, most: test("30-lithium-most").value };
  const eitherWay = test("29-charge-tolerance").value;
  return {
    least: test("27-charge-low").value - eitherWay,
    most: test("28-charge-high").value + eitherWay,
  };
}

/** Starter: battery and leads while it turns. */
export function starterRows({ job, states }: PaperInput): readonly TestRow[] {
  const starter = job.parts.find((part) => part.kind === "motor" && part.use === "starter");
  if (starter === undefined) return [];
  const turning = states.find(({ solution }) =>
    solution?.loads.some(({ part, works }) => part === starter.id && works),
  );
  const battery = turning?.solution?.batteries[0];
  const share = shareOf(job);
  const row = (what: string, most?: number, v: number | null = null): TestRow => ({
    section: "starter",
    group: "",
    what,
    note: "",
    expected: v === null ? "" : volts(v),
    limit: most === undefined ? "" : `most ${volts(most)}`,
    isRead: true,
    expectedValue: v,
    unit: "V",
    most,
  });
  return [
    row("Battery volts while it turns", undefined, battery?.terminalV ?? null),
    row(
      "Live post to starter terminal, while it turns",
      test("18-drop-starter-feed").value * share,
    ),
    row(
      "Starter case to earthed post, while it turns",
      test("19-drop-starter-earth").value * share,
    ),
  ];
}

/** Everything off: what the machine draws standing. */
export function drainRows({ job, design }: PaperInput): readonly TestRow[] {
  const solution = solutionOf(job, design.conductors, {});
  const battery = solution?.batteries[0];
  if (battery === undefined) return [];
  const hasElectronics = job.parts.some(({ kind }) => kind === "module" || kind === "regulator");
  const limit = test(hasElectronics ? "26-drain-electronics" : "25-drain-plain");
  const milliA = Math.abs(battery.currentA) * 1000;
  return [
    {
      section: "drain",
      group: "",
      what: "Everything off, ten minutes after: current in the earthed lead",
      note: "never crank through the meter",
      expected: printQuantity(milliA, "mA"),
      limit: `most ${printQuantity(limit.value, "mA")}`,
      isRead: true,
      expectedValue: milliA,
      unit: "mA",
      most: limit.value,
    },
  ];
}

/** Every place something is earthed to a body: drop to the earthed post with its load on. */
export function earthRows({ job, check }: PaperInput): readonly TestRow[] {
  void check;
  const most = test("17-drop-earth").value * shareOf(job);
  return job.bodies.flatMap((body) =>
    body.points.map(
      (point): TestRow => ({
        section: "earth",
        group: "",
        what: `${body.id} ${point.id}: ${point.name ?? body.name}`,
        note: "",
        expected: "",
        limit: `most ${volts(most)}`,
        isRead: true,
        expectedValue: null,
        unit: "V",
        most,
      }),
    ),
  );
}
