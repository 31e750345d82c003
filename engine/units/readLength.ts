import { MM_PER_CM, MM_PER_FOOT, MM_PER_INCH, MM_PER_M } from "./exactUnits.ts";
import { plainText } from "./plainText.ts";
import { readNumber } from "./readNumber.ts";

/** A bare number under this may be metres, centimetres or inches; over the other, a slip. */
const BARE_LEAST_MM = 30;
const BARE_MOST_MM = 20_000;
/** No run of a vehicle is longer; the bound of this reader, not of any standard. */
const LONGEST_MM = 100_000;

export type LengthReading =
  | { readonly kind: "length"; readonly lengthMm: number }
  /** The number could be in any of these; the person must say which. */
  | { readonly kind: "ask"; readonly couldBe: readonly LengthGuess[] }
  | { readonly kind: "refusal"; readonly reason: "unread" | "negative" | "too-long" };

export type LengthGuess = {
  readonly unit: "mm" | "cm" | "m" | "in";
  readonly lengthMm: number;
};

const mmPerUnit: Readonly<Record<string, number>> = {
  mm: 1,
  millimetre: 1,
  millimetres: 1,
  cm: MM_PER_CM,
  m: MM_PER_M,
  metre: MM_PER_M,
  metres: MM_PER_M,
  meter: MM_PER_M,
  meters: MM_PER_M,
  in: MM_PER_INCH,
  inch: MM_PER_INCH,
  inches: MM_PER_INCH,
  '"': MM_PER_INCH,
  ft: MM_PER_FOOT,
  foot: MM_PER_FOOT,
  feet: MM_PER_FOOT,
  "'": MM_PER_FOOT,
};

/**
 * Reads a length as a person writes it: `1.6 m`, `160 cm`, `1600`, `63 in`, `5'3"`.
 *
 * A bare whole number that is a sensible length in millimetres is millimetres. Any other bare
 * number is a question, never a guess.
 *
 * @returns length in mm, or what it could be, or why it cannot be read. Never throws.
 */
export function readLength(text: string): LengthReading {
  const plain = plainText(text);
  if (plain === null) return { kind: "refusal", reason: "unread" };
  const feet = /^(\S{1,10}?) ?(?:'|ft|feet|foot) ?(\S{1,10}?) ?(?:"|in|inch|inches)?$/.exec(plain);
  if (feet !== null) {
    const whole = readNumber(feet[1]!);
    const inches = readNumber(feet[2]!);
    if (whole !== null && inches !== null && inches >= 0 && inches < 12)
      return withinBounds(whole * MM_PER_FOOT + inches * MM_PER_INCH);
  }
  const parts = /^([+\-\u2212]?[\d.,]{1,20}) ?([a-z'"]{0,12})$/.exec(plain);
  const value = parts === null ? null : readNumber(parts[1]!);
  if (parts === null || value === null) return { kind: "refusal", reason: "unread" };
  const unit = parts[2]!;
  if (unit === "") return readBare(value);
  if (!Object.hasOwn(mmPerUnit, unit)) return { kind: "refusal", reason: "unread" };
  return withinBounds(value * mmPerUnit[unit]!);
}

function readBare(value: number): LengthReading {
  if (value < 0) return { kind: "refusal", reason: "negative" };
  const isSensible = value >= BARE_LEAST_MM && value <= BARE_MOST_MM;
  if (Number.isInteger(value) && isSensible) return withinBounds(value);
  const units = ["mm", "cm", "m", "in"] as const;
  const couldBe = units.map((unit) => ({ unit, lengthMm: value * mmPerUnit[unit]! }));
  return { kind: "ask", couldBe };
}

function withinBounds(lengthMm: number): LengthReading {
  if (lengthMm < 0) return { kind: "refusal", reason: "negative" };
  if (lengthMm > LONGEST_MM) return { kind: "refusal", reason: "too-long" };
  return { kind: "length", lengthMm };
}
