import { type Figure, figure } from "../tables/index.ts";
import type { SupplyModel } from "./supplyModel.ts";
import { supplyFigure } from "./supplyRule.ts";

/** A table figure an answer rests on, with what it is for. */
export interface SupplyFigureRow extends Figure {
  readonly used: string;
}

const RULES: readonly (readonly [id: string, used: string])[] = [
  ["charge-volts", "volts the balance is struck at"],
  ["coil-duty", "ignition coils, where the job does not say"],
  ["stop-duty", "brake lamp"],
  ["turn-duty", "indicators switched on"],
  ["flash-duty", "indicators lit while on"],
  ["rating-hours", "time the capacity is stated for"],
  ["ah-efficiency", "ampere-hours got back"],
  ["taper-from", "charge above which a battery takes less"],
  ["point-estimated", "band of an estimated output point"],
  ["point-stated", "band of a stated output point"],
  ["crank-least", "least volts at the posts while cranking"],
  ["thyristor-drop", "heat of a shunt regulator"],
];

const BATTERY_RULES = {
  flooded: ["bulk-flooded", "peukert-flooded"],
  agm: ["bulk-agm", "peukert-agm"],
  gel: ["bulk-agm", "peukert-agm"],
  lifepo4: [],
} as const;

/** Those only remembered first, then by table and row. */
export function supplyFigures({ battery }: SupplyModel): readonly SupplyFigureRow[] {
  const rows: SupplyFigureRow[] = RULES.map(([id, used]) => ({ ...supplyFigure(id), used }));
  for (const id of battery === null ? [] : BATTERY_RULES[battery.chemistry]) {
    const used = id.startsWith("bulk") ? "charging current a battery takes" : "Peukert's law";
    rows.push({ ...figure("batteryRules", id, "value"), used });
  }
  for (const id of [
    "drain-share",
    "self-discharge-month",
    "cca-volts",
    "resistance-by-capacity",
  ] as const) {
    rows.push({
      ...figure("batteryRules", id, "value"),
      used: "battery while standing and starting",
    });
  }
  rows.push({ ...figure("regulators", "temperature", "value"), used: "set volts by temperature" });
  rows.push({
    ...figure("lampLaws", "current-exponent", "value"),
    used: "current of a lamp by its volts",
  });
  const rank = (row: SupplyFigureRow): number => (row.confidence === "memory" ? 0 : 1);
  return rows.sort((a, b) => rank(a) - rank(b));
}
