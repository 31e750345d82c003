import type { PartOf } from "../job/index.ts";
import { allTables, figure } from "../tables/index.ts";
import type { BatteryRequest } from "./operateResult.ts";

type Battery = PartOf<"battery">;

/** A battery as the network sees it: an EMF behind a resistance, with the name of its state. */
export interface BatterySource {
  readonly label: string;
  readonly emfV: number;
  readonly internalOhm: number;
}

/** Table rows are for 12 V and, halved, 6 V; other systems scale by their nominal volts. gel is read as agm. */
const TABLE_V = 12;
/** Temperature battery resistances are stated at, °C; a warmer battery is taken as no better. */
const STATED_AT_C = 25;
const CHEMISTRY = { flooded: "flooded", agm: "agm", gel: "agm", lifepo4: "lfp" } as const;

/**
 * Battery in a named state or at stated volts.
 *
 * Full: rest volts as stated, else the open-circuit table at 100 %. Half: the table's fall from 100 to 50 % below that, weak:
 * to 25 %. Resistance: as stated; else from cold-cranking amps, R(−18 °C) = 5.5 V / CCA and its warm share; else R·Ah of a
 * sealed battery. It climbs as charge falls, and in the cold as cranking power falls.
 *
 * @param ambientC  temperature of the battery, °C; below the coldest row of the table the coldest row stands.
 */
export function batterySource(
  battery: Battery,
  request: BatteryRequest,
  ambientC: number,
): BatterySource {
  const fullV = battery.restV?.value ?? tableRestV(battery, 100);
  const coldFactor =
    ambientC >= STATED_AT_C ? 1 : crankingPowerRatio(STATED_AT_C) / crankingPowerRatio(ambientC);
  const fullOhm = internalOhm(battery) * coldFactor;
  if (typeof request === "object") {
    const { emfV } = request;
    return { label: `${emfV} V`, emfV, internalOhm: request.internalOhm ?? fullOhm };
  }
  const rule = (id: string): number => figure("elementRules", id, "value").value;
  if (request === "full") return { label: "full", emfV: fullV, internalOhm: fullOhm };
  const chargePercent = request === "half" ? 50 : rule("weak-charge");
  const fallV = tableRestV(battery, 100) - tableRestV(battery, chargePercent);
  return {
    label: request,
    emfV: fullV - fallV,
    internalOhm: fullOhm * rule(request === "half" ? "battery-half" : "battery-weak"),
  };
}

/** Open-circuit volts at a charge, between the rows of tables/batteryOcv on a straight line. */
function tableRestV(battery: Battery, chargePercent: number): number {
  const points = allTables.batteryOcv.rows
    .filter((row) => row.chemistry === CHEMISTRY[battery.chemistry])
    .map((row) => [row.chargePercent, row.rest12V] as const);
  return interpolate(points, chargePercent) * (battery.nominalV / TABLE_V);
}

function internalOhm(battery: Battery): number {
  const rule = (id: string): number => figure("batteryRules", id, "value").value;
  const scaleRatio = battery.nominalV / TABLE_V;
  if (battery.internalOhm !== undefined) return battery.internalOhm.value;
  if (battery.coldCrankingA !== undefined && battery.coldCrankingA.value > 0) {
    const warmRatio = (rule("warm-share-low") + rule("warm-share-high")) / 2;
    return (scaleRatio * warmRatio * rule("cca-volts")) / battery.coldCrankingA.value;
  }
  return (scaleRatio * rule("resistance-by-capacity")) / battery.capacityAh.value;
}

const COLD_ROWS = ["cold-power--29", "cold-power--18", "cold-power-0", "cold-power-27"] as const;

/** Share of its warm cranking power a battery has at a temperature. */
function crankingPowerRatio(ambientC: number): number {
  const points = COLD_ROWS.map((row) => {
    const rowC = Number(row.slice("cold-power-".length));
    return [rowC, figure("batteryRules", row, "value").value] as const;
  });
  return interpolate(points, ambientC);
}

/** On straight lines through points in any order; outside them the nearest point. */
function interpolate(points: readonly (readonly [number, number])[], at: number): number {
  const rising = [...points].sort((a, b) => a[0] - b[0]);
  const above = rising.findIndex(([x]) => x >= at);
  if (above < 0) return rising.at(-1)![1];
  const [x1, y1] = rising[above]!;
  if (above === 0) return y1;
  const [x0, y0] = rising[above - 1]!;
  return y0 + ((y1 - y0) * (at - x0)) / (x1 - x0);
}
