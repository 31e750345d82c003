import { MM_PER_INCH } from "./exactUnits.ts";
import { readNumber } from "./readNumber.ts";
import type { WireName, WireNameRefusal } from "./wireName.ts";

/** A strand this thin can only be in inches; one this thick only in millimetres. */
const INCH_BELOW = 0.05;
const MM_FROM = 0.1;
const LEAST_STRAND_MM = 0.04;
const MOST_STRAND_MM = 4;
const MOST_STRANDS = 5000;

type Reading =
  | { readonly ok: true; readonly name: WireName }
  | { readonly ok: false; readonly reason: WireNameRefusal; readonly value: number | null };

/**
 * Reads strands and their size: `32/0.20`, `32x0,20`, `14/.012`, `14/.012 in`, `23/36`.
 *
 * Without a unit: under 0.05 is inches, from 0.1 is millimetres, a whole number of 20 or more is
 * a British gauge number; between 0.05 and 0.1 it could be either and is refused.
 *
 * @returns null where the text has no such form at all.
 */
export function readStranding(text: string): Reading | null {
  const found =
    /^(\d{1,5}) ?(?:\/|x|\*| strands? (?:of |x )?) ?([\d.,]{1,10}) ?(mm|in|inch|inches|"|swg)?$/.exec(
      text,
    );
  if (found === null) return null;
  const strandCount = Number(found[1]);
  const size = readNumber(found[2]!);
  if (size === null) return { ok: false, reason: "unread", value: null };
  if (strandCount < 1 || strandCount > MOST_STRANDS)
    return { ok: false, reason: "strand-bounds", value: strandCount };
  const unit = found[3] ?? impliedUnit(size);
  if (unit === null) return { ok: false, reason: "strand-unit", value: size };
  if (unit === "swg") {
    if (!Number.isInteger(size) || size > 50)
      return { ok: false, reason: "strand-bounds", value: size };
    return { ok: true, name: { kind: "strands-swg", strandCount, gauge: String(size) } };
  }
  const strandDiameterMm = unit === "mm" ? size : size * MM_PER_INCH;
  if (strandDiameterMm < LEAST_STRAND_MM || strandDiameterMm > MOST_STRAND_MM)
    return { ok: false, reason: "strand-bounds", value: size };
  return { ok: true, name: { kind: "strands", strandCount, strandDiameterMm } };
}

function impliedUnit(value: number): "mm" | "in" | "swg" | null {
  if (Number.isInteger(value) && value >= 20) return "swg";
  if (value < INCH_BELOW) return "in";
  return value < MM_FROM ? null : "mm";
}
