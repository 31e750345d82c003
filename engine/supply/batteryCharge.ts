import { batteriesOf, type Job, type PartOf } from "../job/index.ts";
import { batterySource } from "../operate/index.ts";
import { allTables, figure } from "../tables/index.ts";
import { SECONDS_AN_HOUR } from "./secondsAnHour.ts";
import { supplyRule } from "./supplyRule.ts";

type Battery = PartOf<"battery">;

/** A battery over its whole charge, as the ride sees it. All volts are of the whole machine, batteries in series added. */
export interface ChargedBattery {
  readonly nominalV: number;
  readonly capacityAh: number;
  readonly chemistry: Battery["chemistry"];
  readonly ambientC: number;
  /** Straight lines through these points of charge (0 to 1) and rest volts. */
  readonly restPoints: readonly (readonly [chargeRatio: number, v: number])[];
  /** Full, at its temperature, Ω. */
  readonly fullOhm: number;
  /** Straight lines through charge and resistance over that when full. */
  readonly climbPoints: readonly (readonly [chargeRatio: number, ratio: number])[];
  /** Current it takes at the set volts while far from full, A. */
  readonly bulkA: number;
  /** Charge from which it takes less and less. */
  readonly taperRatio: number;
}

/** Null where the machine has no battery. */
export function chargedBattery(job: Job, ambientC: number): ChargedBattery | null {
  const batteries = batteriesOf(job).map(({ battery }) => battery);
  const [first] = batteries;
  if (first === undefined) return null;
  const capacityAh = Math.min(...batteries.map((one) => one.capacityAh.value));
  const ratios = restRatios(first);
  const bulkRatio =
    first.chemistry === "flooded"
      ? figure("batteryRules", "bulk-flooded", "value").value
      : first.chemistry === "lifepo4"
        ? supplyRule("bulk-lithium")
        : figure("batteryRules", "bulk-agm", "value").value;
  return {
    nominalV: batteries.reduce((sumV, one) => sumV + one.nominalV, 0),
    capacityAh,
    chemistry: first.chemistry,
    ambientC,
    restPoints: ratios.map((ratio) => [
      ratio,
      batteries.reduce((sumV, one) => sumV + tableRestV(one, ratio), 0),
    ]),
    fullOhm: batteries.reduce(
      (sumOhm, one) => sumOhm + batterySource(one, "full", ambientC).internalOhm,
      0,
    ),
    climbPoints: [
      [rule("weak-charge") / 100, rule("battery-weak")],
      [HALF, rule("battery-half")],
      [1, 1],
    ],
    bulkA: bulkRatio * capacityAh,
    taperRatio: supplyRule("taper-from"),
  };
}

const TABLE_V = 12;
const HALF = 0.5;
const rule = (id: string): number => figure("elementRules", id, "value").value;
const chemistryOf = ({ chemistry }: Battery) =>
  chemistry === "lifepo4" ? "lfp" : chemistry === "flooded" ? "flooded" : "agm";

function rowsOf(battery: Battery) {
  return allTables.batteryOcv.rows
    .filter((row) => row.chemistry === chemistryOf(battery))
    .toSorted((a, b) => a.chargePercent - b.chargePercent);
}

const restRatios = (battery: Battery): readonly number[] =>
  rowsOf(battery).map(({ chargePercent }) => chargePercent / 100);

/** Rest volts of the open-circuit table, moved so that the full state is as the job states it. */
function tableRestV(battery: Battery, chargeRatio: number): number {
  const points = rowsOf(battery).map(
    (row) => [row.chargePercent / 100, (row.rest12V * battery.nominalV) / TABLE_V] as const,
  );
  const fullV = points.at(-1)![1];
  return (battery.restV?.value ?? fullV) - fullV + onLines(points, chargeRatio);
}

/** Rest volts at a charge, 0 to 1, V. */
export const restV = (battery: ChargedBattery, chargeRatio: number): number =>
  onLines(battery.restPoints, chargeRatio);

/** Internal resistance while it gives current: climbs as charge falls, Ω. */
export const givingOhm = (battery: ChargedBattery, chargeRatio: number): number =>
  battery.fullOhm * onLines(battery.climbPoints, chargeRatio);

/**
 * Conductance while it takes current, S: the current it accepts at the set volts over the volts above rest. Acceptance falls on a
 * straight line from `taper-from` to none when full (remembered figures).
 *
 * @param setV  volts the regulator holds at the posts.
 */
export function takingS(battery: ChargedBattery, chargeRatio: number, setV: number): number {
  const share = Math.min(1, Math.max(0, (1 - chargeRatio) / (1 - battery.taperRatio)));
  const overV = Math.max(setV - restV(battery, chargeRatio), LEAST_OVER_V);
  // Never stiffer than the battery's own resistance.
  return Math.min((battery.bulkA * share) / overV, 1 / givingOhm(battery, chargeRatio));
}

/** Set volts that hardly stand above rest would make the conductance infinite, V. */
const LEAST_OVER_V = 0.2;

/** Energy between empty and a charge at rest volts, J: ∫ V dQ over the straight lines. */
export function storedJ(battery: ChargedBattery, chargeRatio: number): number {
  const { restPoints, capacityAh } = battery;
  let sumV = 0;
  for (let k = 1; k < restPoints.length; k++) {
    const [from, fromV] = restPoints[k - 1]!;
    const [to] = restPoints[k]!;
    if (chargeRatio <= from) break;
    const end = Math.min(chargeRatio, to);
    sumV += ((fromV + restV(battery, end)) / 2) * (end - from);
  }
  return sumV * capacityAh * SECONDS_AN_HOUR;
}

function onLines(points: readonly (readonly [number, number])[], at: number): number {
  const above = points.findIndex(([x]) => x >= at);
  if (above < 0) return points.at(-1)![1];
  const [x1, y1] = points[above]!;
  if (above === 0) return y1;
  const [x0, y0] = points[above - 1]!;
  return y0 + ((y1 - y0) * (at - x0)) / (x1 - x0);
}
