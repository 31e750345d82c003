import type { WireName, WireNameRefusal } from "./wireName.ts";

const MOST_AWG = 40;
const MOST_SWG = 50;

type Reading =
  | { readonly ok: true; readonly name: WireName }
  | { readonly ok: false; readonly reason: WireNameRefusal; readonly value: number | null };

/**
 * Reads gauge numbers: `16 AWG`, `AWG 2/0`, `18 SWG`, `16 gauge`, `16 gauge car`.
 *
 * @returns null where the text has no such form at all.
 */
export function readGauge(text: string): Reading | null {
  const isVehicleCable = /\b(?:car|auto(?:motive)?|vehicle|motorcycle|bike|sae)\b/.test(text);
  const bare = text
    .replace(/\b(?:car|auto(?:motive)?|vehicle|motorcycle|bike|sae)\b/g, " ")
    .replace(/ +/g, " ")
    .trim();
  const found =
    /^(?:#|no\.? ?)?(\d{1,2}(?:\/0)?) ?-?(awg|swg|gauge|ga\.?|g)?$/.exec(
      bare.startsWith("#") ? `${bare.slice(1)} gauge` : bare,
    ) ?? swapped(/^(awg|swg|gauge) ?(?:#|no\.? ?)?(\d{1,2}(?:\/0)?)$/.exec(bare));
  if (found === null) return null;
  const aught = /^(\d{1,2})\/0$/.exec(found[1]!);
  const system = found[2] ?? (aught === null ? null : "awg");
  if (system === null) return null;
  const gaugeIndex = aught === null ? Number(found[1]) : 1 - Number(aught[1]);
  const outside = { ok: false, reason: "size-bounds", value: gaugeIndex } as const;
  if (system === "swg") {
    if (gaugeIndex > MOST_SWG || gaugeIndex < -6) return outside;
    return { ok: true, name: { kind: "swg", gauge: found[1]! } };
  }
  if (gaugeIndex > MOST_AWG || gaugeIndex < -3) return outside;
  const kind = system === "awg" ? "awg" : "gauge";
  return { ok: true, name: { kind, gaugeIndex, isVehicleCable } };
}

const swapped = (found: RegExpExecArray | null): readonly (string | undefined)[] | null =>
  found === null ? null : [found[0], found[2], found[1]];
