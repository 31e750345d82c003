import type { JsonPath } from "../read/jsonPointer.ts";

export interface FieldUnit {
  readonly symbol: string;
  readonly name: string;
  /** Other units somebody may type for it, as exact multiples: prefixes of ten and the inch of 25.4 mm. */
  readonly others: Readonly<Record<string, number>>;
}

const unit = (symbol: string, name: string, others: Record<string, number> = {}): FieldUnit => ({
  symbol,
  name,
  others,
});

const UNITS: Readonly<Record<string, FieldUnit>> = {
  A: unit("A", "amperes", { mA: 1e-3, kA: 1e3 }),
  Ah: unit("Ah", "ampere-hours", { mAh: 1e-3 }),
  V: unit("V", "volts", { mV: 1e-3, kV: 1e3 }),
  W: unit("W", "watts", { mW: 1e-3, kW: 1e3 }),
  Ohm: unit("ohm", "ohms", { mohm: 1e-3, mΩ: 1e-3, kohm: 1e3, kΩ: 1e3, Ω: 1, ohms: 1 }),
  Mm: unit("mm", "millimetres", { m: 1e3, cm: 10, in: 25.4, inch: 25.4, '"': 25.4 }),
  Rpm: unit("rpm", "turns a minute", { "rev/min": 1 }),
  C: unit("C", "degrees Celsius", { "°C": 1 }),
  Lm: unit("lm", "lumens"),
  Uf: unit("uF", "microfarads", { µF: 1, μF: 1, nF: 1e-3, mF: 1e3 }),
  Percent: unit("%", "per cent"),
};

/** The unit a field's own name says it is in: `ratingA` amperes, `lengthMm` (and its `value`) millimetres. */
export function fieldUnit(path: JsonPath): FieldUnit | null {
  const names = path.filter((step) => typeof step === "string");
  const last = names.at(-1) === "value" ? names.at(-2) : names.at(-1);
  const suffix = /(?:^|[a-z])([A-Z][a-z]*|ohm|mm)$/.exec(last ?? "")?.[1];
  if (suffix === undefined) return null;
  const key = `${suffix[0]!.toUpperCase()}${suffix.slice(1)}`;
  return Object.hasOwn(UNITS, key) ? UNITS[key]! : null;
}

/** A quantity typed as text, in the unit of its field; null where it is not one number and a unit that can be told. */
export function typedQuantity(
  text: string,
  unit: FieldUnit | null,
): { readonly number: string; readonly typedUnit: string; readonly value: number } | null {
  const match = /^\s*([+-]?\d{1,12}(?:[.,]\d{1,12})?)\s*(\S{0,8})\s*$/.exec(text);
  if (match === null) return null;
  const number = match[1]!.replace(",", ".");
  const typedUnit = match[2]!;
  const isOwn = typedUnit === "" || typedUnit === unit?.symbol;
  const others = unit?.others ?? {};
  if (!isOwn && !Object.hasOwn(others, typedUnit)) return null;
  const factor = isOwn ? 1 : others[typedUnit]!;
  return { number, typedUnit, value: Number((Number(number) * factor).toPrecision(12)) };
}
